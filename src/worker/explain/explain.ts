import type { Evaluator } from '../../engine/evaluate.ts';
import type { Working } from '../../engine/quantities/index.ts';
import type { Project } from '../../project/schema.ts';
import type { Explained } from '../protocol.ts';
import { airWorking } from './airWorking.ts';
import { assemblyWorking } from './assemblyWorking.ts';
import { bandWorking } from './bandWorking.ts';
import { pieceWorking } from './pieceWorking.ts';
import { partWorking } from './partWorking.ts';
import { shellWorking } from './shellWorking.ts';
import { swapWorking } from './swapWorking.ts';
import { ventBandWorking, ventWorking } from './ventWorking.ts';

/** How a figure on screen came about, so that it can be checked by hand. @throws Error where what it is of is gone */
export const explain = (evaluator: Evaluator, project: Project, what: Explained): Working => {
  switch (what.kind) {
    case 'assembly':
      return assemblyWorking(evaluator, project, what.assembly, what.figure);
    case 'assembly-band':
      return bandWorking(evaluator, project, what.assembly, what.band);
    case 'shell':
      return shellWorking(evaluator, project, what.figure);
    case 'part':
      return partWorking(evaluator, project, what.part, what.figure);
    case 'swap':
      return swapWorking(evaluator, project, what.part, what.candidate);
    case 'air':
      return airWorking(evaluator, project, what.figure);
    case 'vent':
      return ventWorking(evaluator, project, what.vent, what.figure);
    case 'vent-piece':
      return pieceWorking(evaluator, project, what.vent, what.piece);
    case 'vent-band':
      return ventBandWorking(evaluator, project, what.vent, what.band);
  }
};
