import type { ViscoelasticMaterial } from '../materials/index.ts';

/** A plate in Mindlin's theory, per area: mass, rotary inertia, complex bending and shear stiffness without edge loss. */
export interface Plate {
  /** m, kg/m² */
  readonly mass: number;
  /** I = ρh³/12, kg */
  readonly inertia: number;
  /** B, N·m: real part and imaginary part (loss) */
  readonly bending: number;
  readonly bendingLoss: number;
  /** Gs = (5/6)·G·h, N/m: real part and imaginary part */
  readonly shear: number;
  readonly shearLoss: number;
}

/** Plates joined by viscoelastic sheets that shear as they bend. */
export interface Sandwich {
  /** kg/m², sheets included */
  readonly mass: number;
  readonly bending: number;
  readonly bendingLoss: number;
  /** E'h of each skin, N/m */
  readonly stretching: readonly number[];
  /** between skins i and i + 1 */
  readonly sheets: readonly {
    readonly material: ViscoelasticMaterial;
    readonly thickness: number;
    /** distance of the mid-planes of the two skins, m */
    readonly arm: number;
  }[];
}

/**
 * Masonry: η falling as 1/√f. Gasket: η up to the critical frequency, falling as 1/f above it. Board: none up to the
 * critical frequency, η·(f/fc − 1) above it.
 */
export type EdgeLoss =
  | { readonly kind: 'masonry'; /** √Hz */ readonly atOneHertz: number }
  | { readonly kind: 'board'; readonly lossFactor: number; readonly criticalFrequency: number }
  | { readonly kind: 'gasket'; readonly lossFactor: number; readonly criticalFrequency: number };

export interface LeafModel {
  /** kg/m² */
  readonly mass: number;
  /** plates that bend side by side: their impedances add */
  readonly plates: readonly Plate[];
  readonly sandwiches: readonly Sandwich[];
  /** loss added along the edges: masonry in its frame, panes in their gaskets */
  readonly edgeLoss: EdgeLoss | null;
  /** thick wall limit: ρ·cL of the wall, Pa·s/m; null for boards */
  readonly wallImpedance: number | null;
  /** whether it sits back between reveals, as panes do; absent: flush with the wall round it */
  readonly inReveal?: boolean;
  /** how far the critical frequencies of its boards lie on either side of the common one, as a share; absent: nothing */
  readonly criticalSpread?: number;
  /** critical frequency, Hz; null for a limp leaf */
  readonly criticalFrequency: number | null;
}

export type FluidLayer =
  | {
      readonly kind: 'air';
      readonly depth: number;
      /** lateral loss σc, Pa·s/m² */
      readonly flowLoss: number;
      /** share of the energy that reaches the edges and does not come back, 1/s; absent: none */
      readonly edgeRate?: number;
    }
  | {
      readonly kind: 'porous';
      readonly depth: number;
      readonly airflowResistivity: number;
      /** null for a rigid frame */
      readonly bulkDensity: number | null;
    }
  | {
      readonly kind: 'elastic';
      readonly depth: number;
      /** plane-wave modulus, Pa */
      readonly modulus: number;
      readonly lossFactor: number;
      readonly density: number;
    };

/** A way for vibration to run from leaf to leaf. Compliance C(f) = C·(fk/max(f, fk))^n. */
export interface Link {
  readonly path: 'links' | 'perimeter';
  /** `points`: the lesser of a line and of points at the pitch */
  readonly form: 'line' | 'points';
  /** b, m */
  readonly spacing: number;
  /** s, m */
  readonly pitch: number;
  /** compliance terms in series, m²/N */
  readonly compliances: readonly ComplianceTerm[];
  /** width and height of the piece of leaf that rings freely, m */
  readonly bay: readonly [number, number];
  /** loss added to the leaf by an absorber in the cavity */
  readonly addedLoss: number;
}

export interface ComplianceTerm {
  readonly compliance: number;
  readonly knee: number;
  readonly exponent: number;
}

/** What studs put in parallel with the cavity around the mass-air-mass resonance. */
export interface Coupling {
  /** ηr, loss as a share of the air's stiffness */
  readonly resistance: number;
  /** stiffness of the strips of board between studs that hold both leaves; null where studs give */
  readonly bay: {
    /** κ in s = κ·B/b⁴: π⁴ for a strip hinged on the studs */
    readonly kappa: number;
    readonly lossFactor: number;
    /** b, m */
    readonly spacing: number;
    /** of the link, m²/N */
    readonly compliance: number;
  } | null;
}

export interface GapModel {
  readonly layers: readonly FluidLayer[];
  readonly coupling: Coupling | null;
  readonly links: readonly Link[];
}

/** What the transfer matrices see: `gaps[i]` between leaves i and i + 1. */
export interface Stack {
  readonly leaves: readonly LeafModel[];
  readonly gaps: readonly GapModel[];
  readonly leading: readonly FluidLayer[];
  readonly trailing: readonly FluidLayer[];
}
