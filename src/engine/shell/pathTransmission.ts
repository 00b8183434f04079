import type { Assembly } from '../assembly/index.ts';
import { solveBoxWhole, ventTransmission, waveBoxSound } from '../openings/index.ts';
import type { BoxSound, VentBox, VentPath } from '../openings/index.ts';
import type { PartSize, PartTransmission, Predictor } from './partTransmission.ts';

/** A box solved anew, for a caller that remembers none. */
export const solvedBox = (box: VentBox): BoxSound => waveBoxSound(box, solveBoxWhole);

/** Of the rating of a vent, dB. @source engineering judgement: such boxes have not been compared with measurements */
const VENT_RATING_SPREAD = 4;

/**
 * A vent lets the same through whatever hole of the wall is counted as its area. Its fans are taken as standing: moving
 * air holds the sound back a little, and the shell is told on the safe side.
 */
export const pathTransmission = (
  path: VentPath,
  area: number,
  predict: Predictor,
  boxSound: (box: VentBox) => BoxSound,
): PartTransmission => {
  const reduction = (assembly: Assembly, size: PartSize): readonly number[] => predict(assembly, size).R;
  const { openArea, spread, extrapolated, ratings, ways } = ventTransmission(path, { boxSound, reduction });
  return {
    ratings,
    surfaceMass: null,
    thickness: null,
    area,
    openArea,
    spread,
    extrapolated,
    ratingSpread: VENT_RATING_SPREAD,
    family: 'vent',
    ways,
  };
};
