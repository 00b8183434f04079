import { describe, expect, it } from 'vitest';
import { createClient, Refusal, type Response } from '../../src/contract/client.ts';
import { createDispatcher, type Handlers } from '../../src/contract/dispatcher.ts';
import { methods } from '../../src/contract/methods.ts';

const unused = (): never => {
  throw new Error('a stray call');
};
const idle = Object.fromEntries(Object.keys(methods).map((name) => [name, unused])) as unknown as Handlers;
const about = { version: '1', store: 'nowhere', runtime: 'test' };
const dispatch = (over: Partial<Handlers>, onFault?: (fault: unknown) => void) =>
  createDispatcher({ ...idle, ...over }, onFault);

const sentence = (response: Response): string =>
  response.ok ? 'accepted' : `${response.error.code}: ${response.error.sentence}`;

describe('the dispatcher', () => {
  const answer = dispatch({ 'app.info': () => about, 'projects.revision': ({ id }) => ({ revision: id.length }) });

  it('hands a call of the right form to its handler', async () => {
    expect(await answer({ method: 'app.info', params: {} })).toEqual({ ok: true, value: about });
    expect(await answer({ method: 'projects.revision', params: { id: 'abc' } })).toEqual({
      ok: true,
      value: { revision: 3 },
    });
    expect(await answer({ method: 'app.info' })).toEqual({ ok: true, value: about });
  });

  it.each([[null], ['app.info'], [[]], [7], [undefined]])('refuses %j, which is no envelope', async (request) => {
    expect(sentence(await answer(request))).toMatch(/^bad-request: A call /);
  });

  it('refuses an unknown method, and suggests the near one', async () => {
    expect(sentence(await answer({ method: 'project.list', params: {} }))).toBe(
      'bad-request: There is no method "project.list". Did you mean projects.list?',
    );
    expect(sentence(await answer({ method: 'toString', params: {} }))).toContain('There is no method "toString"');
    expect(sentence(await answer({ params: {} }))).toContain('There is no method without a name');
  });

  it('refuses parameters that are missing, of another type, or unknown', async () => {
    expect(sentence(await answer({ method: 'projects.revision', params: {} }))).toContain(
      'projects.revision are not of its form: id',
    );
    expect(sentence(await answer({ method: 'projects.revision', params: { id: 1 } }))).toContain('id must be string');
    expect(sentence(await answer({ method: 'projects.revision', params: { id: 'a', more: 1 } }))).toContain(
      'more must be nothing',
    );
    expect(sentence(await answer({ method: 'projects.undo', params: { id: 'a', revision: -1 } }))).toContain(
      'revision must be',
    );
  });

  const circle: Record<string, unknown> = {};
  circle['self'] = circle;
  it.each([
    ['NaN', Number.NaN],
    ['infinity', Number.NEGATIVE_INFINITY],
    ['undefined', undefined],
    ['a typed array', new Float64Array(2)],
    ['a date', new Date(0)],
    ['a map', new Map()],
    ['a function', () => 1],
    ['a big integer', 1n],
    ['a circle', circle],
  ])('refuses %s in a document: only JSON passes', async (_, value) => {
    expect(sentence(await answer({ method: 'predict', params: { document: { deep: [value] } } }))).toMatch(
      /^bad-request: A call holds plain JSON only; at params\.document\.deep\[0\]/,
    );
  });

  it('turns a handler’s refusal into data', async () => {
    const error = { code: 'conflict', sentence: 'Another window was faster.' } as const;
    const refusing = dispatch({
      'projects.revision': () => {
        throw new Refusal(error);
      },
    });
    expect(await refusing({ method: 'projects.revision', params: { id: 'a' } })).toEqual({ ok: false, error });
    await expect(createClient(refusing).call('projects.revision', { id: 'a' })).rejects.toMatchObject({
      error,
      message: error.sentence,
    });
  });

  it('tells a fault of ours plainly and keeps its details for the host', async () => {
    const told: unknown[] = [];
    const secret = new Error('secret at /home/someone');
    const failing = dispatch(
      {
        'app.info': () => {
          throw secret;
        },
      },
      (fault) => told.push(fault),
    );
    const response = await failing({ method: 'app.info', params: {} });
    expect(response).toMatchObject({ ok: false, error: { code: 'internal' } });
    expect(JSON.stringify(response)).not.toContain('secret');
    expect(told).toEqual([secret]);
  });

  it.each([
    ['of another form', { version: 1 }],
    ['with a key too many', { ...about, extra: 1 }],
  ])('lets no answer out that is %s', async (_, value) => {
    const wrong = dispatch({ 'app.info': () => value as unknown as typeof about }, () => undefined);
    expect(sentence(await wrong({ method: 'app.info', params: {} }))).toMatch(/^internal: /);
  });

  it('lets no infinity out', async () => {
    const wrong = dispatch({ 'projects.revision': () => ({ revision: Number.POSITIVE_INFINITY }) }, () => undefined);
    expect(sentence(await wrong({ method: 'projects.revision', params: { id: 'a' } }))).toMatch(/^internal: /);
  });
});

describe('the table of methods', () => {
  it('says of each what it does, in a line', () => {
    for (const { what, kind } of Object.values(methods)) {
      expect(what).toMatch(/^[A-Z].{10,100}$/);
      expect(['query', 'command']).toContain(kind);
    }
  });
});
