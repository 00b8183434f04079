import type { Assembly, CavityLayer, Frame, Layer } from '../../../src/engine/assembly/index.ts';
import type { BoardMaterial, PorousMaterial } from '../../../src/engine/materials/index.ts';
import type { Prediction } from '../../../src/engine/transmission/index.ts';
import { createPredictor } from '../../../src/engine/transmission/index.ts';

const material = (
  family: BoardMaterial['family'],
  name: string,
  density: number,
  youngsModulus: number,
  poissonRatio = 0.3,
  lossFactor = 0.01,
): BoardMaterial => ({ kind: 'board', family, name, density, youngsModulus, poissonRatio, lossFactor });

export const gypsum = material('gypsum', 'Plasterboard', 672, 2.03e9);
export const dense = material('gypsum', 'Plasterboard, dense', 860, 2.56e9);
export const brick = material('mineral', 'Brick', 1800, 12.6e9, 0.2);
export const glass = material('glass', 'Glass', 2500, 63.7e9, 0.23, 0.002);
export const foam = material('soft', 'Foam board', 32, 5.5e6, 0.3, 0.02);
export const fleece = material('soft', 'Fleece board', 60, 1e5, 0.1, 0.1);
export const wool: PorousMaterial = { kind: 'porous', name: 'Wool', density: 45, airflowResistivity: 15_000 };

export const board = (thickness = 0.0125, made = gypsum): Layer => ({ kind: 'board', material: made, thickness });
export const studs: Frame = {
  stud: 'timber',
  arrangement: 'common',
  fixing: 'direct',
  spacing: 0.6,
  barSpacing: 0.6,
  gauge: 0.0005,
};
export const gap = (depth: number, more: Partial<CavityLayer> = {}): CavityLayer => ({
  kind: 'cavity',
  depth,
  ...more,
});
export const filled = (thickness: number): Partial<CavityLayer> => ({ fill: { material: wool, thickness } });

export const assembly = (...layers: Layer[]): Assembly => ({ name: 'as drawn', layers });

/** predicts once per content */
export const remembering = () => {
  const predictor = createPredictor();
  const known = new Map<string, Prediction>();
  return (one: Assembly): Prediction => {
    const key = JSON.stringify(one.layers);
    const prediction = known.get(key) ?? predictor.predict(one);
    known.set(key, prediction);
    return prediction;
  };
};
