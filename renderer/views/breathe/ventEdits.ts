import type { VentElementEntry, VentEntry } from '../../../src/project/schema.ts';
import { studio } from '../../store/studio.svelte.ts';
import type { BoxEditing } from './boxEditing.ts';
import { newElement, sectionBeside } from './newVent.ts';
import { elementEntry } from './ventEntries.ts';
import type { VentEditing } from './ventEditing.ts';
import type { VentElement } from '../../../src/engine/openings/index.ts';

/** Edits of a vent as steps of the project's history. @param current the vent as it is when something is done */
export const ventEdits = (current: () => VentEntry): VentEditing => {
  const entryAt = (at: number): VentElementEntry | undefined => current().elements[at];
  return {
    move: (at, to) => studio.run('moveVentElement', { vent: current().id, at, to }),
    remove: (at) => studio.run('removeVentElement', { vent: current().id, at }),
    insert: (at, kind) =>
      studio.run('addVentElement', {
        vent: current().id,
        at,
        element: newElement(kind, sectionBeside(current().elements, at)),
      }),
    set: (at, element) => {
      const entry = entryAt(at);
      return (
        entry !== undefined &&
        studio.run('setVentElement', { vent: current().id, at, element: elementEntry(entry, element) })
      );
    },
    drag: (at) => {
      const [vent, entry] = [current().id, entryAt(at)];
      const gesture = studio.gesture();
      return {
        preview: (element) => {
          if (entry) gesture.preview('setVentElement', { vent, at, element: elementEntry(entry, element) });
        },
        commit: () => gesture.commit(),
        cancel: () => gesture.cancel(),
      };
    },
  };
};

/** Edits of one box of a vent. */
export const boxEdits = (
  editing: VentEditing,
  at: number,
  current: () => Extract<VentElement, { kind: 'box' }>,
): BoxEditing => ({
  set: (box) => {
    editing.set(at, { ...current(), box });
  },
  drag: () => {
    const from = current();
    const drag = editing.drag(at);
    return {
      preview: (box) => drag.preview({ ...from, box }),
      commit: () => drag.commit(),
      cancel: () => drag.cancel(),
    };
  },
});
