const INCH = 0.0254;

/** Length of the scale bar, m, and what is written on it: whole millimetres or inches, as short as can be read. */
export const ventScaleBar = (pixelsPerMetre: number, inches: boolean): { length: number; words: string } => {
  const [unit, name, counts] = inches ? [INCH, 'in', [2, 4, 6, 12, 24, 48]] : [0.001, 'mm', [50, 100, 200, 500, 1000]];
  const count = counts.find((it) => it * unit * pixelsPerMetre >= 30) ?? counts.at(-1) ?? 1;
  return { length: count * unit, words: `${count} ${name}` };
};
