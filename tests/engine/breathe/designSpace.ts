import type { DesignSpace } from '../../../src/engine/designAir.ts';
import {
  designGrid,
  type DesignCandidate,
  type DesignCasing,
  type DesignSizes,
} from '../../../src/engine/designGrid.ts';
import { BASS_RICH, LIVING, costOfLeak, leakOf } from '../../../src/engine/designLeak.ts';
import type { DesignWish } from '../../../src/engine/designVent.ts';
import {
  solveBoxWhole,
  ventTransmission,
  waveBoxSound,
  type BoxSound,
  type VentBox,
  type VentElement,
  type VentPath,
} from '../../../src/engine/openings/index.ts';
import { THIRD_OCTAVES, createMemory } from '../../../src/engine/quantities/index.ts';
import { massLaw } from '../../../src/engine/transmission/index.ts';

/** A few small boxes, so that all of them can be solved finely. */
export const SMALL: DesignSizes = {
  diameters: [0.1],
  lengths: [0.5, 0.8],
  widths: [0.35],
  linings: [0.025, 0.05],
  partitions: [1, 2],
  linedDucts: [0, 1],
};

const casing = (key: string, surfaceMass: number, thickness: number): DesignCasing => ({
  key,
  wall: { assembly: null, surfaceMass },
  thickness,
});
export const CASINGS: readonly DesignCasing[] = [casing('one', 12, 0.018), casing('two', 25, 0.033)];

/** Box in the room, lined duct, duct through the wall, second box outside. */
export const pathOf = ({ diameter, box, boxes, linedDuct, casing: boards }: DesignCandidate): VentPath => {
  const section = { shape: 'round', diameter } as const;
  const duct = (length: number, place: 'inside' | 'wall', lined: boolean): VentElement => ({
    kind: 'duct',
    name: 'Duct',
    section,
    length,
    roughness: 1e-4,
    lossFactor: 1,
    lining: lined ? { thickness: 0.1, airflowResistivity: 10_000 } : null,
    place,
    wall: boards.wall,
  });
  const boxAt = (place: 'inside' | 'outside'): VentElement => ({
    kind: 'box',
    name: 'Box',
    box,
    place,
    casing: boards.wall,
  });
  return {
    id: 'design',
    name: 'Vent',
    direction: 'supply',
    elements: [
      { kind: 'grille', name: 'Grille', section: { shape: 'round', diameter: diameter * 1.25 }, freeShare: 0.7 },
      boxAt('inside'),
      ...(linedDuct > 0 ? [duct(linedDuct, 'inside', true)] : []),
      duct(0.3, 'wall', false),
      ...(boxes === 2 ? [boxAt('outside')] : []),
    ],
  };
};

export const spaceOf = (sizes: DesignSizes, casings = CASINGS): DesignSpace => ({
  candidates: designGrid(10_000, casings, sizes),
  pathOf,
});

export const wish: DesignWish = {
  flow: 0.016,
  mostCost: 1,
  bass: false,
  wallR: massLaw(60, THIRD_OCTAVES).values,
  wallArea: 12,
  count: 1,
};

const solved = createMemory<BoxSound>(100);
/** The fine solution, each box once. */
export const fine = (box: VentBox): BoxSound =>
  solved.recall(JSON.stringify(box), () => waveBoxSound(box, solveBoxWhole));
export const ports = { boxSound: fine, reduction: () => [] };

export const weightsOf = ({ bass }: DesignWish) => (bass ? BASS_RICH : LIVING);

/** What a candidate costs by the fine grid, dB. */
export const fineCost = (candidate: DesignCandidate, asked: DesignWish): number =>
  costOfLeak(leakOf(ventTransmission(pathOf(candidate), ports).openArea, weightsOf(asked)), asked, weightsOf(asked));
