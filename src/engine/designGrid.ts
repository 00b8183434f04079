import type { VentBox, VentElement, VentPath, VentWall } from './openings/index.ts';
import type { Section } from './quantities/index.ts';

/** What every candidate of a vent shares. */
export interface DesignBase {
  readonly direction: 'supply' | 'extract';
  /** clear thickness of the wall, m */
  readonly wallDepth: number;
  /** Pa·s/m² */
  readonly airflowResistivity: number;
  readonly casing: VentWall;
}

/** A box with its duct, and how much room it takes. */
export interface DesignCandidate {
  /** of the duct, m */
  readonly diameter: number;
  readonly box: VentBox;
  /** inside, m³ */
  readonly volume: number;
}

/** Sizes that are tried. @source common practice: ducts as sold, boxes that two people can lift */
const DIAMETERS: readonly number[] = [0.1, 0.125, 0.15, 0.2, 0.25];
const LENGTHS: readonly number[] = [0.5, 0.8, 1.2, 1.6];
const WIDTHS: readonly number[] = [0.35, 0.5];
const LININGS: readonly number[] = [0.025, 0.05];
const PARTITIONS: readonly number[] = [1, 2, 3];
const PARTITION_THICKNESS = 0.012;
/** Least clear way in a box, m: narrower ones whistle and clog. @source engineering judgement */
const NARROWEST = 0.06;
/** Free share of the grilles, and their size against the duct, so that the air slows down. */
const GRILLE = { freeShare: 0.7, larger: 1.5 } as const;

const round = (diameter: number): Section => ({ shape: 'round', diameter });

/** A box whose gaps are as wide as its duct is high; null where the parts do not fit. */
const boxOf = (
  diameter: number,
  length: number,
  width: number,
  thickness: number,
  count: number,
  airflowResistivity: number,
): VentBox | null => {
  const height = Math.max(0.15, diameter + 0.03);
  const gap = Math.max(NARROWEST, ((Math.PI / 4) * diameter ** 2) / height, diameter * 0.9);
  const compartment = (length - count * PARTITION_THICKNESS) / (count + 1);
  const clear = compartment - 2 * thickness;
  const across = width - 2 * thickness;
  const strip = ((Math.PI / 4) * diameter ** 2) / height;
  if (clear < Math.max(NARROWEST, gap * 0.8) || across - gap < 0.05 || strip > across) return null;
  const partitions = Array.from({ length: count }, (_, i) => ({
    at: (i + 1) * compartment + i * PARTITION_THICKNESS,
    thickness: PARTITION_THICKNESS,
    gap,
    side: i % 2 === 0 ? ('N' as const) : ('S' as const),
  }));
  const port = (side: 'W' | 'E') => ({ side, at: width / 2, across: 0, section: round(diameter) });
  return {
    length,
    width,
    height,
    partitions,
    lining: { thickness, airflowResistivity, faces: false },
    ports: [port('W'), port('E')],
  };
};

/** Every box of the grid that can be built, the smallest first. @param airflowResistivity of the lining, Pa·s/m² */
export const designGrid = (airflowResistivity: number): readonly DesignCandidate[] =>
  DIAMETERS.flatMap((diameter) =>
    LENGTHS.flatMap((length) =>
      WIDTHS.flatMap((width) =>
        LININGS.flatMap((thickness) =>
          PARTITIONS.flatMap((count): DesignCandidate[] => {
            const box = boxOf(diameter, length, width, thickness, count, airflowResistivity);
            return box ? [{ diameter, box, volume: length * width * box.height }] : [];
          }),
        ),
      ),
    ),
  ).sort((one, other) => one.volume - other.volume);

/** Grille, box in the room, duct through the wall, and a grille outside. */
export const designPath = ({ diameter, box }: DesignCandidate, base: DesignBase): VentPath => {
  const grille = (name: string): VentElement => ({
    kind: 'grille',
    name,
    section: round(diameter * GRILLE.larger),
    freeShare: GRILLE.freeShare,
  });
  const duct: VentElement = {
    kind: 'duct',
    name: 'Duct through the wall',
    section: round(diameter),
    length: base.wallDepth,
    roughness: 1e-4,
    lossFactor: 1,
    lining: null,
    place: 'wall',
    wall: { assembly: null, surfaceMass: 4 },
  };
  return {
    id: 'design',
    name: 'Vent',
    direction: base.direction,
    elements: [
      grille('Grille in the room'),
      { kind: 'box', name: 'Baffle box', box, place: 'inside', casing: base.casing },
      duct,
      grille('Grille outside'),
    ],
  };
};
