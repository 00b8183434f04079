import { frame } from '../store/frame.svelte.ts';
import { library } from '../store/library.svelte.ts';
import { studio } from '../store/studio.svelte.ts';
import { pickFile } from './pickFile.ts';

/** What the menu bar, the keys and the project menu can ask of the window. */
export type WindowAction =
  'new-project' | 'open-project' | 'import-project' | 'export-project' | 'print' | 'undo' | 'redo' | 'show-tour';

const importProject = async (): Promise<void> => {
  const file = await pickFile('.json,application/json');
  if (file && (await library.importFile(file))) frame.close();
};

const actions: Readonly<Record<WindowAction, () => void>> = {
  'new-project': () => frame.open('new-build'),
  'open-project': () => frame.open('projects'),
  'import-project': () => void importProject(),
  'export-project': () => {
    const id = studio.saving.head?.id;
    if (id) void library.exportFile(id);
  },
  print: () => {
    if (studio.project) studio.printing = true;
  },
  undo: () => void studio.undo(),
  redo: () => void studio.redo(),
  'show-tour': () => {
    studio.printing = false;
    frame.close();
    frame.tourStep = 0;
  },
};

export const act = (action: WindowAction): void => actions[action]();

const TEXT = 'input:not([type=radio], [type=checkbox], [type=range]), textarea';

/** Whether a text is being written there; a field that only shows what is kept leaves undo and redo to the window. */
const writes = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable || (target.matches(TEXT) && target.dataset['state'] !== 'kept'));

/** The action of a key press; null where the key belongs to a field or to nobody. */
export const actionOfKey = (event: KeyboardEvent): WindowAction | null => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return null;
  const key = event.key.toLowerCase();
  if (key === 'p' && !event.shiftKey) return 'print';
  if (key === 'o' && !event.shiftKey) return 'open-project';
  if (writes(event.target)) return null;
  if (key === 'z') return event.shiftKey ? 'redo' : 'undo';
  if (key === 'y' && !event.shiftKey) return 'redo';
  return null;
};
