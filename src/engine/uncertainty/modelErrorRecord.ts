import type { ModelErrorRecord } from './modelError.ts';

/**
 * Error of the method by construction class, one standard deviation, dB: what single-number ratings and bands need beside the
 * spread of the inputs so that the stated 90 % intervals hold 90 of 100 measured figures; with the number of figures.
 * Made by `npm run validate -- --record` from tests/reference/tl (tests/reference/intervals); not edited by hand.
 */
export const MODEL_ERROR_RECORD: ModelErrorRecord = {
  all: { rating: 0.83, band: 3.51 },
  classes: {
    'double glazing': { ratings: 15, rating: 2.33, bands: 48, band: 4.1 },
    'floor: bars, empty': { ratings: 20, rating: 0.34, bands: 0, band: null },
    'floor: bars, filled': { ratings: 21, rating: 1.84, bands: 0, band: null },
    'floor: direct, empty': { ratings: 8, rating: 1.18, bands: 0, band: null },
    'floor: direct, filled': { ratings: 8, rating: 0, bands: 0, band: null },
    glass: { ratings: 4, rating: 0.53, bands: 75, band: 2.37 },
    masonry: { ratings: 6, rating: 1.82, bands: 35, band: 5.59 },
    'masonry with lining': { ratings: 8, rating: 0, bands: 0, band: null },
    'separate leaves, empty': { ratings: 0, rating: null, bands: 6, band: 4.94 },
    'separate leaves, filled': { ratings: 0, rating: null, bands: 6, band: 4.97 },
    'single board': { ratings: 3, rating: 0.38, bands: 64, band: 2.86 },
    'stud wall: staggered with bars, empty': { ratings: 1, rating: 0, bands: 0, band: null },
    'stud wall: staggered with bars, filled': { ratings: 2, rating: 0.33, bands: 0, band: null },
    'stud wall: staggered, empty': { ratings: 3, rating: 0, bands: 6, band: 4.2 },
    'stud wall: staggered, filled': { ratings: 10, rating: 2.64, bands: 6, band: 3.29 },
    'stud wall: steel with bars, empty': { ratings: 5, rating: 0, bands: 0, band: null },
    'stud wall: steel with bars, filled': { ratings: 12, rating: 1.6, bands: 0, band: null },
    'stud wall: steel, empty': { ratings: 17, rating: 0, bands: 18, band: 4.17 },
    'stud wall: steel, filled': { ratings: 25, rating: 1.14, bands: 20, band: 3.65 },
    'stud wall: timber with bars, empty': { ratings: 3, rating: 0, bands: 0, band: null },
    'stud wall: timber with bars, filled': { ratings: 15, rating: 0.99, bands: 6, band: 2.97 },
    'stud wall: timber, empty': { ratings: 8, rating: 1.96, bands: 14, band: 2.49 },
    'stud wall: timber, filled': { ratings: 6, rating: 3.01, bands: 0, band: null },
    'stud wall: twin, empty': { ratings: 8, rating: 0, bands: 0, band: null },
    'stud wall: twin, filled': { ratings: 14, rating: 0.69, bands: 0, band: null },
  },
};
