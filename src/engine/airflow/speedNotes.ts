import type { Note } from '../quantities/index.ts';
import type { PathFlow } from './airResult.ts';
import type { AirPath } from './pathLoss.ts';

/** Speeds that stay quiet, m/s. @source common practice: 2.5 in ducts, 1.5 in a grille (about NC 20) */
const QUIET_DUCT = 2.5;
const QUIET_GRILLE = 1.5;

/** The piece of each vent that is furthest above its quiet speed. */
export const speedNotes = (paths: readonly AirPath[], flows: readonly PathFlow[]): Note[] =>
  flows.flatMap(({ id, pieces }): Note[] => {
    const path = paths.find((it) => it.id === id);
    const fast = pieces.flatMap(({ name, element, speed }) => {
      const kind = element === null ? undefined : path?.elements[element]?.kind;
      if (speed === null || kind === undefined || kind === 'fan' || kind === 'cowl') return [];
      const most = kind === 'grille' || kind === 'mesh' ? QUIET_GRILLE : QUIET_DUCT;
      return speed > most * 1.02 ? [{ name, speed, most }] : [];
    });
    const [worst] = fast.sort((one, other) => other.speed / other.most - one.speed / one.most);
    if (!path || !worst) return [];
    const { name, speed, most } = worst;
    return [
      {
        code: 'air-too-fast',
        severity: 'hint',
        sentence: `In ${path.name} the air runs at ${speed.toFixed(1)} m/s through ${name}; above ${most} m/s it will be heard. Make it wider${fast.length > 1 ? `, and ${fast.length - 1} more of its pieces` : ''}.`,
        figures: [{ term: 'Speed', value: speed, unit: 'm/s' }],
        about: { part: id },
      },
    ];
  });
