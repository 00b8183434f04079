import type { Studio } from './studio.svelte.ts';

const EVERY = 5_000;

/** Looks for edits of another window on focus and every few seconds. @returns how to stop */
export const watchRevisions = (studio: Studio): (() => void) => {
  const look = (): void => {
    if (document.visibilityState === 'visible') void studio.otherWindows.look();
  };
  const timer = setInterval(look, EVERY);
  window.addEventListener('focus', look);
  document.addEventListener('visibilitychange', look);
  return () => {
    clearInterval(timer);
    window.removeEventListener('focus', look);
    document.removeEventListener('visibilitychange', look);
  };
};
