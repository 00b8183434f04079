import type { Station } from '../../store/studio.svelte.ts';

export interface TourStep {
  readonly title: string;
  readonly words: string;
  /** selector of the element pointed at */
  readonly at: string;
  readonly station: Station;
}

export const TOUR: readonly TourStep[] = [
  {
    title: 'This is a room, unfolded',
    words:
      'The example is a boat store in which nine brass players rehearse. Floor in the middle, walls folded out, doors and vents where they are. Press any part to change it.',
    at: 'main section[aria-label="The room"]',
    station: 'layOut',
  },
  {
    title: 'Where the build stands',
    words:
      'The strip always says how much the whole room keeps in, in words and figures, with the bass beside it. Press any figure to see how it came about and how far off it may be.',
    at: '[data-tour=strip]',
    station: 'layOut',
  },
  {
    title: 'One part limits you',
    words:
      'Most of the sound leaves by the weakest part. This one colour is kept for it. Until it is mended, work on any other part buys next to nothing.',
    at: '[data-tour=limit]',
    station: 'layOut',
  },
  {
    title: 'What to do next',
    words:
      'Every part can hold other ways to build it. All are weighed, and the one that buys most is named here with its gain and its cost.',
    at: '[data-tour=next]',
    station: 'layOut',
  },
  {
    title: 'What each part is made of',
    words:
      'Here walls and doors are taken apart into layers, drawn to scale, up to four side by side. Change anything and the curve follows. Undo brings everything back, even tomorrow.',
    at: '[data-tour=rail]',
    station: 'makeUp',
  },
];
