import type { WorkingLine } from '../../engine/quantities/index.ts';
import type { PartResult } from '../../engine/shell/index.ts';
import { figure, ratio } from './wording.ts';

/** The band by which a panel is shown; all bands go the same way. */
const SHOWN = 500;

/** How a door, window or service adds up from leaf, joints and holes; nothing for a part without them. */
export const fittingLines = (
  bands: readonly number[],
  { pieces = [], area, R }: PartResult,
): readonly WorkingLine[] => {
  const b = bands.indexOf(SHOWN);
  const beside = pieces.filter(({ leaf }) => leaf === null);
  const whole = `${figure(R[b] ?? 0)} dB`;
  const sum = (list: typeof pieces): string =>
    list.map(({ name, openArea }) => `${name} ${ratio(openArea[b] ?? 0)}`).join(' + ');
  const [first, second] = (['first', 'second'] as const).map((which) => pieces.filter(({ leaf }) => leaf === which));
  if (first?.length && second?.length)
    return [
      {
        what: `Each leaf with its own joints as open areas, m², at ${SHOWN} Hz: first leaf (${sum(first)}), second leaf (${sum(second)}).`,
        equation: 'Rᵢ = −10 lg (Σ S·τ / S)',
        numbers: [first, second]
          .map((list) => {
            const open = list.reduce((all, piece) => all + (piece.openArea[b] ?? 0), 0);
            return `${figure(-10 * Math.log10(Math.min(1, open / area)))} dB`;
          })
          .join(' and '),
        source: 'EN 12354-3:2000, clause 4; joints: EN ISO 10140-1:2021 (form), values common practice',
      },
      {
        what: 'Above the resonance of leaf, air and leaf the two add up, less what the air between them couples, and what passes by the frames limits it.',
        equation: 'R = R₁ + R₂ + min(20 lg(f·d) − 29, 10 lg(A/S))',
        numbers: `at ${SHOWN} Hz ${whole}`,
        source:
          'Sharp, Noise Control Eng. 11 (1978) 53-63; energy balance of a small room; limit by frames: common practice',
      },
    ];
  return beside.length === 0
    ? []
    : [
        {
          what: `Leaf, joints and holes side by side as open areas S·τ, m², at ${SHOWN} Hz.`,
          equation: 'R = −10 lg (Σ S·τ / S), joint: S·τ = l · 10^(−Rs/10)',
          numbers: `(${sum(beside)}) / ${figure(area, 2)} m²: ${whole}`,
          source:
            'EN 12354-3:2000, clause 4; joints: EN ISO 10140-1:2021 (form), values common practice; open gaps: Gomperts & Kihlman, Acustica 18 (1967) 144-150',
        },
      ];
};
