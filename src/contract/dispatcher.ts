import * as v from 'valibot';
import { pathText, valueText } from '../project/fault.ts';
import { findNotJson } from '../project/jsonValue.ts';
import { suggestion } from '../project/nearest.ts';
import { Refusal, type Response } from './client.ts';
import type { ErrorCode } from './errors.ts';
import { methods, type MethodName, type Result } from './methods.ts';

/** What a handler is given: parameters that have passed the method's schema. */
export type Handled<M extends MethodName> = v.InferOutput<(typeof methods)[M]['params']>;

/** One function a method. A handler refuses by throwing a `Refusal`. */
export type Handlers = {
  readonly [M in MethodName]: (params: Handled<M>) => Result<M> | Promise<Result<M>>;
};

/** Takes whatever came over a wire and always answers; it never throws. */
export type Dispatcher = (request: unknown) => Promise<Response>;

const INTERNAL = 'Lullwright could not do this because of a fault of its own. What is saved is safe; try again.';

const refused = (code: ErrorCode, sentence: string): Response => ({ ok: false, error: { code, sentence } });

const isMethod = (name: unknown): name is MethodName => typeof name === 'string' && Object.hasOwn(methods, name);

const unknownMethod = (name: unknown): Response => {
  const meant = typeof name === 'string' ? suggestion(name, Object.keys(methods)) : '';
  return refused(
    'bad-request',
    `There is no method ${name === undefined ? 'without a name' : valueText(name)}. ${meant}`.trim(),
  );
};

/** The place of the first fault in parameters, and what is allowed there. */
const formSentence = (method: MethodName, issue: v.BaseIssue<unknown>): string => {
  const path = pathText((issue.path ?? []).map((step) => String(step.key)));
  const allowed = issue.expected === 'never' ? 'nothing, it is not known' : (issue.expected ?? 'another value');
  return `The parameters of ${method} are not of its form: ${path || 'they'} must be ${allowed}.`;
};

/**
 * The one gate to the handlers: envelope, method name, parameters and results are checked here, for every entrance
 * alike; only plain JSON passes in either direction.
 * @param onFault told of faults of ours, of which the caller sees only a plain sentence
 */
export const createDispatcher = (handlers: Handlers, onFault?: (fault: unknown) => void): Dispatcher => {
  const run = async <M extends MethodName>(method: M, given: unknown): Promise<Response> => {
    const { params, result } = methods[method];
    const parsed = v.safeParse(params, given);
    if (!parsed.success) return refused('bad-request', formSentence(method, parsed.issues[0]));
    const value: unknown = await handlers[method](parsed.output);
    const answer = v.parse(result, value);
    const stray = findNotJson(answer);
    if (stray) throw new Error(`${method} answered ${pathText(stray.path)}: ${stray.what}`);
    return { ok: true, value: answer };
  };

  return async (request) => {
    try {
      const stray = findNotJson(request);
      if (stray)
        return refused(
          'bad-request',
          `A call holds plain JSON only; at ${pathText(stray.path) || 'its top'} ${stray.what}.`,
        );
      if (typeof request !== 'object' || request === null || Array.isArray(request))
        return refused('bad-request', 'A call is an object with "method" and "params".');
      const { method, params = {} } = request as { method?: unknown; params?: unknown };
      return isMethod(method) ? await run(method, params) : unknownMethod(method);
    } catch (fault) {
      if (fault instanceof Refusal) return { ok: false, error: fault.error };
      onFault?.(fault);
      return refused('internal', INTERNAL);
    }
  };
};
