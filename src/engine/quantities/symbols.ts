/** How a quantity is written: its symbol, unit, the standard's term, and where that is defined. */
export interface QuantitySymbol {
  readonly symbol: string;
  /** '' for a pure number */
  readonly unit: string;
  readonly term: string;
  readonly clause: string;
}

const written = (symbol: string, unit: string, term: string, clause: string): QuantitySymbol => ({
  symbol,
  unit,
  term,
  clause,
});

/** The one table of symbols, units and terms. */
export const symbols = {
  soundReductionIndex: written('R', 'dB', 'sound reduction index', 'ISO 10140-2:2021, 3.1'),
  weightedReduction: written('Rw', 'dB', 'weighted sound reduction index', 'ISO 717-1:2020, 3.1'),
  adaptationTerm: written('C', 'dB', 'spectrum adaptation term', 'ISO 717-1:2020, 4.5'),
  adaptationTermTraffic: written('Ctr', 'dB', 'spectrum adaptation term for low sound', 'ISO 717-1:2020, 4.5'),
  soundTransmissionClass: written('STC', '', 'sound transmission class', 'ASTM E413-16, clause 5'),
  outdoorIndoorClass: written('OITC', '', 'outdoor-indoor transmission class', 'ASTM E1332-16, clause 7'),
  elementLevelDifference: written('Dn,e', 'dB', 'element normalised level difference', 'ISO 10140-2:2021, 3.2'),
  transmissionCoefficient: written('τ', '', 'transmission coefficient', 'ISO 10140-2:2021, 3.1'),
  level: written('L', 'dB', 'level', 'ISO 80000-8:2020, 8-14'),
  gain: written('ΔR', 'dB', 'improvement of the sound reduction index', 'ISO 10140-1:2021, annex G'),
  share: written('W/W', '', 'share of the energy that gets out', 'follows from EN 12354-3:2000, clause 4'),
  frequency: written('f', 'Hz', 'frequency', 'ISO 80000-3:2019, 3-15.1'),
  criticalFrequency: written('fc', 'Hz', 'critical frequency', 'ISO 12354-1:2017, annex B'),
  resonance: written('f0', 'Hz', 'mass-air-mass resonance frequency', 'ISO 12354-1:2017, annex D'),
  surfaceMass: written('m′', 'kg/m²', 'mass per unit area', 'ISO 12354-1:2017, annex B'),
  mass: written('m', 'kg', 'mass', 'ISO 80000-4:2019, 4-1'),
  load: written('g', 'kN/m²', 'load per unit area', 'EN 1991-1-1:2002, 1.4'),
  density: written('ρ', 'kg/m³', 'mass density', 'ISO 80000-4:2019, 4-2'),
  length: written('d', 'm', 'thickness, depth', 'ISO 80000-3:2019, 3-1.4'),
  area: written('S', 'm²', 'area', 'ISO 80000-3:2019, 3-3'),
  youngsModulus: written('E', 'Pa', 'modulus of elasticity', 'ISO 80000-4:2019, 4-19.1'),
  lossFactor: written('η', '', 'loss factor', 'ISO 80000-8:2020, annex; ISO 12354-1:2017, annex C'),
  airflowResistivity: written('σ', 'Pa·s/m²', 'airflow resistivity', 'ISO 9053-1:2018, 3.3'),
  ratio: written('', '', 'ratio', '–'),
} as const satisfies Readonly<Record<string, QuantitySymbol>>;

export type SymbolKey = keyof typeof symbols;
