import type { Fittings, Seals } from '../engine/openings/index.ts';
import { FITTING_DEFAULTS, type SealsEntry } from './doorSchema.ts';
import type { OpeningEntry, Project } from './schema.ts';
import { toAssembly } from './toAssembly.ts';

const MILLI = 1e-3;

const toSeals = (seals?: SealsEntry): Seals | null =>
  seals
    ? {
        perimeter: seals.perimeter,
        threshold: seals.threshold,
        perimeterGap: (seals.gap_mm ?? FITTING_DEFAULTS.gap_mm) * MILLI,
        thresholdGap: (seals.threshold_gap_mm ?? FITTING_DEFAULTS.threshold_gap_mm) * MILLI,
      }
    : null;

type Panel = Exclude<OpeningEntry, { kind: 'slit' | 'hole' }>;
type Fitted = Pick<Panel, 'seals' | 'keyhole' | 'letter_plate' | 'second' | 'items'>;

/** What a panel has besides its leaf, in SI; nothing for one without. */
export const toFittings = (project: Project, panel: Fitted): Fittings | undefined => {
  const { seals, keyhole, letter_plate, second, items } = panel;
  if (!seals && !keyhole && !letter_plate && !second && !items?.length) return undefined;
  const behind = second && project.assemblies[second.assembly];
  if (second && !behind) throw new Error(`assembly ${second.assembly} must exist: check the project first`);
  return {
    seals: toSeals(seals),
    keyhole: keyhole ?? false,
    letterPlate: letter_plate ?? 'none',
    second:
      second && behind
        ? {
            assembly: toAssembly(behind, project),
            gap: second.gap_mm * MILLI,
            lined: second.lined,
            seals: toSeals(second.seals),
          }
        : null,
    items: (items ?? []).map((item) => {
      const led = item.kind === 'pipe' ? 'pipe' : 'cable';
      return {
        kind: item.kind,
        count: item.count,
        sealed: item.sealed,
        hole: (item.hole_mm ?? FITTING_DEFAULTS.hole_mm[led]) * MILLI,
        through: (item.through_mm ?? FITTING_DEFAULTS.through_mm[led]) * MILLI,
      };
    }),
  };
};
