import type { ModelErrorRecord } from './modelError.ts';

/**
 * Error of the method by construction class, one standard deviation, dB: what single-number ratings and bands need beside the
 * spread of the inputs so that the stated 90 % intervals hold 90 of 100 measured figures; with the number of figures of the
 * class itself. Few figures lean on the other classes; a class that was never measured goes by `all`.
 * Made by `npm run validate -- --record` from tests/reference/tl (tests/reference/intervals); not edited by hand.
 */
export const MODEL_ERROR_RECORD: ModelErrorRecord = {
  all: { rating: 0.66, band: 3.51 },
  classes: {
    'double glazing': { ratings: 15, rating: 0.4, bands: 48, band: 3.48 },
    'floor: bars, empty': { ratings: 20, rating: 0.4, bands: 0, band: 3.51 },
    'floor: bars, filled': { ratings: 21, rating: 1.8, bands: 0, band: 3.51 },
    'floor: direct, empty': { ratings: 8, rating: 1.38, bands: 0, band: 3.51 },
    'floor: direct, filled': { ratings: 8, rating: 0.4, bands: 0, band: 3.51 },
    glass: { ratings: 4, rating: 0.7, bands: 75, band: 2.36 },
    masonry: { ratings: 6, rating: 1.22, bands: 35, band: 3.55 },
    'masonry with lining': { ratings: 8, rating: 0.4, bands: 0, band: 3.51 },
    'separate leaves, empty': { ratings: 0, rating: 0.66, bands: 6, band: 5.32 },
    'separate leaves, filled': { ratings: 0, rating: 0.66, bands: 6, band: 4.91 },
    'single board': { ratings: 3, rating: 0.4, bands: 64, band: 2.99 },
    'stud wall: staggered with bars, empty': { ratings: 1, rating: 0.65, bands: 0, band: 3.51 },
    'stud wall: staggered with bars, filled': { ratings: 2, rating: 0.42, bands: 0, band: 3.51 },
    'stud wall: staggered, empty': { ratings: 3, rating: 0.4, bands: 6, band: 5.53 },
    'stud wall: staggered, filled': { ratings: 10, rating: 1.35, bands: 6, band: 3.36 },
    'stud wall: steel with bars, empty': { ratings: 5, rating: 0.4, bands: 0, band: 3.51 },
    'stud wall: steel with bars, filled': { ratings: 12, rating: 1.09, bands: 0, band: 3.51 },
    'stud wall: steel, empty': { ratings: 17, rating: 0.4, bands: 18, band: 3.02 },
    'stud wall: steel, filled': { ratings: 25, rating: 0.6, bands: 20, band: 3.9 },
    'stud wall: timber with bars, empty': { ratings: 3, rating: 0.4, bands: 0, band: 3.51 },
    'stud wall: timber with bars, filled': { ratings: 15, rating: 1.1, bands: 6, band: 3.24 },
    'stud wall: timber, empty': { ratings: 8, rating: 1.64, bands: 14, band: 2.62 },
    'stud wall: timber, filled': { ratings: 6, rating: 2.47, bands: 0, band: 3.51 },
    'stud wall: twin, empty': { ratings: 8, rating: 0.83, bands: 0, band: 3.51 },
    'stud wall: twin, filled': { ratings: 14, rating: 0.4, bands: 0, band: 3.51 },
  },
};
