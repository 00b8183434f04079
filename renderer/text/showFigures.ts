import type { Ratings } from '../../src/engine/ratings/index.ts';

const MINUS = '\u2212';

/** Whole decibels, or a dash where the rating is missing. */
export const showDecibels = (value: number | null | undefined): string =>
  value === null || value === undefined ? '–' : String(Math.round(value)).replace('-', MINUS);

/** A change, with its sign; whole decibels unless more is asked for. */
export const showGain = (value: number | null | undefined, decimals = 0): string => {
  if (value === null || value === undefined) return '–';
  const rounded = Number(value.toFixed(decimals));
  const text = Math.abs(rounded).toFixed(decimals);
  return rounded > 0 ? `+${text}` : rounded === 0 ? `±${text}` : `${MINUS}${text}`;
};

/** Rw with its adaptation terms as ISO 717-1 writes them: Rw (C; Ctr) = 41 (−2; −6) dB. */
export const showRating = ({ Rw, C, Ctr }: Ratings): string =>
  Rw === null ? '–' : `${showDecibels(Rw)} (${showDecibels(C)}; ${showDecibels(Ctr)})`;

/** Money without false precision: whole units, grouped by thin spaces. */
export const showMoney = (amount: number | null, currency: string | undefined): string => {
  if (amount === null) return 'no price';
  const whole = Math.round(amount)
    .toString()
    .replace(/\B(?=(\d{3})+$)/g, '\u202f');
  return currency ? `${currency} ${whole}` : whole;
};

const TIME = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' });
const DAY = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });

export const showTime = (date: Date): string => TIME.format(date);
export const showDay = (date: Date): string => DAY.format(date);

/** "14:03" of today, "3 Nov 2026, 14:03" of another day. */
export const showMoment = (date: Date, now: Date): string =>
  date.toDateString() === now.toDateString() ? showTime(date) : `${showDay(date)}, ${showTime(date)}`;
