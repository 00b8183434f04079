import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import type { Readable } from 'node:stream';

/** What was read, or the sentence that says why not. */
export type Input = { readonly text: string } | { readonly sentence: string };

/** More than any project or table has; reading stops there. */
export const INPUT_LIMIT = 20_000_000;

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file; check its name and folder',
  ENOTDIR: 'a part of its path is not a folder; check the path',
  EISDIR: 'it is a folder; name the file in it',
  EACCES: 'this user may not read it; change its permissions or copy it elsewhere',
  EPERM: 'this user may not read it; change its permissions or copy it elsewhere',
  ENAMETOOLONG: 'its name is longer than a file name can be',
  ELOOP: 'it is a link that leads back to itself',
};

const unreadable = (name: string, fault: unknown): Input => {
  const code = fault instanceof Error && 'code' in fault ? String(fault.code) : '';
  return { sentence: `${name} cannot be read: ${REASONS[code] ?? String(fault)}.` };
};

const decode = (name: string, bytes: Buffer): Input => {
  const encoding = bytes[0] === 0xff && bytes[1] === 0xfe ? 'utf-16le' : 'utf-8';
  try {
    return { text: new TextDecoder(encoding, { fatal: true }).decode(bytes) };
  } catch {
    return {
      sentence: `${name} is not text in UTF-8; it is probably another kind of file, or saved in another encoding.`,
    };
  }
};

const readAll = async (name: string, stream: Readable): Promise<Input> => {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of stream) {
    const bytes = Buffer.from(chunk as Uint8Array);
    size += bytes.length;
    if (size > INPUT_LIMIT) return tooLarge(name, size);
    chunks.push(bytes);
  }
  return decode(name, Buffer.concat(chunks));
};

const tooLarge = (name: string, size: number): Input => ({
  sentence: `${name} has ${size > INPUT_LIMIT * 1.01 ? `${Math.round(size / 1e6)} MB` : `more than ${INPUT_LIMIT / 1e6} MB`}; at most ${INPUT_LIMIT / 1e6} MB are read. It is probably another kind of file.`,
});

/** Reads a file, or standard input for "-", as text. Never throws for anything that a file system can answer. */
export const readInput = async (file: string): Promise<Input> => {
  try {
    if (file === '-') return await readAll('Standard input', process.stdin);
    const { size } = await stat(file);
    return size > INPUT_LIMIT ? tooLarge(file, size) : await readAll(file, createReadStream(file));
  } catch (fault) {
    return unreadable(file === '-' ? 'Standard input' : file, fault);
  }
};
