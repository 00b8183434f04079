import { readFile } from 'node:fs/promises';
import { resolve, sep } from 'node:path';
import { mimeType } from './mimeType.ts';
import { securityHeaders } from './securityHeaders.ts';

export interface Page {
  readonly status: 200 | 403 | 404;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: Uint8Array<ArrayBuffer>;
}

const plain = (status: 403 | 404, sentence: string): Page => ({
  status,
  headers: { ...securityHeaders, 'Content-Type': 'text/plain; charset=utf-8' },
  body: new TextEncoder().encode(sentence),
});

const decode = (pathname: string): string | null => {
  try {
    const path = decodeURIComponent(pathname);
    return path.includes('\0') || path.includes('\\') ? null : path;
  } catch {
    return null;
  }
};

/** Reads one file of the built page by its URL path; nothing outside the folder can be named. */
export const readPage = async (folder: string, pathname: string): Promise<Page> => {
  const path = decode(pathname);
  const root = resolve(folder);
  const file = path === null ? null : resolve(root, `.${path.endsWith('/') ? `${path}index.html` : path}`);
  if (file === null || path?.split('/').includes('..') || !file.startsWith(root + sep))
    return plain(403, 'This address is not part of Lullwright.');
  try {
    const body = new Uint8Array(await readFile(file));
    const hashed = path?.startsWith('/assets/') ?? false;
    const caching = hashed ? 'max-age=31536000, immutable' : 'no-store';
    return {
      status: 200,
      headers: { ...securityHeaders, 'Content-Type': mimeType(file), 'Cache-Control': caching },
      body,
    };
  } catch {
    return plain(404, 'There is no such file in Lullwright.');
  }
};
