import { checkProject, refusedWhole, type Checked } from './check.ts';

/** Largest file that is read, in bytes; a project with every list full is far below it. */
export const LARGEST_FILE = 20_000_000;

const megabytes = (bytes: number): string => `${Math.ceil(bytes / 1e5) / 10} MB`;

/** What is said of a file that is too large to be a project. */
export const tooLarge = (bytes: number): Checked =>
  refusedWhole(
    'too-large',
    `This file has ${megabytes(bytes)}; a project has at most ${megabytes(LARGEST_FILE)}. It is probably another kind of file.`,
    megabytes(bytes),
  );

/** Reads a project file from its text: size, JSON, then everything that `checkProject` looks at. */
export const readProject = (text: string): Checked => {
  if (text.length > LARGEST_FILE) return tooLarge(text.length);
  try {
    return checkProject(JSON.parse(text.replace(/^\uFEFF/, '')));
  } catch (fault) {
    const reason = fault instanceof Error ? fault.message : String(fault);
    const what = text.trim() === '' ? 'it is empty' : `it is not complete JSON (${reason})`;
    return refusedWhole(
      'not-a-project',
      `This is not a Lullwright project: ${what}. The file may be damaged or cut off; try an earlier copy of it.`,
    );
  }
};
