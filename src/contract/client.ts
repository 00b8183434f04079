import type { ContractError } from './errors.ts';
import type { MethodName, Params, Result } from './methods.ts';

/** The one envelope over all four entrances: in-process call, Electron IPC, loopback HTTP, command line. */
export interface Request {
  readonly method: string;
  readonly params: unknown;
}
export type Response =
  { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly error: ContractError };

/** Whatever carries a request to the dispatcher and its answer back. */
export type Transport = (request: Request) => Promise<Response>;

/** A refusal by the other side, carrying its code and sentence. */
export class Refusal extends Error {
  readonly error: ContractError;
  constructor(error: ContractError) {
    super(error.sentence);
    this.name = 'Refusal';
    this.error = error;
  }
}

export interface Client {
  call<M extends MethodName>(method: M, params: Params<M>): Promise<Result<M>>;
}

/** Client of the contract over any transport. @throws {Refusal} when the answer is an error */
export const createClient = (transport: Transport): Client => ({
  async call<M extends MethodName>(method: M, params: Params<M>): Promise<Result<M>> {
    const response = await transport({ method, params });
    if (!response.ok) throw new Refusal(response.error);
    return response.value as Result<M>;
  },
});
