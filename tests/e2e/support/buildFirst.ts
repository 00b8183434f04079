import { buildApp } from '../../../electron/scripts/buildApp.ts';
import { isFresh } from '../../../electron/scripts/fingerprint.ts';

/** The tests drive the app as built; a build from older sources is renewed before the first one. */
export default async (): Promise<void> => {
  if (!isFresh()) await buildApp();
};
