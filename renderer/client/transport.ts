import type { Request, Response, Transport } from '../../src/contract/client.ts';

/** What the Electron preload script exposes; absent over the loopback host. */
export interface Bridge {
  readonly call: (request: Request) => Promise<Response>;
  readonly printPdf: (fileName: string) => Promise<Response>;
  /** what an item of the window's menu bar asks for */
  readonly onAction?: (listener: (action: string) => void) => void;
}

declare global {
  interface Window {
    readonly lullwright?: Bridge;
  }
}

const unreachable = (sentence: string): Response => ({ ok: false, error: { code: 'internal', sentence } });

const overHttp: Transport = async (request) => {
  try {
    const answer = await fetch('./call', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify(request),
    });
    return (await answer.json()) as Response;
  } catch {
    return unreachable('Lullwright’s host does not answer. Start Lullwright again; everything saved so far is kept.');
  }
};

/** Electron's channel where there is one, the loopback host otherwise. */
export const transport: Transport = (request) =>
  window.lullwright ? window.lullwright.call(request) : overHttp(request);
