import * as v from 'valibot';
import music from '../../assets/sources/music.json' with { type: 'json' };
import { id } from './fields.ts';

const sourceEntry = v.strictObject({
  name: v.string(),
  how: v.picklist(['memory', 'common practice', 'engineering judgement']),
  bands_Hz: v.array(v.number()),
  octave_dB: v.array(v.number()),
});
const sourceGroup = v.strictObject({ about: v.string(), sources: v.record(id, sourceEntry) });

/** A sound to keep in: octave levels while playing, of which only the differences between bands matter. */
export type SourceEntry = v.InferOutput<typeof sourceEntry>;

/** Sources that come with the program, by id. */
export const sources: Readonly<Record<string, SourceEntry>> = v.parse(sourceGroup, music).sources;
