/** What may be laid over a band chart on demand; those of one group are switched together. */
export type ChartGuide =
  | {
      readonly kind: 'curve';
      readonly group: string;
      readonly label: string;
      /** what stands at its end on the chart */
      readonly short?: string;
      readonly bands: readonly number[];
      readonly values: readonly number[];
    }
  | {
      readonly kind: 'mark';
      readonly group: string;
      /** short sign at the foot, for example "f0" */
      readonly label: string;
      /** what it is, in words */
      readonly what: string;
      readonly frequency: number;
      /** index of the series it belongs to */
      readonly series: number;
    };

/** Groups in the order they first appear. */
export const guideGroups = (guides: readonly ChartGuide[]): readonly string[] => [
  ...new Set(guides.map((guide) => guide.group)),
];
