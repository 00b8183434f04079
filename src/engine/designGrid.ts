import type { VentBox, VentWall } from './openings/index.ts';
import type { Section } from './quantities/index.ts';

/** What the walls of a box may be made of. */
export interface DesignCasing {
  readonly key: string;
  readonly wall: VentWall;
  /** m */
  readonly thickness: number;
}

/** A way to build a vent: its boxes alike, one in the room and, where there are two, the other outside. */
export interface DesignCandidate {
  /** of the duct, m */
  readonly diameter: number;
  /** inside of each box */
  readonly box: VentBox;
  readonly boxes: 1 | 2;
  /** of a lined duct behind the box in the room, m; 0: none */
  readonly linedDuct: number;
  readonly casing: DesignCasing;
  /** room that boxes and lined duct take, boards and all, m³ */
  readonly volume: number;
}

/** Sizes to choose among, m. */
export interface DesignSizes {
  readonly diameters: readonly number[];
  readonly lengths: readonly number[];
  readonly widths: readonly number[];
  readonly linings: readonly number[];
  readonly partitions: readonly number[];
  readonly linedDucts: readonly number[];
}

/** @source common practice: ducts as sold, slabs of wool as sold or halved, boxes that two people can lift */
export const DESIGN_SIZES: DesignSizes = {
  diameters: [0.1, 0.125, 0.15, 0.2, 0.25],
  lengths: [0.5, 0.8, 1.2, 1.6],
  widths: [0.35, 0.5, 0.7],
  linings: [0.025, 0.05, 0.1],
  partitions: [1, 2, 3],
  linedDucts: [0, 1],
};

/** Absorber round a lined duct, m. @source common practice */
export const DUCT_LINING = 0.1;
const PARTITION_THICKNESS = 0.012;
/** Least clear way in a box, m: narrower ones whistle and clog. @source engineering judgement */
const NARROWEST = 0.06;

const round = (diameter: number): Section => ({ shape: 'round', diameter });

/** To the millimetre: what a builder can cut, and what a document keeps. */
const cut = (length: number): number => Math.round(length * 1000) / 1000;

/** A box whose gaps are as wide as its duct is high; null where the parts do not fit. */
const boxOf = (
  diameter: number,
  length: number,
  width: number,
  thickness: number,
  count: number,
  airflowResistivity: number,
): VentBox | null => {
  const height = cut(Math.max(0.15, diameter + 0.03));
  const strip = ((Math.PI / 4) * diameter ** 2) / height;
  const gap = cut(Math.max(NARROWEST, strip, diameter * 0.9));
  const compartment = (length - count * PARTITION_THICKNESS) / (count + 1);
  const clear = compartment - 2 * thickness;
  const across = width - 2 * thickness;
  if (clear < Math.max(NARROWEST, gap * 0.8) || across - gap < 0.05 || strip > across) return null;
  const partitions = Array.from({ length: count }, (_, i) => ({
    at: cut((i + 1) * compartment + i * PARTITION_THICKNESS),
    thickness: PARTITION_THICKNESS,
    gap,
    side: i % 2 === 0 ? ('N' as const) : ('S' as const),
  }));
  const port = (side: 'W' | 'E') => ({ side, at: cut(width / 2), across: 0, section: round(diameter) });
  return {
    length,
    width,
    height,
    partitions,
    lining: { thickness, airflowResistivity, faces: false },
    ports: [port('W'), port('E')],
  };
};

/** Every box of these sizes that can be built. @param airflowResistivity of the lining, Pa·s/m² */
export const designBoxes = (airflowResistivity: number, sizes: DesignSizes = DESIGN_SIZES): readonly VentBox[] =>
  sizes.diameters.flatMap((diameter) =>
    sizes.lengths.flatMap((length) =>
      sizes.widths.flatMap((width) =>
        sizes.linings.flatMap((thickness) =>
          sizes.partitions.flatMap((count): VentBox[] => {
            const box = boxOf(diameter, length, width, thickness, count, airflowResistivity);
            return box ? [box] : [];
          }),
        ),
      ),
    ),
  );

const outside = ({ length, width, height }: VentBox, boards: number): number =>
  (length + 2 * boards) * (width + 2 * boards) * (height + 2 * boards);

/**
 * Every way to build a vent of these boxes, the one that takes least room first.
 * @param airflowResistivity of the linings, Pa·s/m²
 * @param casings what the boxes may be built of, the lightest first
 */
export const designGrid = (
  airflowResistivity: number,
  casings: readonly DesignCasing[],
  sizes: DesignSizes = DESIGN_SIZES,
): readonly DesignCandidate[] =>
  designBoxes(airflowResistivity, sizes)
    .flatMap((box) =>
      casings.flatMap((casing) =>
        sizes.linedDucts.flatMap((linedDuct) =>
          ([1, 2] as const).map((boxes): DesignCandidate => {
            const { section } = box.ports[0];
            const diameter = section.shape === 'round' ? section.diameter : section.width;
            const duct = linedDuct * (diameter + 2 * DUCT_LINING + 2 * casing.thickness) ** 2;
            return { diameter, box, boxes, linedDuct, casing, volume: boxes * outside(box, casing.thickness) + duct };
          }),
        ),
      ),
    )
    .sort((one, other) => one.volume - other.volume);

/** What a candidate is but for its boards. */
export const shapeOf = ({ box, boxes, linedDuct }: DesignCandidate): string => JSON.stringify([box, boxes, linedDuct]);
