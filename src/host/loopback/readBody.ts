import type { IncomingMessage } from 'node:http';

export const BODY_LIMIT = 25 * 1024 * 1024;

/** The whole body as text; null once it grows past the limit (the rest is drained, not kept). */
export const readBody = async (request: IncomingMessage, limit: number = BODY_LIMIT): Promise<string | null> => {
  const pieces: Buffer[] = [];
  let size = 0;
  for await (const piece of request as AsyncIterable<Buffer>) {
    size += piece.length;
    if (size <= limit) pieces.push(piece);
    else pieces.length = 0;
  }
  return size > limit ? null : Buffer.concat(pieces).toString('utf8');
};
