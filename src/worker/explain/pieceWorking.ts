import type { Evaluator } from '../../engine/evaluate.ts';
import type { Working } from '../../engine/quantities/index.ts';
import type { Project } from '../../project/schema.ts';
import { toBreathe } from '../../project/toBreathe.ts';
import { toBuild } from '../../project/toEngine.ts';
import { betweenLine, litres, lossLine, pascals, speedLine } from './pieceLines.ts';
import { figure } from './wording.ts';

/**
 * What one piece of a vent takes from the air and how fast the air is in it, worked out.
 * @param at place of the piece among those the vent's flow is told by
 * @throws Error where vent or piece are gone
 */
export const pieceWorking = (evaluator: Evaluator, project: Project, vent: string, at: number): Working => {
  const question = toBreathe(project);
  const { air } = evaluator.breathe(toBuild(project), question, 'full');
  const path = air?.paths.find(({ id }) => id === vent);
  const piece = path?.pieces[at];
  const asked = question.vents.find((it) => it.path.id === vent)?.path;
  if (!path || !piece || !asked) throw new Error(`there is no piece number ${at + 1} of vent "${vent}" any more`);
  const flow = Math.abs(path.flow);
  const element = piece.element === null || piece.speed === null ? undefined : asked.elements[piece.element];
  const taken = element && lossLine(element, piece.loss, flow);
  return {
    title: `${piece.name}: what it takes${piece.speed === null ? '' : ', and how fast the air is'}`,
    value: piece.speed === null ? pascals(piece.loss) : `${pascals(piece.loss)}, ${figure(piece.speed, 2)} m/s`,
    lines: [
      ...(element ? [speedLine(element, flow)] : [betweenLine(asked, path.pieces, at, flow)]),
      ...(taken ? [taken] : []),
      ...(element?.kind === 'fan'
        ? [
            {
              what: 'A running fan takes nothing: it adds pressure, by its curve.',
              equation: 'Δp_fan (q)',
              numbers: `${pascals(path.fanPressure)} at ${litres(flow)}`,
              source: 'the fan’s curve in the document',
            },
          ]
        : []),
    ],
    assumptions: ['the air fills the piece evenly', 'joints do not leak'],
    likelyError: 'Pieces close together disturb one another: expect a fifth more or less. Measure it when it is built.',
  };
};
