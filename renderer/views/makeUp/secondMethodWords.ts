import type { SecondOpinion } from '../../../src/worker/protocol.ts';
import { bandName } from '../../drawings/chart.ts';
import type { ChartGuide } from '../../drawings/chartGuide.ts';
import { second } from '../trust/evidence.ts';
import { signed } from '../trust/trustWords.ts';

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

/** Further off than this on average, or scattering more, the second method is poor for a class, dB. */
const POOR = { bias: 3, deviation: 4 };

/** How the second method did on measured parts of a class, in words; its lack said plainly. */
export const secondEvidence = (kind: string): string => {
  const own = second.filter(({ of }) => of === kind);
  if (own.length === 0) return `No measured part of this kind (${kind}) was at hand for it.`;
  const told = own.map(
    ({ figures, count, bias, deviation }) =>
      `${count} ${count === 1 ? figures.replace(/s$/, '') : figures} ${signed(bias)}${count > 1 ? ` ± ${deviation.toFixed(1)}` : ''} dB`,
  );
  const poor = own.some(({ bias, deviation }) => Math.abs(bias) > POOR.bias || deviation > POOR.deviation);
  return `Off on measured parts of this kind (${kind}) by: ${told.join('; ')}.${poor ? ' It is poor there: trust the first.' : ''}`;
};

/**
 * Where two methods contradict each other, in words; bands that the second was not made for are told apart.
 * @param kind class of construction
 */
export const secondWords = ({ method, contradictions }: SecondOpinion, kind: string): SecondWords => {
  const telling = contradictions.filter(({ outside }) => outside === null);
  const beyond = contradictions.filter(({ outside }) => outside !== null);
  const from = `By ${method.name}: ${method.source}. ${secondEvidence(kind)}`;
  const aside = beyond.length === 0 ? '' : ` Not counted, since it does not hold there: ${listed(beyond)} dB.`;
  return {
    warning:
      telling.length === 0
        ? null
        : `Two methods differ by more than 5 dB at ${listed(telling)} dB (second less first). The second was fitted to nothing and scatters more; still, the physics is in doubt there.`,
    note:
      telling.length === 0
        ? `Both methods agree within 5 dB from 100 Hz to 3.15 kHz wherever the second one holds. ${from}${aside}`
        : `${from}${aside}`,
  };
};
