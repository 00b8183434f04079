export type * from './part.ts';
export type * from './shellResult.ts';
export type { PieceResult } from './pieceResult.ts';
export type { PartSize, PartTransmission, PartWay, Predictor } from './partTransmission.ts';
export { partTransmission } from './partTransmission.ts';
export { MOST_REDUCTION, compositeReduction, equalEnergyReduction, reductionOf } from './composite.ts';
export { escaping, shareOf, sourceEnergy, totalOpenArea } from './shares.ts';
export { bassReduction } from '../quantities/index.ts';
export type { WholeCurve } from './whatIf.ts';
export { ratingGain, wholeCurve } from './whatIf.ts';
export { wholeSpread } from './wholeSpread.ts';
export { evaluateShell } from './evaluateShell.ts';
export type { Source } from './sources.ts';
export { sources } from './sources.ts';
export type { FlankingElement, FlankingMake, FlankingSide } from './flankingElement.ts';
export type { Junction, Run } from './flankingJunction.ts';
export {
  leastVibrationReduction,
  lightweightDifference,
  pastInterlayer,
  vibrationReduction,
} from './flankingJunction.ts';
export type { FlankingPath } from './flankingReduction.ts';
export { apparentReduction, flankingReduction, situFlankingReduction } from './flankingReduction.ts';
export { absorptionLength, situLossFactor, situVelocityDifference, structuralReverberation } from './flankingSitu.ts';
export type { ResilientLining } from './flankingLining.ts';
export { liningImprovement, liningResonance, pathImprovement } from './flankingLining.ts';
export type { FlankingCurves } from './flankingTransmission.ts';
export { carriedMass, carrierOf, flankingCurves, junctionCurve } from './flankingTransmission.ts';
export { followSwaps } from './flankingFollow.ts';
