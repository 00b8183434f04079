/** Hatch spacing in px by step of share; the lowest step is left blank. */
const SPACING: readonly (number | null)[] = [null, 13, 8.5, 5.5, 3.6];
/** Ink laid under the hatch by step, 0 to 1. */
const TONE: readonly number[] = [0, 0.03, 0.07, 0.12, 0.18];

export interface NetShade {
  readonly key: string;
  readonly spacing: number | null;
  readonly tone: number;
  readonly ink: string;
}

/** Every shade there is: five steps in ink, and the same in the accent for the part that limits. */
export const NET_SHADES: readonly NetShade[] = SPACING.flatMap((spacing, step) => {
  const tone = TONE[step] ?? 0;
  return [
    { key: `share-${step}`, spacing, tone, ink: 'var(--ink)' },
    { key: `limit-${step}`, spacing: spacing ?? 13, tone: Math.max(0.1, tone), ink: 'var(--limit)' },
  ];
});

export const shadeFill = (prefix: string, step: number, limiting: boolean): string =>
  `url(#${prefix}-${limiting ? 'limit' : 'share'}-${step})`;
