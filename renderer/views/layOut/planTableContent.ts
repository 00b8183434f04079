import type { PlanResult, Rung } from '../../../src/engine/plan/index.ts';
import { findPart } from '../../../src/project/parts.ts';
import type { Project } from '../../../src/project/schema.ts';
import type { TableContent } from '../../actions/csvFile.ts';

const rounded = (value: number | null, decimals: number): number | null =>
  value === null ? null : Number(value.toFixed(decimals));

/** The ladder as a table, in the order in which it is shown. */
export const ladderTableContent = (project: Project, rungs: readonly Rung[]): TableContent => ({
  headings: [
    'part',
    'change',
    'less gets out_dB',
    'Rw_dB',
    'bass_dB',
    `price${project.currency ? `_${project.currency}` : ''}`,
    'price rests on',
    'thickness_mm',
    'mass_kg',
    'then limits',
    'its share',
  ],
  rows: rungs.map((rung) => {
    const part = findPart(project, rung.part);
    return [
      part?.name ?? rung.part,
      part?.candidates?.find((it) => it.id === rung.candidate)?.name ?? rung.name,
      rounded(rung.energyGain, 2),
      rung.RwGain,
      rounded(rung.bassGain, 2),
      rounded(rung.cost, 2),
      rung.cost === null ? null : rung.illustrative ? 'illustrative prices' : 'own prices',
      rounded(rung.addedThickness === null ? null : rung.addedThickness * 1000, 1),
      rounded(rung.addedMass, 1),
      (rung.nextLimiting && findPart(project, rung.nextLimiting)?.name) ?? null,
      rounded(rung.nextLimitingShare, 3),
    ];
  }),
});

/** The options as a table, below the build as it is. @param now figures of the build as it is */
export const optionsTableContent = (
  project: Project,
  plan: PlanResult | null,
  now: {
    readonly ratings: { readonly Rw: number | null; readonly STC: number | null };
    readonly bassR: number;
    readonly limiting: string | null;
  },
): TableContent => {
  const nameOf = (id: string | null): string | null => (id && findPart(project, id)?.name) ?? null;
  return {
    headings: ['option', 'Rw_dB', 'STC', 'bass_dB', `price${project.currency ? `_${project.currency}` : ''}`, 'limits'],
    rows: [
      ['as is', now.ratings.Rw, now.ratings.STC, rounded(now.bassR, 1), null, nameOf(now.limiting)],
      ...(plan?.options ?? []).map((option) => [
        option.name,
        option.ratings.Rw,
        option.ratings.STC,
        rounded(option.bassR, 1),
        rounded(option.cost, 2),
        nameOf(option.limiting),
      ]),
    ],
  };
};
