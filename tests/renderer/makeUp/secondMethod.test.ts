import { describe, expect, it } from 'vitest';
import { SECOND, secondCurve, secondEvidence, secondWords } from '../../../renderer/views/makeUp/secondMethodWords.ts';
import type { SecondOpinion } from '../../../src/worker/protocol.ts';

const opinion = (contradictions: SecondOpinion['contradictions']): SecondOpinion => ({
  method: { name: 'energy flow', source: 'a paper', bands: [100, 125], R: [30, 32], outside: [null, null] },
  contradictions,
});

describe('two methods in words', () => {
  it('agree where no band is more than 5 dB apart', () => {
    const { warning, note } = secondWords(opinion([]), 'stud wall: steel, filled');
    expect(warning).toBeNull();
    expect(note).toContain('agree within 5 dB from 100 Hz to 3.15 kHz');
    expect(note).toContain('energy flow: a paper');
  });
  it('warn by band, and leave out of it where the second does not hold', () => {
    const { warning, note } = secondWords(
      opinion([
        { band: 100, difference: 7.4, outside: 'near the resonance' },
        { band: 1250, difference: -6.2, outside: null },
      ]),
      'stud wall: steel, filled',
    );
    expect(warning).toContain('1.25k Hz −6');
    expect(warning).not.toContain('100 Hz');
    expect(note).toContain('Not counted, since it does not hold there: 100 Hz +7 dB');
  });
  it('say how the second did on measured parts of the kind, and where it is poor or was never compared', () => {
    expect(secondEvidence('stud wall: steel, filled')).toMatch(
      /25 ratings [+\u2212][\d.]+ ± [\d.]+ dB; 18 octave bands/,
    );
    expect(secondEvidence('separate leaves, filled')).toContain('It is poor there');
    expect(secondEvidence('stud wall: steel, filled')).not.toContain('poor');
    expect(secondEvidence('no such kind')).toContain('No measured part of this kind');
    expect(secondWords(opinion([]), 'masonry').note).toContain('parts of this kind (masonry)');
  });
  it('are drawn as a curve of their own group, and not before they are wanted', () => {
    expect(secondCurve(null, 'A')).toEqual([]);
    expect(secondCurve(opinion([]), 'A')).toMatchObject([{ kind: 'curve', group: SECOND, values: [30, 32] }]);
  });
});
