import { freshId } from '../freshId.ts';
import type { OptionEntry, Project } from '../schema.ts';
import { command, refuse } from './command.ts';
import { mapped, patched, without } from './patch.ts';
import { adopt } from './partCommands.ts';

const optionOf = (project: Project, id: string): OptionEntry =>
  project.options?.find((option) => option.id === id) ?? refuse(`There is no option "${id}" in this project.`);

const withOption = (project: Project, id: string, change: (option: OptionEntry) => OptionEntry): Project => {
  optionOf(project, id);
  return patched(project, {
    options: mapped(project.options ?? [], (option) => (option.id === id ? change(option) : option)),
  });
};

const withoutOption = (project: Project, id: string): Project => {
  const kept = (project.options ?? []).filter((option) => option.id !== id);
  return patched(project, { options: kept.length > 0 ? kept : undefined });
};

/** A named set of swaps: part id to the id of one of its candidates. */
export const addOption = command<{ name: string; id?: string; swaps?: Readonly<Record<string, string>> }>(
  ({ name }) => `Add option ${name}`,
  (project, { name, id, swaps }) => {
    const options = project.options ?? [];
    const added = {
      id:
        id ??
        freshId(
          name,
          options.map((option) => option.id),
        ),
      name,
      swaps: { ...swaps },
    };
    return patched(project, { options: [...options, added] });
  },
);

export const removeOption = command<{ option: string }>('Remove an option', (project, { option }) => {
  optionOf(project, option);
  return withoutOption(project, option);
});

export const renameOption = command<{ option: string; name: string }>('Rename an option', (project, args) =>
  withOption(project, args.option, (option) => patched(option, { name: args.name.trim() })),
);

/** Swaps one part in an option; null leaves the part as it is. */
export const setOptionSwap = command<{ option: string; part: string; candidate: string | null }>(
  'Change an option',
  (project, { option, part, candidate }) =>
    withOption(project, option, (before) => {
      const others = without(before.swaps, part);
      return patched(before, { swaps: candidate === null ? others : { ...others, [part]: candidate } });
    }),
);

/** Every swap of the option becomes the build; the option has then served. */
export const adoptOption = command<{ option: string }>('Adopt an option', (project, { option }) => {
  const swaps = Object.entries(optionOf(project, option).swaps);
  const next = swaps.reduce((build, [part, candidate]) => adopt(build, part, candidate), project);
  return withoutOption(next, option);
});
