import type { DesignLimits } from '../../engine/designLimits.ts';
import type { DesignTried } from '../../engine/designVent.ts';
import type { VentDesignEntry } from '../../project/commands/designCommands.ts';
import type { Project } from '../../project/schema.ts';
import type { CasingLayer } from '../../project/ventDesign/casings.ts';

/** Which opening is to have a vent, and what the vents of its wall may cost that wall together. */
export interface DesignAsk {
  readonly project: Project;
  readonly opening: string;
  /** dB, > 0 */
  readonly mostCost: number;
  /** false: living noise from 100 Hz on; true: music rich in bass from 50 Hz on */
  readonly bass: boolean;
}

/** The smallest vent that was found, or the nearest to it; inside sizes in m. */
export interface DesignedVent {
  readonly ductDiameter: number;
  readonly boxes: 1 | 2;
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly lining: number;
  readonly partitions: number;
  readonly gap: number;
  /** length, 0: none, and lining of a lined duct behind the box in the room */
  readonly linedDuct: number;
  readonly ductLining: number;
  /** what the boxes are built of, layer by layer (m), and what each weighs without its lining, kg */
  readonly casing: string;
  readonly layers: readonly CasingLayer[];
  readonly weight: number;
  /** that boxes and lined duct take, boards and all, m³ */
  readonly volume: number;
  /** ends that become wider: name, and diameter, m */
  readonly widened: readonly { readonly name: string; readonly diameter: number }[];
  /** Pa and m/s at the flow */
  readonly loss: number;
  readonly speed: number;
  /** dB with the fans standing: of all such vents of the wall together, by what was asked for */
  readonly cost: number;
  /** what the station says of it once it is put in: of this vent alone, from 100 Hz on, with the fans running */
  readonly inPlace: {
    readonly cost: number;
    readonly rating: number | null;
    /** m³/s that the fans move through it as they are; 0 where nothing is known of the room */
    readonly flow: number;
  };
  readonly limits: DesignLimits;
  /** in the document's own form */
  readonly entry: VentDesignEntry;
}

export interface DesignFound {
  readonly mostCost: number;
  readonly bass: boolean;
  /** m³/s, through each such vent */
  readonly flow: number;
  /** vents of the same wall that the cost is for together */
  readonly count: number;
  /** true where it costs the wall no more than asked */
  readonly enough: boolean;
  /** what would be left if the boxes let nothing through, dB; null where nothing carries the air */
  readonly floor: number | null;
  readonly tried: DesignTried;
  /** what was taken for granted: wall in m, at most these m/s and Pa, and the doubt of the coarse grid in dB */
  readonly terms: {
    readonly wallDepth: number;
    readonly mostSpeed: number;
    readonly mostLoss: number;
    readonly doubt: number;
  };
  /** what the best of one box would cost where the nearest has two, dB; its inside and its lined duct, m */
  readonly oneBox: {
    readonly cost: number;
    readonly length: number;
    readonly width: number;
    readonly height: number;
    readonly linedDuct: number;
  } | null;
  /** of the opening as it is drawn, m */
  readonly hole: { readonly width: number; readonly height: number };
  /** null where no duct of the grid carries the air quietly */
  readonly vent: DesignedVent | null;
}

/** What the worker says while it looks, and at the end. */
export type DesignNews =
  | { readonly kind: 'progress'; readonly boxes: number; readonly of: number }
  | { readonly kind: 'found'; readonly found: DesignFound }
  | { readonly kind: 'fault'; readonly sentence: string };
