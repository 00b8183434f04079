import type { Assembly } from '../../../src/engine/assembly/index.ts';
import type { BoardMaterial, PorousMaterial } from '../../../src/engine/materials/index.ts';
import { THIRD_OCTAVES } from '../../../src/engine/quantities/index.ts';
import type { Build, Part } from '../../../src/engine/shell/index.ts';
import { createPredictor } from '../../../src/engine/transmission/index.ts';
import { createUncertainty } from '../../../src/engine/uncertainty/index.ts';
import type { PredictSized } from '../../../src/engine/uncertainty/index.ts';

const gypsum: BoardMaterial = {
  kind: 'board',
  family: 'gypsum',
  name: 'Plasterboard',
  density: 720,
  youngsModulus: 2.5e9,
  poissonRatio: 0.3,
  lossFactor: 0.01,
};
const wool: PorousMaterial = { kind: 'porous', name: 'Wool', density: 20, airflowResistivity: 8000 };

/** Boards of 12.5 mm on both sides of filled timber studs. */
export const studWall: Assembly = {
  name: 'Stud wall',
  layers: [
    { kind: 'board', material: gypsum, thickness: 0.0125 },
    {
      kind: 'cavity',
      depth: 0.09,
      fill: { material: wool, thickness: 0.09 },
      frame: {
        stud: 'timber',
        arrangement: 'common',
        fixing: 'resilient-bar',
        spacing: 0.6,
        barSpacing: 0.6,
        gauge: 0.5e-3,
      },
    },
    { kind: 'board', material: gypsum, thickness: 0.0125 },
  ],
};

/** The same boards straight on light steel studs, without wool. */
export const hollow: Assembly = {
  name: 'Hollow wall',
  layers: studWall.layers.map((layer) =>
    layer.kind === 'cavity'
      ? {
          kind: 'cavity',
          depth: layer.depth,
          frame: {
            stud: 'steel',
            arrangement: 'common',
            fixing: 'direct',
            spacing: 0.6,
            barSpacing: 0.6,
            gauge: 0.5e-3,
          },
        }
      : layer,
  ),
};

const part = (id: string, it: Partial<Part>): Part => ({
  id,
  name: id,
  kind: 'wall',
  surface: id,
  width: 4,
  height: 2.5,
  area: 10,
  element: { kind: 'assembly', assembly: studWall },
  candidates: [],
  ...it,
});

/** Two walls of one make-up, a tested vent and a gap. */
export const smallBuild: Build = {
  parts: [
    part('north', {}),
    part('south', { width: 3, area: 7.5 }),
    part('vent', {
      kind: 'vent',
      width: 0.2,
      height: 0.2,
      area: 0.04,
      element: {
        kind: 'measured',
        quantity: 'Dne',
        curve: { bands: THIRD_OCTAVES, values: THIRD_OCTAVES.map(() => 45) },
      },
    }),
    part('gap', {
      kind: 'slit',
      width: 0.9,
      height: 0.001,
      area: 0.0009,
      element: { kind: 'slit', length: 0.9, width: 0.001, depth: 0.1, edge: true },
    }),
  ],
  options: [],
  source: { bands: THIRD_OCTAVES, values: THIRD_OCTAVES.map(() => 0) },
};

const predictor = createPredictor();
export const predict: PredictSized = (assembly, { width, height }, resolution) =>
  predictor.predict(assembly, { resolution, size: [width, height] });

export const uncertainty = createUncertainty(predict);
