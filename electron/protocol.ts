import { protocol } from 'electron';
import type { Host } from '../src/host/createHost.ts';
import { ORIGIN, SCHEME } from './origin.ts';

/** Before the app is ready: the scheme counts as secure and standard, so the page has an origin and may fetch. */
export const declareScheme = (): void => {
  protocol.registerSchemesAsPrivileged([
    { scheme: SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
};

/** Serves the built page under app://lullwright/ with the same headers as over the loopback host. */
export const serveScheme = (host: Host): void => {
  protocol.handle(SCHEME, async (request) => {
    if (!request.url.startsWith(`${ORIGIN}/`)) return new Response(null, { status: 403 });
    if (request.method !== 'GET') return new Response(null, { status: 405 });
    const path = request.url.slice(ORIGIN.length).split(/[?#]/)[0] ?? '/';
    const page = await host.readPage(path);
    return new Response(page.body, { status: page.status, headers: page.headers });
  });
};
