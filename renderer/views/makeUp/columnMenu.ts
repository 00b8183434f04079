import type { MenuItem } from '../../parts/menuItem.ts';
import { MOST_COLUMNS } from './columns.ts';

/** What the menu of a column does; each takes the make-up's id. */
export interface ColumnActions {
  readonly copy: (id: string) => void;
  readonly replace: (id: string) => void;
  readonly compare: (ids: readonly string[]) => void;
  readonly leave: (id: string) => void;
  readonly remove: (id: string) => void;
}

/** The menu of one column of the comparison. @param makeUps how many make-ups the project has */
export const columnMenu = (
  id: string,
  columns: readonly string[],
  makeUps: number,
  { copy, replace, compare, leave, remove }: ColumnActions,
): readonly MenuItem[] => [
  { label: 'Copy as a new column', onselect: () => copy(id), disabled: columns.length >= MOST_COLUMNS },
  { label: 'Show another make-up here …', onselect: () => replace(id) },
  {
    label: 'Put it first',
    onselect: () => compare([id, ...columns.filter((column) => column !== id)]),
    disabled: columns[0] === id,
  },
  { label: 'Take the column away', onselect: () => leave(id), disabled: columns.length < 2 },
  { label: 'Delete this make-up', onselect: () => remove(id), apart: true, disabled: makeUps < 2 },
];
