export type Theme = 'light' | 'dark';
export type LengthUnits = 'metric' | 'imperial';
export type Paper = 'a4' | 'letter';

const remembered = (key: string): string | null => {
  try {
    return localStorage.getItem(`lullwright.${key}`);
  } catch {
    return null;
  }
};
const remember = (key: string, value: string): void => {
  try {
    localStorage.setItem(`lullwright.${key}`, value);
  } catch {
    // A browser that keeps nothing still works; the choice lasts until the window closes.
  }
};

/** Choices of this machine, not of a project: theme, units, tour seen. */
export class Preferences {
  theme = $state<Theme>(
    (remembered('theme') as Theme | null) ?? (matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light'),
  );
  units = $state<LengthUnits>((remembered('units') as LengthUnits | null) ?? 'metric');
  /** paper that is printed on; where feet are measured it is Letter, until another is chosen */
  #paper = $state(remembered('paper') as Paper | null);
  tourSeen = $state(remembered('tour') === 'seen');

  constructor() {
    document.documentElement.dataset['theme'] = this.theme;
  }
  setTheme(theme: Theme): void {
    this.theme = theme;
    document.documentElement.dataset['theme'] = theme;
    remember('theme', theme);
  }
  setUnits(units: LengthUnits): void {
    this.units = units;
    remember('units', units);
  }
  get paper(): Paper {
    return this.#paper ?? (this.units === 'imperial' ? 'letter' : 'a4');
  }
  setPaper(paper: Paper): void {
    this.#paper = paper;
    remember('paper', paper);
  }
  setTourSeen(): void {
    this.tourSeen = true;
    remember('tour', 'seen');
  }
}

export const preferences = new Preferences();
