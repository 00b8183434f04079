import type { PieceResult } from '../../../../src/engine/shell/index.ts';
import { sharePercent } from '../../../text/shareWords.ts';
import { signedGain } from '../gainWords.ts';

export type PanelKind = 'door' | 'window' | 'service' | 'vent';

const LEAVES: Readonly<Record<PanelKind, string>> = { door: 'leaf', window: 'pane', service: 'wall', vent: 'wall' };

/** A piece as it is called on this kind of panel. */
export const pieceName = (piece: Pick<PieceResult, 'name' | 'leaf'>, kind: PanelKind): string => {
  if (piece.name === 'The leaf itself') return `The ${LEAVES[kind]} itself`;
  if (kind === 'window' && piece.name === 'Joint at the threshold') return 'Joint at the sill';
  return kind === 'window' ? piece.name.replace('leaf', 'pane') : piece.name;
};

const SUBJECTS: Readonly<Record<string, string>> = {
  'Joint at sides and head': 'the joint at sides and head',
  'Joint at the threshold': 'the threshold',
  'Joint at the sill': 'the joint at the sill',
  Keyhole: 'the keyhole',
  'Letter plate': 'the letter plate',
};
const inSentence = (name: string): string => SUBJECTS[name] ?? name.toLowerCase();
const isLeaf = ({ name }: PieceResult): boolean => /^(The leaf itself|First leaf|Second leaf)$/.test(name);
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** One line of the breakdown. */
export interface PieceRow {
  readonly name: string;
  readonly share: number;
  readonly percent: string;
  /** what the whole would be if nothing came through this piece */
  readonly without: string;
}

/** Pieces of one leaf, or of the whole panel, largest share first. */
export interface PieceGroup {
  readonly title: string | null;
  readonly rows: readonly PieceRow[];
}

/** What the whole would be if nothing came through a piece. */
export const withoutWords = ({ Rw, without }: PieceResult): string => {
  const bass = signedGain(without.bassGain);
  if (without.Rw === null) return 'nothing would come through';
  const rise = Rw === null ? null : without.Rw - Rw;
  return `Rw ${without.Rw}${rise === null || rise === 0 ? '' : ` (${signedGain(rise, 0)})`}, bass ${bass}`;
};

const groupOf = (pieces: readonly PieceResult[], kind: PanelKind, title: string | null): PieceGroup => ({
  title,
  rows: pieces
    .toSorted((a, b) => b.share - a.share)
    .map((piece) => ({
      name: pieceName(piece, kind),
      share: piece.share,
      percent: sharePercent(piece.share),
      without: withoutWords(piece),
    })),
});

/** The breakdown of a panel: of two leaves one after the other, since sound goes through both. */
export const pieceGroups = (pieces: readonly PieceResult[], kind: PanelKind): readonly PieceGroup[] => {
  const of = (leaf: PieceResult['leaf']): PieceResult[] => pieces.filter((piece) => piece.leaf === leaf);
  const [first, second, beside] = [of('first'), of('second'), of(null)];
  const leaf = kind === 'window' ? 'pane' : 'leaf';
  return [
    groupOf(first, kind, `What comes through the first ${leaf} and its joints`),
    groupOf(second, kind, `What comes through the second ${leaf} and its joints`),
    groupOf(beside, kind, null),
  ].filter(({ rows }) => rows.length > 0);
};

/** The finding first: what of a leaf lets out most, against the leaf itself. */
const findingOf = (pieces: readonly PieceResult[], kind: PanelKind, whose: string): string | null => {
  const leaf = pieces.find(isLeaf);
  const most = pieces.toSorted((a, b) => b.share - a.share)[0];
  if (!leaf || !most || pieces.length < 2) return null;
  const word = LEAVES[kind];
  if (most === leaf) return `${whose}the ${word} lets out most; better seals would bring less than a heavier ${word}.`;
  const than = `${whose}${inSentence(pieceName(most, kind))} lets out more than the ${word} itself`;
  const { Rw, without } = most;
  return Rw === null || without.Rw === null || without.Rw === Rw
    ? `${than}.`
    : `${than}: without that leak all of it would be Rw ${without.Rw} instead of ${Rw}.`;
};

/** What stands out, in sentences. */
export const pieceFindings = (pieces: readonly PieceResult[], kind: PanelKind): readonly string[] => {
  const word = LEAVES[kind];
  const groups = (['first', 'second', null] as const).map((leaf) => ({
    whose: leaf === null ? '' : `of the ${leaf} ${word}, `,
    pieces: pieces.filter((piece) => piece.leaf === leaf),
  }));
  if (kind === 'service') return serviceFinding(pieces);
  return groups.flatMap((group) => findingOf(group.pieces, kind, group.whose) ?? []).map(capital);
};

const serviceFinding = (pieces: readonly PieceResult[]): readonly string[] => {
  const wall = pieces.find(isLeaf);
  const most = pieces.filter((piece) => piece !== wall).toSorted((a, b) => b.share - a.share)[0];
  if (!wall || !most) return [];
  return most.share > wall.share
    ? [`${pieceName(most, 'service')}: more comes through here than through the piece of wall itself.`]
    : ['The piece of wall lets out more than what is let into it.'];
};
