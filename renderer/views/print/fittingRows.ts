import type { PieceResult } from '../../../src/engine/shell/index.ts';
import type { OpeningEntry, ServiceItemEntry } from '../../../src/project/schema.ts';
import { sealedJoints, type SealedJoint } from '../../../src/project/sealTakeoff.ts';
import { pieceName, withoutWords } from '../layOut/fittings/pieceWords.ts';
import { sealName, shortFigure } from '../layOut/fittings/sealWords.ts';
import { goesThrough, sealedBy, sizesOf } from '../layOut/fittings/serviceWords.ts';
import { sharePercent } from '../../text/shareWords.ts';

type Panel = Exclude<OpeningEntry, { kind: 'slit' | 'hole' }>;

/** A leaf, joint, hole or service of a panel on paper. */
export interface FittingRow {
  readonly leaf: PieceResult['leaf'];
  readonly name: string;
  readonly made: string;
  /** m of joint */
  readonly length: string;
  /** cm² a metre */
  readonly leak: string;
  /** of what its leaf, or the whole panel, lets through */
  readonly share: string;
  /** what all of it would be without this leak */
  readonly without: string;
}

const JOINTS: Readonly<Record<string, SealedJoint['joint']>> = {
  'Joint at sides and head': 'perimeter',
  'Joint at the threshold': 'threshold',
};

const serviceMade = (item: ServiceItemEntry): string => {
  const { hole, through } = sizesOf(item);
  const size = goesThrough(item.kind) ? `, hole ${hole} mm for ${through} mm` : '';
  const closed = sealedBy(item.kind) === null ? '' : item.sealed ? ', sealed' : ', not sealed';
  return `${item.count}${size}${closed}`;
};

/** What a panel is put together of with how each leaks and what it costs, largest part first, leaf by leaf. */
export const fittingRows = (panel: Panel, pieces: readonly PieceResult[]): readonly FittingRow[] => {
  const joints = sealedJoints(panel);
  const order = ['first', 'second', null];
  const items = panel.items ?? [];
  const services = pieces.length - items.length;
  return pieces
    .map((piece, index) => ({ ...piece, item: items[index - services] }))
    .toSorted((a, b) => order.indexOf(a.leaf) - order.indexOf(b.leaf) || b.share - a.share)
    .map((piece) => {
      const joint = joints.find((it) => it.leaf === (piece.leaf ?? 'first') && it.joint === JOINTS[piece.name]);
      return {
        leaf: piece.leaf,
        name: pieceName(piece, panel.kind),
        made: joint ? sealName(joint.quality) : piece.item ? serviceMade(piece.item) : '',
        length: joint ? joint.length.toFixed(1) : '',
        leak: joint ? shortFigure(10 * joint.asGap) : '',
        share: sharePercent(piece.share),
        without: withoutWords(piece),
      };
    });
};
