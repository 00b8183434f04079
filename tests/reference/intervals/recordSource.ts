import type { ModelErrorRecord } from '../../../src/engine/uncertainty/index.ts';

const written = (dB: number): string => String(Math.round(dB * 100) / 100);

/** The learned scales as a source file of the engine. */
export const recordSource = ({ all, classes }: ModelErrorRecord): string => {
  const lines = Object.entries(classes).map(([kind, { ratings, rating, bands, band }]) => {
    const key = /^[a-z]+$/.test(kind) ? kind : `'${kind}'`;
    return `    ${key}: { ratings: ${ratings}, rating: ${written(rating)}, bands: ${bands}, band: ${written(band)} },`;
  });
  return `import type { ModelErrorRecord } from './modelError.ts';

/**
 * Error of the method by construction class, one standard deviation, dB: what single-number ratings and bands need beside the
 * spread of the inputs so that the stated 90 % intervals hold 90 of 100 measured figures; with the number of figures of the
 * class itself. Few figures lean on the other classes; a class that was never measured goes by \`all\`.
 * Made by \`npm run validate -- --record\` from tests/reference/tl (tests/reference/intervals); not edited by hand.
 */
export const MODEL_ERROR_RECORD: ModelErrorRecord = {
  all: { rating: ${written(all.rating)}, band: ${written(all.band)} },
  classes: {
${lines.join('\n')}
  },
};
`;
};
