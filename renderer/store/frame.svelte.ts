export type FrameDialog = 'projects' | 'new-build' | 'name-and-note' | 'words' | 'trust' | 'about';

/** What the frame shows beside the project: one dialog at a time, and the tour. */
export class Frame {
  dialog = $state<FrameDialog | null>(null);
  /** step of the tour on screen; null when it is not running */
  tourStep = $state<number | null>(null);
  /** STC and OITC beside Rw in the strip */
  americanRatings = $state(false);

  open(dialog: FrameDialog): void {
    this.dialog = dialog;
  }
  close(): void {
    this.dialog = null;
  }
}

export const frame = new Frame();
