export type { BoxQuantities, CasingLayer, Piece } from './boxQuantities.ts';
export { boxQuantities, pieceArea } from './boxQuantities.ts';
