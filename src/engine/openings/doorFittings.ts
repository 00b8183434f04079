import type { Assembly } from '../assembly/index.ts';

/** How the joint round a leaf or pane is closed. */
export type SealQuality =
  'none' | 'brush' | 'foam' | 'compression' | 'double-compression' | 'magnetic' | 'drop' | 'double-drop';

/** Joints of one leaf. */
export interface Seals {
  /** both sides and the head */
  readonly perimeter: SealQuality;
  readonly threshold: SealQuality;
  /** open gap where there is no seal, m */
  readonly perimeterGap: number;
  readonly thresholdGap: number;
}

/** Something led through, or let into, a wall. */
export interface ServiceItem {
  readonly kind: 'socket-back-to-back' | 'socket-recessed' | 'socket-surface' | 'cable' | 'pipe' | 'recessed-light';
  readonly count: number;
  readonly sealed: boolean;
  /** of the hole, and of what goes through it, m; used by cables and pipes */
  readonly hole: number;
  readonly through: number;
}

/** A second leaf or pane behind an air gap, in its own frame. */
export interface SecondLeaf {
  readonly assembly: Assembly;
  /** clear between the leaves, m */
  readonly gap: number;
  /** absorber round the reveal */
  readonly lined: boolean;
  readonly seals: Seals | null;
}

/** What a door, window or service panel has besides its leaf. */
export interface Fittings {
  readonly seals: Seals | null;
  readonly keyhole: boolean;
  readonly letterPlate: 'none' | 'plain' | 'double';
  readonly second: SecondLeaf | null;
  readonly items: readonly ServiceItem[];
}
