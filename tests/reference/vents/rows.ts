import rows from './checks.json' with { type: 'json' };

const expected = (id: string): unknown => {
  const found = rows.find((it) => it.id === id);
  if (!found) throw new Error(`no check ${id}`);
  return found.expected;
};

/** Figures of a row by octave or third octave. */
export const record = (id: string) => expected(id) as Readonly<Record<string, number>>;
export const list = (id: string) => expected(id) as readonly number[];
export const figure = (id: string): number => Number(expected(id));
export const table = (id: string) => expected(id) as Readonly<Record<string, readonly number[]>>;
