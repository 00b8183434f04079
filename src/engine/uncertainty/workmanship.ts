import type { BoardFamily } from '../materials/index.ts';

/** A quantity that goes with care: its middle and the spread of its logarithm (or of itself for damp), in standard deviations. */
export interface Care {
  readonly middle: number;
  readonly spread: number;
}

/** How the build is put together: what no drawing shows. */
export interface Workmanship {
  /** open area per metre of joint, m²/m; the spread is of the logarithm */
  readonly joints: Care;
  /** how much more the fixings carry than in the laboratory, as a logarithm: 0 the same */
  readonly fixings: Care;
  /** how damp boards are against the values, in steps of about 1.5 % of the mass */
  readonly damp: Care;
}

export type CareLevel = 'careful' | 'usual' | 'rough';
export type DampLevel = 'dry' | 'usual' | 'damp';

/**
 * Open area that stays along a metre of sealed joint.
 * @source engineering judgement: an unsealed perimeter of a few mm²/m caps a wall near R 50, as trade guides tell of walls
 *   before and after sealing (common practice)
 */
export const JOINTS: Readonly<Record<CareLevel, Care>> = {
  careful: { middle: 0.2e-6, spread: 0.8 },
  usual: { middle: 1e-6, spread: 1 },
  rough: { middle: 10e-6, spread: 1.1 },
};

/**
 * Power along studs and bars against the laboratory's. Screws driven through a bar into the stud, or too tight, carry more.
 * @source engineering judgement
 */
export const FIXINGS: Readonly<Record<CareLevel, Care>> = {
  careful: { middle: 0, spread: 0.15 },
  usual: { middle: 0, spread: 0.35 },
  rough: { middle: 0.6, spread: 0.6 },
};

/** @source engineering judgement: boards take up 1 to 2 % of water between dry and humid rooms, losing some stiffness */
export const DAMP: Readonly<Record<DampLevel, Care>> = {
  dry: { middle: 0, spread: 0.3 },
  usual: { middle: 0, spread: 0.7 },
  damp: { middle: 1.5, spread: 1 },
};

/** Nothing open, nothing carried over, nothing damp: a laboratory's specimen. */
export const FLAWLESS: Workmanship = {
  joints: { middle: 0, spread: 0 },
  fixings: { middle: 0, spread: 0 },
  damp: { middle: 0, spread: 0 },
};

/** What a laboratory leaves to chance: fixings and damp as in a careful build, joints sealed. */
export const LABORATORY: Workmanship = { joints: FLAWLESS.joints, fixings: FIXINGS.careful, damp: DAMP.dry };

/** Share by which one step of damp adds to the mass, takes from the stiffness and adds to the losses of a board. */
export const DAMP_EFFECT = { density: 0.015, stiffness: -0.04, loss: 0.05 } as const;

/** Boards that take up water from the air. @source common practice */
export const takesWater = (family: BoardFamily): boolean =>
  family === 'gypsum' || family === 'wood' || family === 'mineral';
