import type { CandidateEntry, OpeningEntry, SealsEntry } from '../../../../src/project/schema.ts';

type Panel = Exclude<OpeningEntry, { kind: 'slit' | 'hole' }>;
type Fittings = NonNullable<CandidateEntry['fittings']>;
/** A way to build the same panel with other fittings, as the menu offers it. */
export type BetterWay = Pick<CandidateEntry, 'name'> & { readonly assembly: string; readonly fittings: Fittings };

const GOOD: SealsEntry = { perimeter: 'compression', threshold: 'drop' };
const BEST: SealsEntry = { perimeter: 'double-compression', threshold: 'double-drop' };
const PANE: SealsEntry = { perimeter: 'compression', threshold: 'compression' };
const BEST_PANE: SealsEntry = { perimeter: 'double-compression', threshold: 'double-compression' };

const present = ({ seals, keyhole, letter_plate, second, items }: Panel): Fittings => ({
  ...(seals && { seals }),
  ...(keyhole && { keyhole }),
  ...(letter_plate && { letter_plate }),
  ...(second && { second }),
  ...(items && { items }),
});

/** Both leaves with these seals, and nothing open in them. */
const sealedWith = (panel: Panel, seals: SealsEntry): Fittings => ({
  seals,
  ...(panel.second && { second: { ...panel.second, seals } }),
});

const doubled = (panel: Panel, assembly: string): Fittings => {
  const window = panel.kind === 'window';
  return {
    ...present(panel),
    second: { assembly, gap_mm: window ? 150 : 300, lined: true, seals: window ? PANE : GOOD },
  };
};

/** What would usually be tried next, less what is there already. */
export const betterWays = (panel: Panel): readonly BetterWay[] => {
  const { assembly, second, items } = panel;
  if (assembly === undefined) return [];
  if (panel.kind === 'service')
    return items?.some(({ kind, sealed }) => !sealed && kind !== 'socket-surface')
      ? [{ name: 'All of it sealed', assembly, fittings: { items: items.map((item) => ({ ...item, sealed: true })) } }]
      : [];
  const window = panel.kind === 'window';
  const bare = second && !second.lined ? [{ ...present(panel), second: { ...second, lined: true } }] : [];
  const offered: readonly BetterWay[] = [
    {
      name: window ? 'Compression seals all round' : 'Compression seals and a drop seal',
      assembly,
      fittings: sealedWith(panel, window ? PANE : GOOD),
    },
    {
      name: window ? 'Two seals all round' : 'Two seals all round, two drop seals',
      assembly,
      fittings: sealedWith(panel, window ? BEST_PANE : BEST),
    },
    ...(second
      ? bare.map((fittings) => ({ name: window ? 'Reveal lined' : 'Lobby lined', assembly, fittings }))
      : [
          {
            name: window ? 'A second pane, reveal lined' : 'A second door, lobby lined',
            assembly,
            fittings: doubled(panel, assembly),
          },
        ]),
  ];
  const names = (panel.candidates ?? []).map(({ name }) => name);
  const same = JSON.stringify(present(panel));
  return offered.filter(({ name, fittings }) => !names.includes(name) && JSON.stringify(fittings) !== same);
};
