import type { Evaluator } from '../../engine/evaluate.ts';
import { contourRw, contourSTC } from '../../engine/ratings/index.ts';
import { massLaw } from '../../engine/transmission/index.ts';
import type { Project } from '../../project/schema.ts';
import type { Guides } from '../protocol.ts';
import { predicted } from './predicted.ts';

/** Curves to draw beside an assembly's: what its mass alone would do, and the rating contours in their place. */
export const guidesOf = (evaluator: Evaluator, project: Project, assembly: string): Guides => {
  const { bands, R, surfaceMass } = predicted(evaluator, project, assembly);
  const curve = { bands, values: R };
  return {
    massLaw: massLaw(surfaceMass, bands),
    contourRw: contourRw(curve),
    contourSTC: contourSTC(curve),
  };
};
