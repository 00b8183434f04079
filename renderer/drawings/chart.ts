import { scaleLinear } from 'd3-scale';
import { bandNumber } from '../../src/engine/quantities/index.ts';

/**
 * Aspect of a level chart: how many decibels are as tall as one decade (ten third octaves) is wide.
 * The steeper of the two that fits is taken; 25 dB per decade is also 20 mm for 10 dB and 5 mm a third octave.
 * @source IEC 60263:2020, 4.1 (10, 20, 25 or 50 dB per decade)
 */
export const ASPECTS = [25, 50] as const;
export type Aspect = (typeof ASPECTS)[number];

export interface ChartTick {
  readonly at: number;
  readonly label: string;
  /** octave centres and tens of decibels are drawn stronger */
  readonly strong: boolean;
}

/** Where everything on a band chart goes, in px from the upper left corner. */
export interface ChartFrame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** decibels as tall as a decade is wide */
  readonly aspect: Aspect;
  /** width of one third octave */
  readonly step: number;
  readonly bands: readonly number[];
  readonly least: number;
  readonly most: number;
  readonly bandTicks: readonly ChartTick[];
  readonly levelTicks: readonly ChartTick[];
  x(frequency: number): number;
  y(level: number): number;
}

export interface ChartSpace {
  readonly width: number;
  readonly height: number;
  /** room for labels at the curves' ends */
  readonly labels: number;
  /** room under the axis for marks */
  readonly foot: number;
}

const MARGIN = { left: 34, top: 10, axis: 32 };
const LEAST_RANGE = 40;
/** head room at most, so that a low curve is not lost under an empty sheet, dB */
const HEAD_ROOM = 20;

/** 1000 → "1k", 31.5 → "31.5". */
export const bandName = (band: number): string => (band < 1000 ? String(band) : `${band / 1000}k`);

/** Position on the band axis: exact frequencies on the base-ten scale, nominal centres on their own band. */
export const bandPosition = (frequency: number, bands: readonly number[]): number =>
  bands.includes(frequency) ? bandNumber(frequency) : 10 * Math.log10(frequency / 1000);

/** Tens of decibels that hold all levels, at least 40 dB of them. */
export const levelRange = (levels: readonly number[]): readonly [number, number] => {
  const finite = levels.filter((level) => Number.isFinite(level));
  const least = Math.floor(Math.min(...finite, finite.length ? Infinity : 0) / 10) * 10;
  const most = Math.ceil(Math.max(...finite, least + LEAST_RANGE) / 10) * 10;
  return [Math.max(0, least) === least && least <= 20 ? 0 : least, most];
};

/** Lays out a band chart in a space: the aspect is kept, the level axis grows to fill the height, width gives way last. */
export const chartFrame = (space: ChartSpace, bands: readonly number[], levels: readonly number[]): ChartFrame => {
  const [least, needed] = levelRange(levels);
  const across = space.width - MARGIN.left - space.labels;
  const down = space.height - MARGIN.top - MARGIN.axis - space.foot;
  const perLevel = (aspect: Aspect): number => ((across / bands.length) * 10) / aspect;
  const aspect = ASPECTS.find((it) => perLevel(it) * (needed - least) <= down) ?? 50;
  const fitted = Math.min(perLevel(aspect), down / (needed - least));
  const filling = Math.floor(down / fitted / 10) * 10;
  const most = Math.min(needed + HEAD_ROOM, least + Math.max(needed - least, filling));
  const step = (fitted * aspect) / 10;
  const bottom = MARGIN.top + fitted * (most - least);
  const right = MARGIN.left + step * bands.length;
  const first = bandNumber(bands[0] ?? 25);
  const across_ = scaleLinear([first - 0.5, first - 0.5 + bands.length], [MARGIN.left, right]);
  const down_ = scaleLinear([least, most], [bottom, MARGIN.top]);
  const x = (frequency: number): number => across_(bandPosition(frequency, bands));
  const y = (level: number): number => down_(level);
  return {
    width: right + space.labels,
    height: bottom + MARGIN.axis + space.foot,
    left: MARGIN.left,
    right,
    top: MARGIN.top,
    bottom,
    aspect,
    step,
    bands,
    least,
    most,
    bandTicks: bands.map((band) => ({ at: x(band), label: bandName(band), strong: bandNumber(band) % 3 === 0 })),
    levelTicks: down_.ticks((most - least) / 5).map((level) => ({
      at: y(level),
      label: String(level),
      strong: level % 10 === 0,
    })),
    x,
    y,
  };
};

/** The band whose column holds a horizontal position; the nearest one outside the axis. */
export const bandAt = (frame: ChartFrame, position: number): number => {
  const index = Math.floor((position - frame.left) / frame.step);
  return frame.bands[Math.min(frame.bands.length - 1, Math.max(0, index))] ?? 0;
};
