import type { OpeningEntry, Project } from '../../../../src/project/schema.ts';
import { sealsInWords } from './sealWords.ts';
import { serviceInWords } from './serviceWords.ts';

type Panel = Exclude<OpeningEntry, { kind: 'slit' | 'hole' }>;

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** What a panel has besides its leaf, in a line or two. */
export const fittingsInWords = (project: Project, panel: Panel): string => {
  const { kind, items, second } = panel;
  if (kind === 'service')
    return items?.length ? `${items.map(serviceInWords).join('; ')}.` : 'Nothing is led through yet.';
  const holes = [
    panel.keyhole ? 'open keyhole' : null,
    panel.letter_plate ? (panel.letter_plate === 'double' ? 'letter plate with two flaps' : 'letter plate') : null,
  ].filter((it) => it !== null);
  const first = capital([sealsInWords(panel.seals), ...holes].join(', '));
  const leaf = kind === 'window' ? 'pane' : 'door';
  if (!second && !panel.seals)
    return `${first}: the figure is that of the ${kind === 'window' ? 'pane' : 'leaf'}${holes.length > 0 ? ' and its holes' : ''} alone.`;
  if (!second) return `${first}.`;
  const made = project.assemblies[second.assembly]?.name ?? second.assembly;
  return `${first}. Then ${second.gap_mm} mm of air, ${second.lined ? 'lined' : 'bare'}, and a second ${leaf}: ${made}, ${sealsInWords(second.seals)}.`;
};
