import type { ModelErrorRecord } from './modelError.ts';

/**
 * Error of the method by construction class, one standard deviation, dB: what single-number ratings and bands need beside the
 * spread of the inputs so that the stated 90 % intervals hold 90 of 100 measured figures; with the number of figures of the
 * class itself. Few figures lean on the other classes; a class that was never measured goes by `all`.
 * Made by `npm run validate -- --record` from tests/reference/tl (tests/reference/intervals); not edited by hand.
 */
export const MODEL_ERROR_RECORD: ModelErrorRecord = {
  all: { rating: 0.67, band: 3.48 },
  classes: {
    'double glazing': { ratings: 15, rating: 0.4, bands: 48, band: 3.48 },
    'floor: bars, empty': { ratings: 20, rating: 0.4, bands: 0, band: 3.48 },
    'floor: bars, filled': { ratings: 21, rating: 1.74, bands: 0, band: 3.48 },
    'floor: direct, empty': { ratings: 8, rating: 1.36, bands: 0, band: 3.48 },
    'floor: direct, filled': { ratings: 8, rating: 0.4, bands: 0, band: 3.48 },
    glass: { ratings: 4, rating: 0.67, bands: 75, band: 2.36 },
    masonry: { ratings: 6, rating: 1.23, bands: 35, band: 3.54 },
    'masonry with lining': { ratings: 8, rating: 0.4, bands: 0, band: 3.48 },
    'separate leaves, empty': { ratings: 0, rating: 0.67, bands: 6, band: 5.09 },
    'separate leaves, filled': { ratings: 0, rating: 0.67, bands: 6, band: 4.97 },
    'single board': { ratings: 3, rating: 0.4, bands: 64, band: 2.99 },
    'stud wall: staggered with bars, empty': { ratings: 1, rating: 0.66, bands: 0, band: 3.48 },
    'stud wall: staggered with bars, filled': { ratings: 2, rating: 0.46, bands: 0, band: 3.48 },
    'stud wall: staggered, empty': { ratings: 3, rating: 0.4, bands: 6, band: 5.52 },
    'stud wall: staggered, filled': { ratings: 10, rating: 1.33, bands: 6, band: 3.33 },
    'stud wall: steel with bars, empty': { ratings: 5, rating: 0.4, bands: 0, band: 3.48 },
    'stud wall: steel with bars, filled': { ratings: 12, rating: 1.08, bands: 0, band: 3.48 },
    'stud wall: steel, empty': { ratings: 17, rating: 0.4, bands: 18, band: 3.22 },
    'stud wall: steel, filled': { ratings: 25, rating: 0.75, bands: 20, band: 3.24 },
    'stud wall: timber with bars, empty': { ratings: 3, rating: 0.4, bands: 0, band: 3.48 },
    'stud wall: timber with bars, filled': { ratings: 15, rating: 1.15, bands: 6, band: 3.24 },
    'stud wall: timber, empty': { ratings: 8, rating: 1.54, bands: 14, band: 2.69 },
    'stud wall: timber, filled': { ratings: 6, rating: 2.42, bands: 0, band: 3.48 },
    'stud wall: twin, empty': { ratings: 8, rating: 0.85, bands: 0, band: 3.48 },
    'stud wall: twin, filled': { ratings: 14, rating: 0.4, bands: 0, band: 3.48 },
  },
};
