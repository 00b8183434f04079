const KEY = 'lullwright.project';

/** The project this window had open, or failing that the machine; null where neither is known. */
export const lastProject = (): string | null => {
  try {
    return sessionStorage.getItem(KEY) ?? localStorage.getItem(KEY);
  } catch {
    return null;
  }
};

export const rememberProject = (id: string): void => {
  try {
    sessionStorage.setItem(KEY, id);
    localStorage.setItem(KEY, id);
  } catch {
    // The newest project opens at the next start instead.
  }
};
