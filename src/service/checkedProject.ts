import { Refusal } from '../contract/client.ts';
import { checkProject, type Checked } from '../project/check.ts';
import { readProject } from '../project/readProject.ts';
import type { Project } from '../project/schema.ts';

/** The project, or a refusal that carries every fault. @throws {Refusal} */
export const acceptProject = (checked: Checked): Project => {
  if (checked.ok) return checked.project;
  const { code, faults } = checked;
  const [first] = faults;
  const more = faults.length > 1 ? ` (and ${faults.length - 1} more)` : '';
  throw new Refusal({ code, sentence: `${first?.sentence ?? ''}${more}`, faults });
};

/** @throws {Refusal} bad-document, newer-document, not-a-project */
export const checkedProject = (document: unknown): Project => acceptProject(checkProject(document));

/** A project from the text of its file. @throws {Refusal} also too-large */
export const projectFromText = (text: string): Project => acceptProject(readProject(text));
