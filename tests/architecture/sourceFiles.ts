import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

export interface SourceFile {
  /** from the project's top, with forward slashes */
  readonly path: string;
  readonly text: string;
}

const walk = (path: string, endings: RegExp): SourceFile[] =>
  readdirSync(join(root, path), { withFileTypes: true }).flatMap((entry) => {
    const inner = `${path}/${entry.name}`;
    if (entry.isDirectory()) return walk(inner, endings);
    return endings.test(entry.name) ? [{ path: inner, text: readFileSync(join(root, inner), 'utf8') }] : [];
  });

/** Every source file under the given folders of the project. */
export const sourceFiles = (folders: readonly string[], endings = /\.(ts|svelte)$/): SourceFile[] =>
  folders.filter((folder) => existsSync(join(root, folder))).flatMap((folder) => walk(folder, endings));

/** The code of a component's script blocks; of other files the whole text. */
export const code = ({ path, text }: SourceFile): string =>
  path.endsWith('.svelte')
    ? [...text.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map((match) => match[1]).join('\n')
    : text;
