import type { Response } from '../contract/client.ts';
import type { Page } from './pages/index.ts';

/** What a shell around the page needs of the host: answers to calls, and the files of the page. */
export interface Host {
  /** Takes whatever came over the wire: its form is checked here. */
  readonly answer: (request: unknown) => Promise<Response>;
  readonly readPage: (pathname: string) => Promise<Page>;
  readonly close: () => void;
}
