import * as v from 'valibot';

/** How builds that might come of the drawings are drawn: how many, and from which start of chance. */
export const uncertaintyParams = v.optional(
  v.strictObject({
    samples: v.pipe(v.number(), v.integer(), v.minValue(100), v.maxValue(200_000)),
    start: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(4294967295)),
  }),
);

const interval = v.strictObject({
  p5: v.number(),
  p25: v.number(),
  p50: v.number(),
  p75: v.number(),
  p95: v.number(),
});

const figures = v.array(v.number());
const curve = v.strictObject({ p5: figures, p25: figures, p50: figures, p75: figures, p95: figures });

/** 50 of 100 builds lie between p25 and p75, 90 between p5 and p95; dB. */
const ratings = v.strictObject({ Rw: interval, Rw_plus_C50_5000: interval, STC: interval, bass: interval });

/** What the doubt comes from, largest first: one standard deviation either side, dB. */
const doubt = v.strictObject({
  what: v.string(),
  Rw_dB: v.number(),
  Rw_plus_C50_5000_dB: v.number(),
  STC_dB: v.number(),
  bass_dB: v.number(),
  /** by third octave, 25 Hz to 10 kHz */
  R_dB: figures,
});

const drawn = {
  samples: v.number(),
  start: v.number(),
  ratings,
  R_dB: curve,
  /** per band: null, or why the model is outside its range there and what measurements stand behind it */
  beyond: v.array(v.nullable(v.string())),
  doubts: v.array(doubt),
};

export const assemblyIntervals = v.optional(v.strictObject(drawn));

export const shellIntervals = v.optional(
  v.strictObject({
    ...drawn,
    parts: v.record(v.string(), v.strictObject({ ratings })),
    /** chance that the whole room meets the project's target; null without one */
    target: v.nullable(v.strictObject({ rating: v.string(), value_dB: v.number(), chance: v.number() })),
  }),
);

export type AssemblyIntervals = NonNullable<v.InferOutput<typeof assemblyIntervals>>;
export type ShellIntervals = NonNullable<v.InferOutput<typeof shellIntervals>>;
