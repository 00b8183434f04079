/**
 * One ask at a time: while one is answered only the latest other waits, so that a drag is never behind itself.
 * @returns the same question; null for an ask whose place a later one has taken
 */
export const latestOnly = <A extends readonly unknown[], R>(
  ask: (...about: A) => Promise<R>,
): ((...about: A) => Promise<R | null>) => {
  const state: { busy: boolean; waiting: ((begin: boolean) => void) | null } = { busy: false, waiting: null };
  return async (...about) => {
    if (state.busy) {
      state.waiting?.(false);
      const begin = await new Promise<boolean>((resolve) => (state.waiting = resolve));
      if (!begin) return null;
    }
    state.busy = true;
    try {
      return await ask(...about);
    } finally {
      const { waiting } = state;
      state.busy = waiting !== null;
      state.waiting = null;
      waiting?.(true);
    }
  };
};
