export type { BoxQuantities, CasingLayer, Piece } from './boxQuantities.ts';
export { boxQuantities, pieceArea } from './boxQuantities.ts';
export type { SealLengths } from './sealLengths.ts';
export { sealLengths } from './sealLengths.ts';
