import type { OpeningEntry, VentEntry } from '../schema.ts';
import { command } from './command.ts';
import { addOpening } from './openingCommands.ts';
import type { New } from './surfaceCommands.ts';
import { addVent } from './ventCommands.ts';

/** Adds a vent together with the opening it goes through. */
export const addVentIn = command<{
  surface: string;
  opening: OpeningEntry;
  vent: Omit<New<VentEntry>, 'opening'>;
}>(
  ({ vent }) => `Add ${vent.name}`,
  (project, { surface, opening, vent }) =>
    addVent.apply(addOpening.apply(project, { surface, opening }), { vent: { ...vent, opening: opening.id } }),
);
