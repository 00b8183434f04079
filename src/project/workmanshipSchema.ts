import * as v from 'valibot';

export const CARE_LEVELS = ['careful', 'usual', 'rough'] as const;
export const DAMP_LEVELS = ['dry', 'usual', 'damp'] as const;

const care = (what: string) => v.optional(v.pipe(v.picklist(CARE_LEVELS), v.description(what)));

/** How well the room is put together: what no drawing shows; usual where it is not given. */
export const workmanshipSchema = v.strictObject({
  joints: care('how well joints and edges are sealed; usual where it is not given'),
  fixings: care(
    'how well bars, clips and studs are fixed: no screw through a bar into the stud; usual where it is not given',
  ),
  damp: v.optional(
    v.pipe(v.picklist(DAMP_LEVELS), v.description('how damp the boards will be; usual where it is not given')),
  ),
});

export type WorkmanshipEntry = v.InferOutput<typeof workmanshipSchema>;
