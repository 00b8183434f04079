import type { VentReport } from '../../../src/engine/breatheResult.ts';
import type { BoxResult } from '../../../src/engine/openings/index.ts';
import type { VentDrawn, WallDrawn } from '../../../src/worker/breathe/breatheAnswer.ts';
import type { ChartSeries } from '../../drawings/chartCurves.ts';
import type { ChartGuide } from '../../drawings/chartGuide.ts';

/** Beyond this no joint holds what a way by itself could do: drawn up to here, and said. dB */
const MOST_DRAWN = 90;
const MOST_LOSS = 60;

const upTo = (most: number, values: readonly number[]): readonly number[] =>
  values.map((value) => Math.min(most, value));
const capped = (label: string, most: number, values: readonly number[]): string =>
  values.some((value) => value > most) ? `${label} (drawn up to ${most} dB)` : label;

/** Dn,e of the vent, and of its ways by themselves. */
export const ventSeries = ({ sound }: VentReport, drawn: VentDrawn): readonly ChartSeries[] => {
  const { bands, spread, extrapolated } = sound;
  return [
    { label: 'All ways', bands, values: sound.normalisedDifference, spread, extrapolated },
    {
      label: capped('Along the air', MOST_DRAWN, drawn.along),
      short: 'Air',
      bands,
      values: upTo(MOST_DRAWN, drawn.along),
      extrapolated,
    },
    ...(drawn.walls
      ? [
          {
            label: capped('Through boards and duct walls', MOST_DRAWN, drawn.walls),
            short: 'Boards',
            bands,
            values: upTo(MOST_DRAWN, drawn.walls),
            extrapolated,
          },
        ]
      : []),
  ];
};

/** What the vent must reach, its joints, and the handbook's estimate: on demand. */
export const ventGuides = ({ sound, cost }: VentReport, drawn: VentDrawn): readonly ChartGuide[] => {
  const { bands } = sound;
  const curve = (group: string, label: string, values: readonly number[] | null): ChartGuide[] =>
    values ? [{ kind: 'curve', group, label, bands, values: upTo(MOST_DRAWN, values) }] : [];
  return [
    ...curve('needed', 'Needed', cost?.wanted ?? null),
    ...curve('joints', 'Joints', drawn.joints),
    ...curve('handbook, ±12 dB', 'Handbook', drawn.handbook),
  ];
};

/** Less than this between fan on and off is not drawn, dB. */
const ALIKE = 0.5;

/** Against an open hole, fan on and off; the box by itself between endless ducts beside it. */
export const insertionSeries = (
  { sound, fanOff }: VentReport,
  drawn: VentDrawn,
  boxes: readonly { readonly name: string; readonly result: BoxResult }[],
): readonly ChartSeries[] => {
  const { bands, spread, extrapolated } = sound;
  const along = sound.insertionLoss.map(
    (loss, b) => loss + (drawn.along[b] ?? 0) - (sound.normalisedDifference[b] ?? 0),
  );
  const differs = fanOff.some((loss, b) => Math.abs(loss - (sound.insertionLoss[b] ?? 0)) >= ALIKE);
  return [
    { label: 'All ways', bands, values: sound.insertionLoss, spread, extrapolated },
    ...(differs ? [{ label: 'All ways, fan off', short: 'Fan off', bands, values: fanOff, extrapolated }] : []),
    {
      label: capped('Along the air', MOST_LOSS, along),
      short: 'Air',
      bands,
      values: upTo(MOST_LOSS, along),
      extrapolated,
    },
    ...boxes.slice(0, differs ? 1 : 2).map(({ name, result }) => {
      const values = result.bands.map(({ multimodeLoss }) => multimodeLoss);
      return {
        label: capped(`${name} by itself, between endless ducts`, MOST_LOSS, values),
        short: 'Box alone',
        bands: result.bands.map(({ band }) => band),
        values: upTo(MOST_LOSS, values),
      };
    }),
  ];
};

/** R of the wall without vents, with this one, and with all of them. */
export const wallSeries = (
  { sound, cost, name }: VentReport,
  drawn: VentDrawn,
  wall: WallDrawn | null,
): readonly ChartSeries[] => {
  if (!cost) return [];
  const { bands } = sound;
  return [
    { label: `${cost.wall} without vents`, short: 'No vent', bands, values: cost.wallR },
    ...(drawn.wallWith ? [{ label: `With ${name}`, short: 'With this', bands, values: drawn.wallWith }] : []),
    ...(wall ? [{ label: 'With all its vents', short: 'With all', bands, values: wall.withAll }] : []),
  ];
};
