import { surfaceMass } from '../../assembly/index.ts';
import type { Note } from '../../quantities/index.ts';
import type { Part } from '../../shell/index.ts';
import { figure } from './figure.ts';
import type { ShellRule } from './shellNotes.ts';

const GRAVITY = 9.81;
/** From two boards on, kg/m². @source engineering judgement: a usual single-board ceiling is allowed for anywhere */
const TELLING_MASS = 15;
/** Dead load usually allowed for a ceiling, kN/m². @source common practice, from memory; the engineer's figure prevails */
const USUAL_ALLOWANCE = 0.25;

const toLoad = (mass: number): number => (mass * GRAVITY) / 1000;

const noteOn = (part: Part): Note | null => {
  if (part.element.kind !== 'assembly') return null;
  const present = surfaceMass(part.element.assembly);
  const added = part.candidates.map(({ element }) =>
    element.kind === 'assembly' ? surfaceMass(element.assembly) - present : 0,
  );
  const most = Math.max(0, ...added);
  if (Math.max(present, present + most) < TELLING_MASS) return null;
  const total = present * part.area;
  return {
    code: 'load-overhead',
    severity: 'caution',
    sentence:
      `The layers of "${part.name}" weigh ${Math.round(present)} kg/m² (${toLoad(present).toFixed(2)} kN/m², ` +
      `${Math.round(total)} kg in all) over your heads, the frame not counted` +
      (most > 0 ? `; the heaviest candidate adds ${Math.round(most)} kg/m² (${toLoad(most).toFixed(2)} kN/m²)` : '') +
      `. Ceilings are often built for ${USUAL_ALLOWANCE} kN/m² in all: have joists, rafters and fixings checked by a structural engineer.`,
    figures: [
      figure('load', 'load of the layers', toLoad(present)),
      figure('mass', 'mass in all', total),
      ...(most > 0 ? [figure('load', 'load added by the heaviest candidate', toLoad(most))] : []),
      figure('load', 'usual allowance of a ceiling', USUAL_ALLOWANCE),
    ],
    about: { part: part.id },
  };
};

/**
 * Weight overhead: a caution, never a hindrance.
 * @source common practice; g = 9.81 m/s²
 */
export const loadOverhead: ShellRule = ({ parts }) =>
  parts.flatMap((part) => {
    const note = part.kind === 'roof' || part.kind === 'ceiling' ? noteOn(part) : null;
    return note ? [note] : [];
  });
