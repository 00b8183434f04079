/** How a board behaves in place: decides the losses added by mounting and the treatment of heavy plates. */
export type BoardFamily = 'gypsum' | 'wood' | 'glass' | 'metal' | 'mineral' | 'soft' | 'polymer' | 'other';

/** A plate. SI: density kg/m³, Young's modulus Pa (0 for limp sheets), loss factor of the material itself. */
export interface BoardMaterial {
  readonly kind: 'board';
  readonly family: BoardFamily;
  readonly name: string;
  readonly density: number;
  readonly youngsModulus: number;
  readonly poissonRatio: number;
  readonly lossFactor: number;
}

/** A fibrous or open-cell absorber with a limp frame. SI: density kg/m³, airflow resistivity Pa·s/m². */
export interface PorousMaterial {
  readonly kind: 'porous';
  readonly name: string;
  readonly density: number;
  readonly airflowResistivity: number;
}

/** A thin shear layer between two boards. SI: density kg/m³, shear modulus Pa at 1 kHz. */
export interface ViscoelasticMaterial {
  readonly kind: 'viscoelastic';
  readonly name: string;
  readonly density: number;
  readonly shearModulus: number;
  readonly lossFactor: number;
}

export type Material = BoardMaterial | PorousMaterial | ViscoelasticMaterial;
