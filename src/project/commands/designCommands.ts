import type { AssemblyEntry, VentEntry } from '../schema.ts';
import { partOf, withOpening } from './change.ts';
import { command, refuse } from './command.ts';
import { mapped, patched } from './patch.ts';

/** A vent as it was designed, with the make-ups of its boxes that the document lacks. */
export interface VentDesignEntry {
  readonly vent: VentEntry;
  readonly assemblies: Readonly<Record<string, AssemblyEntry>>;
}

/**
 * Puts a designed vent in, as one step: the pieces of the vent with its id are replaced, name, direction and note stay;
 * where there is none, it is added and its opening made of it.
 */
export const putVentDesign = command<VentDesignEntry>(
  ({ vent }) => `Put the designed box into ${vent.name}`,
  (project, { vent, assemblies }) => {
    const opening = partOf(project, vent.opening);
    if (opening.kind !== 'vent') return refuse(`${opening.name} is not a vent; choose an opening of kind vent.`);
    const added = Object.entries(assemblies).filter(([id]) => !Object.hasOwn(project.assemblies, id));
    const furnished =
      added.length === 0
        ? project
        : patched(project, { assemblies: { ...project.assemblies, ...Object.fromEntries(added) } });
    const before = project.vents ?? [];
    if (before.some(({ id }) => id === vent.id))
      return patched(furnished, {
        vents: mapped(before, (it) => (it.id === vent.id ? patched(it, { elements: vent.elements }) : it)),
      });
    const next = patched(furnished, { vents: [...before, vent] });
    return withOpening(next, vent.opening, (it) =>
      patched(it, { assembly: undefined, measured: undefined, path: vent.id }),
    );
  },
);
