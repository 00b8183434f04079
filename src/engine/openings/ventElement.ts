import type { Assembly } from '../assembly/index.ts';
import type { Section } from '../quantities/index.ts';

/** Where a piece stands: in the music room, within the wall, or beyond it. */
export type VentPlace = 'inside' | 'wall' | 'outside';

/** Absorber round an airway. */
export interface VentLining {
  /** m */
  readonly thickness: number;
  /** Pa·s/m² */
  readonly airflowResistivity: number;
}

/** Where a duct meets a box. W: left end, E: right end, S: near side, N: far side, face: one of the two flat faces. */
export interface VentPort {
  readonly side: 'W' | 'E' | 'S' | 'N' | 'face';
  /** middle of the duct along its side; from the left on a face, m */
  readonly at: number;
  /** middle of the duct from the near side, m; used on a face */
  readonly across: number;
  readonly section: Section;
}

/** A baffled box seen in plan, m. */
export interface VentBox {
  readonly length: number;
  readonly width: number;
  readonly height: number;
  /** from the left; `gap` is clear between the partition's tip and the lining, at the near (S) or far (N) side */
  readonly partitions: readonly {
    readonly at: number;
    readonly thickness: number;
    readonly gap: number;
    readonly side: 'S' | 'N';
  }[];
  /** on the four edges and both sides of each partition; `faces`: on the two flat faces as well */
  readonly lining: (VentLining & { readonly faces: boolean }) | null;
  /** towards the room, and outwards */
  readonly ports: readonly [VentPort, VentPort];
}

/** What a piece's walls are made of; null where the mass alone is known. */
export interface VentWall {
  readonly assembly: Assembly | null;
  /** kg/m² */
  readonly surfaceMass: number;
}

/** One piece of a vent, from the music room outwards. Lengths in m, angles in degrees, powers in dB re 1 pW. */
export type VentElement =
  | { readonly kind: 'grille' | 'mesh'; readonly name: string; readonly section: Section; readonly freeShare: number }
  | {
      readonly kind: 'duct';
      readonly name: string;
      readonly section: Section;
      readonly length: number;
      readonly roughness: number;
      readonly lossFactor: number;
      readonly lining: VentLining | null;
      readonly place: VentPlace;
      readonly wall: VentWall;
    }
  | {
      readonly kind: 'bend';
      readonly name: string;
      readonly section: Section;
      readonly angle: number;
      readonly form: 'mitred' | 'vaned' | 'tight' | 'smooth';
      readonly lining: VentLining | null;
    }
  | { readonly kind: 'transition'; readonly name: string; readonly section: Section; readonly length: number }
  | {
      readonly kind: 'box';
      readonly name: string;
      readonly box: VentBox;
      readonly place: VentPlace;
      readonly casing: VentWall;
    }
  | {
      readonly kind: 'fan';
      readonly name: string;
      readonly section: Section;
      readonly curve: { readonly flows: readonly number[]; readonly pressures: readonly number[] };
      /** octaves 63 Hz to 8 kHz; null: estimated from flow and pressure */
      readonly soundPower: readonly number[] | null;
      readonly type: FanType;
    }
  | { readonly kind: 'cowl'; readonly name: string; readonly section: Section; readonly loss: number };

export type FanType = 'axial' | 'backward' | 'forward' | 'radial';

/** A whole vent. */
export interface VentPath {
  readonly id: string;
  readonly name: string;
  readonly direction: 'supply' | 'extract';
  /** from the music room outwards */
  readonly elements: readonly VentElement[];
}

/** Sections at the end towards the room, and at the end outwards. */
export const ventSections = (element: VentElement): readonly [Section, Section] =>
  element.kind === 'box'
    ? [element.box.ports[0].section, element.box.ports[1].section]
    : [element.section, element.section];
