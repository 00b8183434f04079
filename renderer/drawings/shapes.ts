/** Inks of a drawing; on screen they follow the theme, in a file they are those of paper. */
export type Tone = 'ink' | 'soft' | 'line' | 'faint' | 'limit' | 'ground';

interface Stroked {
  readonly tone: Tone;
  readonly width?: number;
  readonly dash?: string;
}
/** What a statistical drawing is made of, in px from its upper left corner. */
export type Shape =
  | ({ readonly kind: 'line'; readonly from: Place; readonly to: Place } & Stroked)
  | ({ readonly kind: 'box'; readonly at: Place; readonly width: number; readonly height: number } & Filled)
  | ({ readonly kind: 'dot'; readonly at: Place; readonly radius: number } & Filled)
  | ({ readonly kind: 'cross'; readonly at: Place; readonly radius: number } & Stroked)
  | Written;

export interface Written {
  readonly kind: 'text';
  readonly at: Place;
  readonly text: string;
  readonly tone: Tone;
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly upwards?: boolean;
}

type Place = readonly [x: number, y: number];
interface Filled {
  readonly tone: Tone;
  /** outline only, so that what lies under it shows */
  readonly hollow?: boolean;
}

export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
}

export const TONES: Readonly<Record<Tone, { readonly token: string; readonly paper: string }>> = {
  ink: { token: 'var(--ink)', paper: '#1c2630' },
  soft: { token: 'var(--ink-soft)', paper: '#4a5661' },
  line: { token: 'var(--line)', paper: '#8a939b' },
  faint: { token: 'var(--line-faint)', paper: '#d5d3c9' },
  limit: { token: 'var(--limit)', paper: '#a8330d' },
  ground: { token: 'var(--caution-ground)', paper: '#f3ecd2' },
};

/** Text in a drawing. */
export const written = (
  text: string,
  at: Place,
  anchor: 'start' | 'middle' | 'end' = 'middle',
  tone: Tone = 'soft',
  size = 11,
): Written => ({ kind: 'text', at, text, tone, size, anchor });
