import type { PathFlow } from '../../../src/engine/airflow/index.ts';
import type { VentReport } from '../../../src/engine/breatheResult.ts';
import type { VentElement, VentWayKind } from '../../../src/engine/openings/index.ts';
import { sectionArea } from '../../../src/engine/quantities/index.ts';
import type { LengthUnits } from '../../store/preferences.svelte.ts';
import { showSpeed } from '../../text/showFlow.ts';
import { kindWord } from '../breathe/elementWords.ts';
import { pieceRows } from '../breathe/pieceRows.ts';
import { lengthWords, sectionWords, sizeWords } from './sizeWords.ts';

/** One part of a vent on paper. */
export interface VentPieceRow {
  readonly number: number;
  readonly name: string;
  readonly kind: string;
  readonly size: string;
  readonly length: string;
  /** open to the air, cm² */
  readonly free: string;
  readonly speed: string;
  /** Pa */
  readonly loss: string;
  readonly fast: boolean;
}

const CM2 = 1e4;

const sizeOf = (element: VentElement, units: LengthUnits): string => {
  if (element.kind !== 'box') return sectionWords(element.section, units);
  const { length, width, height } = element.box;
  return `${sizeWords([length, width, height], units)} inside`;
};

const freeArea = (element: VentElement): number | null => {
  if (element.kind === 'box') return null;
  const share = element.kind === 'grille' || element.kind === 'mesh' ? element.freeShare : 1;
  return sectionArea(element.section) * share * CM2;
};

/** The parts of a vent from the room outwards: sizes, and the air in them where its flow is known. */
export const ventPieces = (
  elements: readonly VentElement[],
  flow: PathFlow | undefined,
  units: LengthUnits,
): readonly VentPieceRow[] => {
  const rows = flow ? pieceRows(elements, flow) : [];
  return elements.map((element, index) => {
    const own = rows.filter((row) => row.element === index);
    const fastest = own.find(({ speed }) => speed !== null);
    const free = freeArea(element);
    return {
      number: index + 1,
      name: element.name,
      kind: kindWord(element.kind),
      size: sizeOf(element, units),
      length: 'length' in element ? lengthWords(element.length, units) : '',
      free: free === null ? '' : free.toFixed(0),
      speed: fastest?.speed == null ? '' : showSpeed(fastest.speed, units),
      loss: own.length === 0 ? '' : own.reduce((sum, { loss }) => sum + loss, 0).toFixed(1),
      fast: own.some(({ fast }) => fast !== null),
    };
  });
};

/** What lets most through, in a word. */
const WAYS: Readonly<Record<VentWayKind, string>> = {
  air: 'air',
  casing: 'boards',
  'duct-wall': 'duct wall',
  joints: 'joints',
};

/** A vent's sound in one band, dB. */
export interface VentBandRow {
  readonly band: number;
  readonly Dne: number;
  readonly spread: number;
  readonly limits: string;
  /** null where the wall is not known */
  readonly wanted: number | null;
  readonly lost: number | null;
  readonly short: boolean;
  readonly beyond: boolean;
}

/** Dn,e by band with what limits it, what is wanted, and what it costs the wall. */
export const ventBands = ({ sound, cost }: VentReport): readonly VentBandRow[] =>
  sound.bands.map((band, b) => {
    const Dne = sound.normalisedDifference[b] ?? 0;
    const wanted = cost?.wanted[b] ?? null;
    return {
      band,
      Dne,
      spread: sound.spread[b] ?? 0,
      limits: WAYS[sound.limiting[b] ?? 'air'],
      wanted,
      lost: cost?.lost[b] ?? null,
      short: wanted !== null && Dne < wanted,
      beyond: sound.extrapolated[b] !== null,
    };
  });
