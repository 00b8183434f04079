const STEPS: readonly (readonly [number, string])[] = [
  [0.02, 'next to nothing'],
  [0.07, 'a little'],
  [0.14, 'a tenth'],
  [0.225, 'a fifth'],
  [0.29, 'a quarter'],
  [0.4, 'a third'],
  [0.58, 'half'],
  [0.71, 'two thirds'],
  [0.81, 'three quarters'],
  [0.93, 'most'],
  [0.985, 'nearly all'],
];

/** A share of what gets out (0 to 1) in words. */
export const shareWords = (share: number): string => STEPS.find(([below]) => share < below)?.[1] ?? 'all';

/** A share in whole percent; less than half a percent is not called nothing. */
export const sharePercent = (share: number): string =>
  share > 0 && share < 0.005 ? '< 1 %' : `${Math.round(share * 100)} %`;
