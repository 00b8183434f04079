/** What fills a part of the box: air, a bulk-reacting absorber, or air between two lined flat faces. */
export type BoxFilling =
  | { readonly kind: 'air' }
  | { readonly kind: 'porous'; readonly airflowResistivity: number }
  | {
      readonly kind: 'linedFaces';
      /** clear height between the boards, m */
      readonly height: number;
      /** linings on the two flat faces, m: equal, or one of them 0 */
      readonly thicknesses: readonly [number, number];
      readonly airflowResistivity: number;
    };

/** In plan: from (x0, y0) to (x1, y1), m. */
export interface BoxRectangle {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

export interface BoxLining extends BoxRectangle {
  readonly filling: BoxFilling;
}

/** A duct that meets an edge of the plan. W: x = 0, E: x = length, S: y = 0, N: y = width. */
export interface SidePort {
  readonly kind: 'side';
  readonly side: 'W' | 'E' | 'S' | 'N';
  /** middle of the duct along its edge, m */
  readonly centre: number;
  /** width in plan, m: area over height, so that the strip keeps the duct's area */
  readonly width: number;
  /** clear area of the duct, m² */
  readonly area: number;
}

/** A duct that meets a flat face; its footprint in plan. */
export interface FacePort extends BoxRectangle {
  readonly kind: 'face';
  readonly area: number;
}

export type BoxPort = SidePort | FacePort;

/** A flat box seen in plan; later linings win over earlier ones, solids over all. */
export interface BoxGeometry {
  /** inside, along x, m */
  readonly length: number;
  /** inside, along y, m */
  readonly width: number;
  /** inside, between the flat faces, m */
  readonly height: number;
  readonly base: BoxFilling;
  readonly solids: readonly BoxRectangle[];
  readonly linings: readonly BoxLining[];
  readonly ports: readonly [BoxPort, BoxPort];
}

export const AIR: BoxFilling = { kind: 'air' };

/** Width in plan that keeps the duct's area, w = S/H, m. */
export const planWidth = (port: BoxPort, height: number): number =>
  port.kind === 'side' ? port.width : port.area / height;
