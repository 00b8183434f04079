import type { IncomingMessage } from 'node:http';
import type { ErrorCode } from '../../contract/errors.ts';
import type { Response as Envelope } from '../../contract/client.ts';
import { BODY_LIMIT, readBody } from './readBody.ts';

export interface CallAnswer {
  readonly status: number;
  readonly envelope: Envelope;
}

const refused = (status: number, code: ErrorCode, sentence: string): CallAnswer => ({
  status,
  envelope: { ok: false, error: { code, sentence } },
});

/** POST /call: the envelope comes in as JSON and its answer goes out as JSON. */
export const answerCall = async (
  request: IncomingMessage,
  answer: (request: unknown) => Promise<Envelope>,
): Promise<CallAnswer> => {
  if (!/^application\/json\b/i.test(request.headers['content-type'] ?? ''))
    return refused(415, 'bad-request', 'A call has to be sent as application/json.');
  const body = await readBody(request);
  if (body === null)
    return refused(
      413,
      'too-large',
      `A call may hold up to ${BODY_LIMIT / 1024 / 1024} MB; this one is larger. Split the file.`,
    );
  try {
    return { status: 200, envelope: await answer(JSON.parse(body)) };
  } catch (fault) {
    if (!(fault instanceof SyntaxError)) throw fault;
    return refused(400, 'bad-request', `The call is not JSON: ${fault.message}.`);
  }
};
