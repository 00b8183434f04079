import type { WhatIf } from '../../../src/engine/shell/index.ts';
import { showMoney } from '../../text/showFigures.ts';

const decibels = (gain: number): string => `${Math.abs(gain).toFixed(Math.abs(gain) < 9.5 ? 1 : 0)} dB`;

/** "+6 dB", with a true minus; a dash where there is none to give. */
export const signedGain = (gain: number | null, decimals = 1): string => {
  if (gain === null) return '–';
  const rounded = Number(gain.toFixed(decimals));
  return rounded === 0 ? '0 dB' : `${rounded > 0 ? '+' : '−'}${Math.abs(rounded).toFixed(decimals)} dB`;
};

/** What the whole room would gain, as the end of a sentence that begins "If this were perfect, ". */
export const gainSentence = (what: WhatIf): string => {
  const bass = Math.round(what.bassGain * 10) / 10;
  const inBass = bass > 0 ? `${decibels(bass)} in the bass` : 'nothing in the bass';
  if (what.RwGain === null) return `the room would gain ${inBass}.`;
  if (what.RwGain <= 0 && bass <= 0) return 'the room would gain nothing: the other parts let out far more.';
  const overall = what.RwGain > 0 ? `${what.RwGain} dB` : 'nothing overall';
  return `the room would gain ${overall}${what.RwGain > 0 && bass > 0 ? `, and ${inBass}` : ` and ${inBass}`}.`;
};

/** A price as printed, and whether it is only the library's. */
export const priceWords = (amount: number | null, currency: string | undefined, illustrative = false): string =>
  `${showMoney(amount, currency)}${illustrative && amount !== null ? ' (illustrative)' : ''}`;

/** "0.4 dB less gets out" */
export const lessGetsOut = (gain: number): string => {
  const rounded = Math.round(gain * 10) / 10;
  if (rounded === 0) return 'as much gets out';
  return `${decibels(rounded)} ${rounded > 0 ? 'less' : 'more'} gets out`;
};
