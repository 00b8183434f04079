import type { SecondOpinion } from '../../../src/worker/protocol.ts';
import { bandName } from '../../drawings/chart.ts';
import type { ChartGuide } from '../../drawings/chartGuide.ts';

/** Group under which the curve is switched on the chart. */
export const SECOND = 'second method';

export const secondCurve = (opinion: SecondOpinion | null, letter: string): readonly ChartGuide[] =>
  opinion
    ? [
        {
          kind: 'curve',
          group: SECOND,
          label: `${SECOND} ${letter}`,
          short: '2nd method',
          bands: opinion.method.bands,
          values: opinion.method.R,
        },
      ]
    : [];

const listed = (contradictions: SecondOpinion['contradictions']): string =>
  contradictions
    .map(
      ({ band, difference }) => `${bandName(band)} Hz ${difference < 0 ? '−' : '+'}${Math.abs(difference).toFixed(0)}`,
    )
    .join(', ');

export interface SecondWords {
  readonly warning: string | null;
  readonly note: string;
}

/** Where two methods contradict each other, in words; bands that the second was not made for are told apart. */
export const secondWords = ({ method, contradictions }: SecondOpinion): SecondWords => {
  const telling = contradictions.filter(({ outside }) => outside === null);
  const beyond = contradictions.filter(({ outside }) => outside !== null);
  const from = `By ${method.name}: ${method.source}.`;
  const aside = beyond.length === 0 ? '' : ` Not counted, since it does not hold there: ${listed(beyond)} dB.`;
  return {
    warning:
      telling.length === 0
        ? null
        : `Two methods differ by more than 5 dB at ${listed(telling)} dB (second less first). The second rests on no measurements and scatters more; still, where it is that far off the physics is in doubt.`,
    note:
      telling.length === 0
        ? `Both methods agree within 5 dB from 100 Hz to 3.15 kHz wherever the second one holds. ${from}${aside}`
        : `${from}${aside}`,
  };
};
