import type { Evaluator } from '../../engine/evaluate.ts';
import type { WorkingLine } from '../../engine/quantities/index.ts';
import type { PartElement, PartResult, ShellResult } from '../../engine/shell/index.ts';
import type { Project } from '../../project/schema.ts';
import { toBuild } from '../../project/toEngine.ts';
import { fittingLines } from './fittingLines.ts';
import { flankingLines } from './flankingLines.ts';
import { makeUpLine } from './makeUpLine.ts';
import { figure, ratio } from './wording.ts';

/** The band by which a part is shown; all bands go the same way. */
const SHOWN = 500;

/** What opens a part, or whose figures it goes by: one line of parts that are not built of layers. */
const plainLine = (element: PartElement, { name, R, ways = [] }: PartResult, b: number): readonly WorkingLine[] => {
  const whole = `at ${SHOWN} Hz R = ${figure(R[b] ?? 0)} dB`;
  const line = (what: string, equation: string, numbers: string, source: string): readonly WorkingLine[] => [
    { what: `${name}: ${what}`, equation, numbers, source },
  ];
  switch (element.kind) {
    case 'slit':
      return line(
        'an open gap, sound in it standing as in a pipe.',
        'τ of a slit of its length, width and depth',
        `${figure(1000 * element.width)} mm · ${figure(element.length, 2)} m, ${figure(1000 * element.depth, 0)} mm deep: ${whole}`,
        'Gomperts and Kihlman, Acustica 18 (1967) 144-150',
      );
    case 'hole':
      return line(
        'an open round hole.',
        'τ of a hole of its diameter and depth',
        `Ø ${figure(1000 * element.diameter, 0)} mm, ${figure(1000 * element.depth, 0)} mm deep: ${whole}`,
        'Wilson and Soroka, J. Acoust. Soc. Am. 37 (1965) 286-297',
      );
    case 'path':
      return line(
        `every way through it as an open area, m², at ${SHOWN} Hz; its own working at the station Breathe shows each.`,
        'R = −10 lg (Σ S·τ / S)',
        `${ways.map((way) => `${way.name} ${ratio(way.openArea[b] ?? 0)}`).join(' + ')}: ${whole}`,
        'along the air: plane-wave four-poles (Munjal, 1987); walls: R by area',
      );
    case 'measured':
      return line('goes by a measured curve.', 'R or Dn,e as measured', whole, 'the laboratory’s report of the curve');
    default:
      return [];
  }
};

/** How R of a part comes about: what it is made of, its joints, or the junction it goes by. */
export const partLines = (
  evaluator: Evaluator,
  project: Project,
  shell: ShellResult,
  part: PartResult,
): readonly WorkingLine[] => {
  const element = toBuild(project).parts.find(({ id }) => id === part.id)?.element;
  if (!element) return [];
  const made = element.kind === 'assembly' ? [makeUpLine(part.name, evaluator.predict(element.assembly, 'full'))] : [];
  return [
    ...made,
    ...plainLine(element, part, shell.bands.indexOf(SHOWN)),
    ...flankingLines(evaluator, project, part.id),
    ...fittingLines(shell.bands, part),
  ];
};

/** The parts that let most through at a band, most first. */
export const strongestParts = (shell: ShellResult, band: number, most: number): readonly PartResult[] => {
  const b = shell.bands.indexOf(band);
  return shell.parts.toSorted((one, other) => (other.shareByBand[b] ?? 0) - (one.shareByBand[b] ?? 0)).slice(0, most);
};
