import type { Evaluator } from '../../engine/evaluate.ts';
import type { WorkingLine } from '../../engine/quantities/index.ts';
import { THIRD_OCTAVES } from '../../engine/quantities/index.ts';
import {
  carriedMass,
  carrierOf,
  flankingCurves,
  type FlankingElement,
  type FlankingSide,
} from '../../engine/shell/index.ts';
import type { Project } from '../../project/schema.ts';
import { toBuild } from '../../project/toEngine.ts';
import { makeUpLine } from './makeUpLine.ts';
import { figure } from './wording.ts';

/** The band by which a path is shown; all bands go the same way. */
const SHOWN = 500;

const JUNCTIONS: Readonly<Record<FlankingElement['junction'], string>> = {
  'rigid-cross': 'heavy elements, both running on: a cross',
  'rigid-t': 'heavy elements, one ending on the other: a T',
  'flexible-t': 'a T with elastic strips round the element that ends there',
  lightweight: 'timber frames',
};

const junctionLine = (element: FlankingElement, K: number): WorkingLine => {
  const what = `The junction, ${JUNCTIONS[element.junction]}, ${element.run === 'straight' ? 'passed straight on' : 'passed round the corner'}.`;
  if (element.vibrationReduction !== null)
    return { what, equation: 'K as given', numbers: `${figure(K)} dB`, source: 'your own value' };
  if (element.junction === 'lightweight')
    return {
      what,
      equation: element.run === 'straight' ? 'Dv,n = 22 + 3.3 lg(f/500 Hz)' : 'Dv,n = 18 + 3.3 lg(f/500 Hz)',
      numbers: `at ${SHOWN} Hz ${figure(K)} dB`,
      source: 'ISO 12354-1:2017, Table L.11: the line that its columns follow',
    };
  const [a, b] = element.junction === 'rigid-cross' ? ['8.7', '17.1'] : ['5.7', '14.1'];
  const across = element.run === 'straight' ? element.crossing.make : element.beyond.make;
  const [mass, crossing] = [carriedMass(element.inside.make) ?? 0, carriedMass(across) ?? 0];
  const elastic =
    element.junction === 'flexible-t' ? ` + ${element.run === 'straight' ? '2 · ' : ''}10 lg(f/125 Hz)` : '';
  return {
    what,
    equation: `K = ${a}${element.run === 'straight' ? ` + ${b} · M` : ''} + 5.7 · M²${elastic}, M = lg(m⊥/mᵢ)`,
    numbers: `M = lg(${figure(crossing, 0)}/${figure(mass, 0)}) = ${figure(Math.log10(crossing / mass), 2)}: at ${SHOWN} Hz ${figure(K)} dB`,
    source: 'EN 12354-1:2000, annex E.3 to E.5',
  };
};

/** What an element that carries the sound on is made of; of a lined wall or slab the heavy leaf alone. */
const carrierLine = (evaluator: Evaluator, { name, make }: FlankingSide): readonly WorkingLine[] =>
  make.kind === 'assembly'
    ? [makeUpLine(`${name}, as far as it carries the sound on,`, evaluator.predict(carrierOf(make.assembly), 'full'))]
    : [];

/** How R of a flanking path came about, at one band; nothing for any other part. */
export const flankingLines = (evaluator: Evaluator, project: Project, id: string): readonly WorkingLine[] => {
  const part = toBuild(project).parts.find((it) => it.id === id);
  if (part?.element.kind !== 'flanking') return [];
  const { element, area } = part;
  const curves = flankingCurves(element, (assembly) => evaluator.predict(assembly, 'full'));
  const b = THIRD_OCTAVES.indexOf(SHOWN);
  const at = (values: readonly number[]): number => values[b] ?? 0;
  const R =
    (at(curves.inside) + at(curves.beyond)) / 2 +
    at(curves.improvement) +
    at(curves.junction) +
    10 * Math.log10(area / element.length);
  return [
    ...[element.inside, element.beyond].flatMap((side) => carrierLine(evaluator, side)),
    junctionLine(element, at(curves.junction)),
    {
      what: `Into ${element.inside.name}, over ${figure(element.length, 2)} m of junction, out of ${element.beyond.name}; written for the ${figure(area)} m² that the sound goes past. Of a lined wall or slab the heavy leaf carries, and its lining is ΔR. At ${SHOWN} Hz as an example.`,
      equation: 'R_ij = (Rᵢ + Rⱼ)/2 + ΔR + K + 10 lg(S/(1 m · l))',
      numbers: `(${figure(at(curves.inside))} + ${figure(at(curves.beyond))})/2 + ${figure(at(curves.improvement))} + ${figure(at(curves.junction))} + 10 lg(${figure(area)}/${figure(element.length, 2)}) = ${figure(R)} dB`,
      source: 'EN 12354-1:2000, 4.4; ISO 12354-1:2017, annex L',
    },
  ];
};
