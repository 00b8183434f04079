import type { FrameRows } from '../../../src/project/frameRows.ts';
import type { FrameEntry } from '../../../src/project/schema.ts';

export const STUD_WORDS: Readonly<Record<FrameEntry['stud'], string>> = {
  timber: 'Timber studs',
  steel: 'Steel studs',
  none: 'No studs',
};
export const ARRANGEMENT_WORDS: Readonly<Record<FrameEntry['arrangement'], string>> = {
  common: 'one stud touches both sides',
  staggered: 'staggered on common plates',
  twin: 'two frames, nothing shared',
};
export const FIXING_WORDS: Readonly<Record<FrameEntry['fixing'], string>> = {
  direct: 'boards screwed to the studs',
  'resilient-bar': 'resilient bars',
  'isolating-clip': 'isolating clips and channel',
};

const standing = (frame: FrameEntry, rows: FrameRows | null): string =>
  frame.arrangement === 'twin' && rows && rows.room !== rows.outside
    ? 'a frame of its own, clear of the masonry'
    : ARRANGEMENT_WORDS[frame.arrangement];

/** A frame in one line. @param rows sides on which studs stand */
export const frameWords = (frame: FrameEntry | undefined, rows: FrameRows | null = null): string => {
  if (!frame) return 'no frame';
  const studs = `${STUD_WORDS[frame.stud].toLowerCase()}, ${standing(frame, rows)}`;
  return [frame.stud === 'none' ? 'no studs' : studs, FIXING_WORDS[frame.fixing]].join(', ');
};
