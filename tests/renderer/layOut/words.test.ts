import { describe, expect, it } from 'vitest';
import { bandMeaning } from '../../../renderer/views/layOut/bandChoice.ts';
import { gainSentence, lessGetsOut, priceWords, signedGain } from '../../../renderer/views/layOut/gainWords.ts';
import { layersInWords, partInWords } from '../../../renderer/views/layOut/layerWords.ts';
import { sizeWords } from '../../../renderer/views/layOut/partSpoken.ts';
import { leavesBy, nameInSentence, shareStep } from '../../../renderer/views/layOut/shareWords.ts';
import { rateCurve } from '../../../src/engine/ratings/index.ts';
import type { WhatIf } from '../../../src/engine/shell/index.ts';

const ratings = rateCurve({ bands: [500], values: [30] });
const gain = (RwGain: number | null, bassGain: number): WhatIf => ({ R: [], ratings, RwGain, bassGain });
const nameOf = (id: string): string => ({ gypsum: 'Plasterboard, dense', wool: 'Stone wool slab' })[id] ?? id;

describe('what gets out, in words', () => {
  it('says how much leaves by an opening and through a wall', () => {
    expect(leavesBy(0.5, { name: 'Extract vent', kind: 'vent' })).toBe('half of it leaves by the extract vent');
    expect(leavesBy(0.1, { name: 'North wall', kind: 'wall' })).toBe('a tenth of it leaves through the north wall');
    expect(leavesBy(0.85, { name: 'Roof', kind: 'roof' })).toBe('most of it leaves through the roof');
    expect(leavesBy(0.001, { name: 'Floor', kind: 'floor' })).toBe('next to nothing leaves through the floor');
  });

  it('quotes names of one’s own instead of taking them apart', () => {
    expect(nameInSentence('Bob’s door')).toBe('“Bob’s door”');
    expect(nameInSentence('Door 2')).toBe('“Door 2”');
  });

  it('steps the hatch at 1, 5, 15 and 40 percent', () => {
    expect([0.005, 0.01, 0.049, 0.05, 0.15, 0.39, 0.4, 1].map(shareStep)).toEqual([0, 1, 1, 2, 3, 3, 4, 4]);
  });

  it('tells what the room would gain', () => {
    expect(gainSentence(gain(6, 2.04))).toBe('the room would gain 6 dB, and 2.0 dB in the bass.');
    expect(gainSentence(gain(3, 0))).toBe('the room would gain 3 dB and nothing in the bass.');
    expect(gainSentence(gain(0, 0.5))).toBe('the room would gain nothing overall and 0.5 dB in the bass.');
    expect(gainSentence(gain(0, 0))).toBe('the room would gain nothing: the other parts let out far more.');
    expect(gainSentence(gain(null, 1))).toBe('the room would gain 1.0 dB in the bass.');
  });

  it('prints gains with a true minus and prices with their mark', () => {
    expect([signedGain(1.25), signedGain(-0.5), signedGain(0.02), signedGain(null)]).toEqual([
      '+1.3 dB',
      '−0.5 dB',
      '0 dB',
      '–',
    ]);
    expect([lessGetsOut(0.42), lessGetsOut(-2), lessGetsOut(0)]).toEqual([
      '0.4 dB less gets out',
      '2.0 dB more gets out',
      'as much gets out',
    ]);
    expect(priceWords(120, '£', true)).toBe('£ 120 (illustrative)');
    expect(priceWords(null, '£', true)).toBe('no price');
  });

  it('gives every octave a sound one knows', () => {
    expect(bandMeaning(63)).toContain('kick');
    expect(bandMeaning(4000)).toContain('cymbals');
  });
});

describe('what a part is made of, in words', () => {
  it('names the layers from the room outwards and counts equal boards', () => {
    const board = { kind: 'board' as const, material: 'gypsum', thickness_mm: 12.5 };
    const words = layersInWords(
      {
        name: 'Wall',
        layers: [
          board,
          board,
          {
            kind: 'cavity',
            depth_mm: 110,
            fill: { material: 'wool', thickness_mm: 75 },
            frame: { stud: 'timber', arrangement: 'twin', fixing: 'direct' },
          },
          { kind: 'board', material: 'brick', thickness_mm: 215 },
        ],
      },
      nameOf,
    );
    expect(words).toEqual([
      '2 × 12.5 mm plasterboard, dense',
      '110 mm space with 75 mm stone wool slab, separate timber studs',
      '215 mm brick',
    ]);
  });

  it('says of gaps whether they are open, and how large', () => {
    const gap = { id: 'g', name: 'Gap', kind: 'slit' as const, length_mm: 900, width_mm: 5, depth_mm: 44 };
    expect(partInWords(gap, {}, nameOf)).toEqual(['Open gap 5 mm wide, 900 mm long, 44 mm deep']);
    expect(partInWords({ ...gap, sealed: true }, {}, nameOf)).toEqual(['Sealed for good']);
    expect(sizeWords(gap, 'metric')).toBe('900 mm × 5 mm');
  });
});
