import { isPanel, isSurface } from '../parts.ts';
import type { OpeningEntry, Project, SealsEntry, ServiceItemEntry } from '../schema.ts';
import { partOf, withOpening } from './change.ts';
import { command, refuse } from './command.ts';
import { patched, type Patch } from './patch.ts';

type PanelEntry = Exclude<OpeningEntry, { kind: 'slit' | 'hole' }>;
type SecondEntry = NonNullable<PanelEntry['second']>;

const panelOf = (project: Project, id: string): PanelEntry => {
  const part = partOf(project, id);
  return isPanel(part) && !isSurface(part)
    ? part
    : refuse(`${part.name} has no seals or fittings: choose a door, window or service opening.`);
};

const withPanel = (project: Project, id: string, change: (panel: PanelEntry) => PanelEntry): Project => {
  const before = panelOf(project, id);
  const after = change(before);
  return withOpening(project, id, () => after);
};

const secondOf = ({ name, second }: PanelEntry): SecondEntry => second ?? refuse(`${name} has no second leaf.`);

/** Joints of the first or second leaf; null takes them as tight as the leaf. */
export const setSeals = command<{ opening: string; leaf: 'first' | 'second'; seals: SealsEntry | null }>(
  'Change the seals',
  (project, { opening, leaf, seals }) =>
    withPanel(project, opening, (panel) => {
      const given = { seals: seals ?? undefined };
      return leaf === 'first' ? patched(panel, given) : patched(panel, { second: patched(secondOf(panel), given) });
    }),
);

/** Keyhole and letter plate of a door. */
export const setDoorHoles = command<{
  opening: string;
  patch: { readonly keyhole?: boolean; readonly letter_plate?: 'plain' | 'double' | null };
}>('Change keyhole or letter plate', (project, { opening, patch }) =>
  withPanel(project, opening, (panel) =>
    patched(panel, {
      ...(patch.keyhole === undefined ? {} : { keyhole: patch.keyhole || undefined }),
      ...(patch.letter_plate === undefined ? {} : { letter_plate: patch.letter_plate ?? undefined }),
    }),
  ),
);

/** A second door or pane behind the first; null takes it out. */
export const setSecondLeaf = command<{ opening: string; second: SecondEntry | null }>(
  ({ second }) => (second ? 'Change the second leaf' : 'Take the second leaf out'),
  (project, { opening, second }) =>
    withPanel(project, opening, (panel) =>
      patched(panel, { second: second ? patched<SecondEntry>(panel.second ?? second, second) : undefined }),
    ),
);

export const addServiceItem = command<{ opening: string; item: ServiceItemEntry }>(
  'Add a service',
  (project, { opening, item }) =>
    withPanel(project, opening, (panel) => patched(panel, { items: [...(panel.items ?? []), item] })),
);

export const setServiceItem = command<{ opening: string; at: number; patch: Patch<ServiceItemEntry> }>(
  'Change a service',
  (project, { opening, at, patch }) =>
    withPanel(project, opening, (panel) => {
      const items = panel.items ?? [];
      const before = items[at] ?? refuse(`${panel.name} has no service number ${at + 1}.`);
      const after = patched<ServiceItemEntry>(before, patch);
      return after === before ? panel : patched(panel, { items: items.with(at, after) });
    }),
);

export const removeServiceItem = command<{ opening: string; at: number }>(
  'Remove a service',
  (project, { opening, at }) =>
    withPanel(project, opening, (panel) => {
      const items = panel.items ?? [];
      if (!items[at]) refuse(`${panel.name} has no service number ${at + 1}.`);
      const left = items.toSpliced(at, 1);
      return patched(panel, { items: left.length > 0 ? left : undefined });
    }),
);
