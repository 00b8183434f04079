import { showMoment } from './showFigures.ts';

interface State {
  readonly project: string | null;
  /** ISO time */
  readonly savedAt: string | null;
  readonly waiting: number;
  readonly refused: boolean;
}

/** Title of the window: the project, and when it was saved. */
export const windowTitle = ({ project, savedAt, waiting, refused }: State, now = new Date()): string => {
  if (project === null) return 'Lullwright';
  const saved = refused
    ? 'Not saved'
    : waiting > 0
      ? 'Saving'
      : savedAt && `Saved ${showMoment(new Date(savedAt), now)}`;
  return [project, saved, 'Lullwright'].filter(Boolean).join(' · ');
};
