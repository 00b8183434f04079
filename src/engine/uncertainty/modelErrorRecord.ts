import type { ModelErrorRecord } from './modelError.ts';

/**
 * Error of the method by construction class, one standard deviation, dB: what single-number ratings and bands need beside the
 * spread of the inputs so that the stated 90 % intervals hold 90 of 100 measured figures; with the number of figures of the
 * class itself. Few figures lean on the other classes; a class that was never measured goes by `all`.
 * Made by `npm run validate -- --record` from tests/reference/tl (tests/reference/intervals); not edited by hand.
 */
export const MODEL_ERROR_RECORD: ModelErrorRecord = {
  all: { rating: 0.55, band: 3.51 },
  classes: {
    'double glazing': { ratings: 15, rating: 0.4, bands: 48, band: 3.21 },
    'floor: bars, empty': { ratings: 20, rating: 0.4, bands: 0, band: 3.51 },
    'floor: bars, filled': { ratings: 21, rating: 1.98, bands: 0, band: 3.51 },
    'floor: direct, empty': { ratings: 8, rating: 1.35, bands: 0, band: 3.51 },
    'floor: direct, filled': { ratings: 8, rating: 0.4, bands: 0, band: 3.51 },
    glass: { ratings: 4, rating: 0.69, bands: 75, band: 2.39 },
    masonry: { ratings: 6, rating: 1.24, bands: 35, band: 3.54 },
    'masonry with lining': { ratings: 8, rating: 0.4, bands: 0, band: 3.51 },
    'separate leaves, empty': { ratings: 0, rating: 0.55, bands: 6, band: 4.76 },
    'separate leaves, filled': { ratings: 0, rating: 0.55, bands: 6, band: 4.92 },
    'single board': { ratings: 3, rating: 0.4, bands: 64, band: 2.99 },
    'stud wall: staggered with bars, empty': { ratings: 1, rating: 0.53, bands: 0, band: 3.51 },
    'stud wall: staggered with bars, filled': { ratings: 2, rating: 0.59, bands: 0, band: 3.51 },
    'stud wall: staggered, empty': { ratings: 3, rating: 0.4, bands: 6, band: 4.52 },
    'stud wall: staggered, filled': { ratings: 10, rating: 1.29, bands: 6, band: 3.06 },
    'stud wall: steel with bars, empty': { ratings: 5, rating: 0.4, bands: 0, band: 3.51 },
    'stud wall: steel with bars, filled': { ratings: 12, rating: 0.75, bands: 0, band: 3.51 },
    'stud wall: steel, empty': { ratings: 17, rating: 0.4, bands: 18, band: 3.04 },
    'stud wall: steel, filled': { ratings: 25, rating: 1.01, bands: 20, band: 3.33 },
    'stud wall: timber with bars, empty': { ratings: 3, rating: 0.4, bands: 0, band: 3.51 },
    'stud wall: timber with bars, filled': { ratings: 15, rating: 0.96, bands: 6, band: 3.06 },
    'stud wall: timber, empty': { ratings: 8, rating: 1.43, bands: 14, band: 2.58 },
    'stud wall: timber, filled': { ratings: 6, rating: 3.23, bands: 0, band: 3.51 },
    'stud wall: twin, empty': { ratings: 8, rating: 0.4, bands: 0, band: 3.51 },
    'stud wall: twin, filled': { ratings: 14, rating: 0.46, bands: 0, band: 3.51 },
  },
};
