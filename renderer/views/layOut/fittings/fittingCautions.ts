import type { OpeningEntry } from '../../../../src/project/schema.ts';
import type { PanelKind } from './pieceWords.ts';

type Panel = Exclude<OpeningEntry, { kind: 'slit' | 'hole' }>;

/** How what belongs to a panel is called. */
export const fittingsTitle = (kind: PanelKind): string => {
  if (kind === 'service') return 'Services';
  return kind === 'window' ? 'Seals and second pane' : 'Seals, lock and lobby';
};

/** Whether there is anything to describe beside the leaf. */
export const hasFittings = (kind: string): boolean => kind === 'door' || kind === 'window' || kind === 'service';

/** What to mind, where it matters; local rules come first. */
export const fittingCautions = (panel: Panel): readonly string[] => {
  if (panel.kind === 'door')
    return [
      panel.second
        ? 'Both doors of a lobby must open from inside without a key, and not against one another; nobody outside hears a call for help. Your local rules on escape come first.'
        : 'The door must open from inside without a key: nobody outside hears a call for help. Your local rules on escape come first.',
      ...(panel.letter_plate
        ? ['A letter plate also lets smoke and heat through: in a fire door it must be one tested with that door.']
        : []),
      'Where the wall is a fire barrier, leaf, seals and frame must be tested together; a fire door keeps its closer and its strips. Ask your building control.',
    ];
  if (panel.kind === 'window')
    return panel.second
      ? [
          'A window that is a way out in a fire must still open, both panes of it. Leave a way to clean and dry the space between; ask your local building control.',
        ]
      : [];
  const items = panel.items ?? [];
  const electric = items.some(({ kind }) => kind !== 'pipe');
  return [
    ...(electric
      ? ['Wiring is for a licensed electrician under your local rules; cables in wool carry less current.']
      : []),
    ...(items.some(({ kind }) => kind === 'recessed-light')
      ? ['A recessed light must not be covered with wool unless its maker allows it: it can start a fire.']
      : []),
    ...(items.some(({ kind }) => kind === 'cable' || kind === 'pipe')
      ? ['Through a wall that is a fire barrier, cables and pipes need a tested fire stop, not mastic alone.']
      : []),
  ];
};
