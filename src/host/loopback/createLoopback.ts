import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Host } from '../host.ts';
import { securityHeaders } from '../pages/index.ts';
import { answerCall } from './answerCall.ts';
import { createSession } from './session.ts';

export interface Loopback {
  readonly port: number;
  /** The first address to open: it carries the token. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

const listen = (server: Server, port: number): Promise<void> =>
  new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      server.off('error', reject);
      resolve();
    });
  });

const say = (response: ServerResponse, status: number, sentence: string): void => {
  response.writeHead(status, { ...securityHeaders, 'Content-Type': 'text/plain; charset=utf-8' }).end(sentence);
};

/**
 * Serves the page and its calls on 127.0.0.1 to the one browser that was handed the first address.
 * @param preferredPort tried first, so that the browser finds its own settings again; any free port where it is taken
 */
export const createLoopback = async (host: Host, preferredPort = 0): Promise<Loopback> => {
  const session = createSession();
  const portOf = (): number => (server.address() as AddressInfo).port;
  const own = (): string => `127.0.0.1:${portOf()}`;

  const handle = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    if (request.headers.host !== own()) return say(response, 421, 'This host answers under its own address only.');
    const url = new URL(request.url ?? '/', `http://${own()}`);
    const reading = request.method === 'GET' || request.method === 'HEAD';
    if (reading && url.pathname === '/' && session.admits(url.searchParams.get('token') ?? '')) {
      response.writeHead(303, { ...securityHeaders, Location: '/', 'Set-Cookie': session.setCookie(portOf()) }).end();
      return;
    }
    if (!session.holdsCookie(request.headers.cookie, portOf()))
      return say(response, 403, 'Open Lullwright from the whole address that its start printed, with the token.');
    if (request.method === 'POST' && url.pathname === '/call') {
      if (request.headers.origin !== `http://${own()}`)
        return say(response, 403, 'Calls are taken from Lullwright’s own page only.');
      const { status, envelope } = await answerCall(request, host.answer);
      const headers = {
        ...securityHeaders,
        'Content-Type': 'application/json; charset=utf-8',
        'Cache-Control': 'no-store',
      };
      response.writeHead(status, headers).end(JSON.stringify(envelope));
      return;
    }
    if (!reading) return say(response, 405, 'Lullwright’s pages can be read only.');
    const page = await host.readPage(url.pathname);
    response.writeHead(page.status, page.headers).end(request.method === 'HEAD' ? undefined : page.body);
  };

  const server = createServer((request, response) => {
    handle(request, response).catch((fault: unknown) => {
      console.error(fault);
      if (!response.headersSent) say(response, 500, 'Lullwright’s host ran into a fault of its own.');
      else response.destroy();
    });
  });
  await listen(server, preferredPort).catch(() => listen(server, 0));
  return {
    port: portOf(),
    address: `http://${own()}/?token=${session.token}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => {
          resolve();
        });
        server.closeAllConnections();
      }),
  };
};
