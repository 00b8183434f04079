/** A label at a curve's end: where it would like to stand, and where it stands so that none touch. */
export interface PlacedLabel {
  readonly text: string;
  readonly anchor: { readonly x: number; readonly y: number };
  readonly y: number;
}

export interface WantedLabel {
  readonly text: string;
  readonly anchor: { readonly x: number; readonly y: number };
}

/** Rough width of a text in the drawing face; good enough to leave room, never to cut. */
export const textWidth = (text: string, size: number): number => text.length * size * 0.5;

/** Shortens a text to a width, with an ellipsis. */
export const fitted = (text: string, width: number, size: number): string => {
  const most = Math.floor(width / (size * 0.5));
  return text.length <= most ? text : `${text.slice(0, Math.max(1, most - 1)).trimEnd()}…`;
};

/** Spreads labels down a column: in the order of their curves, `apart` px from one another, within top and bottom. */
export const placeLabels = (
  wanted: readonly WantedLabel[],
  apart: number,
  top: number,
  bottom: number,
): readonly PlacedLabel[] => {
  const ordered = wanted
    .map((label, index) => ({ label, index, y: Math.min(bottom, Math.max(top, label.anchor.y)) }))
    .sort((a, b) => a.y - b.y);
  let floor = top;
  for (const it of ordered) {
    it.y = Math.max(it.y, floor);
    floor = it.y + apart;
  }
  let ceiling = bottom;
  for (const it of ordered.toReversed()) {
    it.y = Math.min(it.y, ceiling);
    ceiling = it.y - apart;
  }
  return ordered
    .sort((a, b) => a.index - b.index)
    .map(({ label, y }) => ({ text: label.text, anchor: label.anchor, y }));
};
