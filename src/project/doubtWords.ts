import type { InputKind } from '../engine/uncertainty/index.ts';

interface Named {
  readonly kind: InputKind;
  readonly of: string;
}

interface Words {
  readonly what: (of: string) => string;
  /** what the builder can do about it */
  readonly ask: string;
}

const lower = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);

const WORDS: Readonly<Record<InputKind, Words>> = {
  density: {
    what: (of) => `weight of ${lower(of)}`,
    ask: 'weigh one and divide by its size, or ask the merchant for kg/m²',
  },
  stiffness: {
    what: (of) => `stiffness of ${lower(of)}`,
    ask: 'ask the merchant for its data (modulus of elasticity)',
  },
  loss: {
    what: (of) => `inner damping of ${lower(of)}`,
    ask: 'hardly ever stated; a damping layer makes it matter less',
  },
  thickness: { what: (of) => `thickness of ${lower(of)}`, ask: 'measure a few with a caliper' },
  resistivity: {
    what: (of) => `flow resistivity of ${lower(of)}`,
    ask: 'ask for the flow resistivity (AFr on the label of wools)',
  },
  shear: { what: (of) => `softness of ${lower(of)}`, ask: 'ask the maker for its shear modulus at room temperature' },
  depth: { what: (of) => `depth of the cavity in ${of}`, ask: 'measure it as built, in several places' },
  fixings: {
    what: () => 'how the bars, clips and screws are fixed',
    ask: 'check before closing up that no screw bridges a bar',
  },
  damp: { what: () => 'how damp the boards will be', ask: 'let boards dry in the room before closing up; ventilate' },
  joints: {
    what: () => 'how well the joints are sealed',
    ask: 'seal every layer’s edges; look for light from outside',
  },
  bypass: {
    what: () => 'what seams, frames and the building let past',
    ask: 'seal every layer; keep boards off the old walls and floor; a test on site tells',
  },
  opening: { what: (of) => `true size of ${of}`, ask: 'measure it with feeler gauges, or seal it' },
  measured: { what: (of) => `laboratory curve of ${of}`, ask: 'ask for a second report; laboratories differ' },
  method: {
    what: (of) => `how well the method predicts: ${of}`,
    ask: 'a laboratory curve of this very make-up would settle it',
  },
};

/** A source of doubt in plain words. */
export const doubtName = ({ kind, of }: Named): string => WORDS[kind].what(of);

/** What the builder can measure, ask or do about it. */
export const doubtAdvice = ({ kind }: Named): string => WORDS[kind].ask;
