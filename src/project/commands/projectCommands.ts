import { command } from './command.ts';
import { patched } from './patch.ts';

export const renameProject = command<{ name: string }>('Rename the project', (project, { name }) =>
  patched(project, { name: name.trim() }),
);

export const setNote = command<{ note: string }>('Change the note', (project, { note }) =>
  patched(project, { note: note === '' ? undefined : note }),
);

/** The spectrum by which shares are weighed; null is flat. */
export const setSource = command<{ source: string | null }>('Choose the source', (project, { source }) =>
  patched(project, { source: source ?? undefined }),
);

export const setCurrency = command<{ currency: string }>('Change the currency', (project, { currency }) =>
  patched(project, { currency: currency.trim() === '' ? undefined : currency.trim() }),
);

/** Assemblies laid side by side in Make up, at most four. */
export const setCompare = command<{ compare: readonly string[] }>('Choose what to compare', (project, { compare }) =>
  patched(project, { compare: compare.length > 0 ? [...new Set(compare)] : undefined }),
);
