import { expect, test } from 'vitest';
import { freeWaveRadiation } from '../../../src/engine/transmission/index.ts';
import checks from './checks.json' with { type: 'json' };

/** Speed of sound of the printed example, m/s. */
const SOUND_SPEED = 340;

test.each(checks.map((it) => [it.id, it] as const))(
  'radiation factors of free bending waves are as printed: %s',
  (_, it) => {
    const { l1, l2, cL, t } = it.inputs.element;
    const critical = SOUND_SPEED ** 2 / (1.8 * cL * t);
    const errors = it.inputs.bands_hz.map((band, i) =>
      Math.abs(freeWaveRadiation(band, critical, l1, l2, SOUND_SPEED) - (it.expected.sigma[i] ?? NaN)),
    );
    expect(errors.length).toBe(21);
    expect(Math.max(...errors)).toBeLessThan(1.01e-4);
  },
);
