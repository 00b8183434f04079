import { describe, expect, it } from 'vitest';
import { fittingRows } from '../../../renderer/views/print/fittingRows.ts';
import { noiseWords } from '../../../renderer/views/print/noiseWords.ts';
import { sectionWords, sizeWords } from '../../../renderer/views/print/sizeWords.ts';
import { ventBands, ventPieces } from '../../../renderer/views/print/ventRows.ts';
import type { PathFlow } from '../../../src/engine/airflow/index.ts';
import type { VentReport } from '../../../src/engine/breatheResult.ts';
import type { VentElement } from '../../../src/engine/openings/index.ts';
import type { PieceResult } from '../../../src/engine/shell/index.ts';
import type { OpeningEntry } from '../../../src/project/schema.ts';

const round = { shape: 'round', diameter: 0.16 } as const;

describe('sizes on paper', () => {
  it('are told once with their unit, in the lengths of the window', () => {
    expect(sizeWords([0.394, 0.2], 'metric')).toBe('394 × 200 mm');
    expect(sizeWords([0.254, 0.508], 'imperial')).toBe('10 × 20 in');
    expect(sectionWords(round, 'metric')).toBe('Ø 160 mm');
  });
});

describe('parts of a vent on paper', () => {
  const elements: readonly VentElement[] = [
    { kind: 'grille', name: 'Grille', section: round, freeShare: 0.5 },
    { kind: 'cowl', name: 'Cowl', section: round, loss: 1.5 },
  ];
  it('tell the area that is open to the air', () => {
    // a circle of 160 mm is 201 cm², half of it open
    expect(ventPieces(elements, undefined, 'metric').map(({ free }) => free)).toEqual(['101', '201']);
  });
  it('add up what a part takes from the air, and mark air that is too fast to be quiet', () => {
    const flow: PathFlow = {
      id: 'v',
      flow: 0.06,
      fanPressure: 0,
      loss: 9,
      pieces: [
        { name: 'Grille', element: 0, loss: 3, speed: 3 },
        { name: 'Cowl', element: 1, loss: 2, speed: 3 },
        { name: 'Cowl, entry', element: 1, loss: 1, speed: null },
        { name: 'Out', element: null, loss: 3, speed: null },
      ],
    };
    const rows = ventPieces(elements, flow, 'metric');
    expect(rows.map(({ loss, fast }) => [loss, fast])).toEqual([
      ['3.0', true],
      ['3.0', false],
    ]);
  });
});

describe('sound of a vent on paper', () => {
  it('marks the bands in which it falls short of what is wanted', () => {
    const report = {
      sound: {
        bands: [100, 1000],
        normalisedDifference: [30, 60],
        spread: [6, 4],
        limiting: ['casing', 'joints'],
        extrapolated: [null, 'beyond'],
      },
      cost: { wanted: [40, 55], lost: [2, 0.1] },
    } as unknown as VentReport;
    expect(ventBands(report)).toEqual([
      { band: 100, Dne: 30, spread: 6, limits: 'boards', wanted: 40, lost: 2, short: true, beyond: false },
      { band: 1000, Dne: 60, spread: 4, limits: 'joints', wanted: 55, lost: 0.1, short: false, beyond: true },
    ]);
  });
  it('rates noise by NR and NC, and says on which side of the NC curves it lies', () => {
    expect(noiseWords({ levels: [], noiseRating: 24.6, noiseCriterion: 22.3 })).toBe('NR 25, NC 22');
    expect(noiseWords({ levels: [], noiseRating: 8, noiseCriterion: null })).toBe('below NR 10, below NC 15');
    expect(noiseWords({ levels: [], noiseRating: 70, noiseCriterion: null })).toBe('NR 70, above NC 65');
  });
});

describe('fittings on paper', () => {
  const piece = (name: string, share: number, leaf: PieceResult['leaf'] = null): PieceResult => ({
    name,
    leaf,
    openArea: [],
    share,
    Rw: 30,
    without: { R: [], Rw: 33, bassGain: 1 },
  });
  const panel: Exclude<OpeningEntry, { kind: 'slit' | 'hole' }> = {
    id: 'd',
    name: 'Door',
    kind: 'door',
    width_m: 0.9,
    height_m: 2,
    assembly: 'a',
  };
  it('give each joint its seal, its metres and what a metre leaks, largest part first', () => {
    const door = { ...panel, seals: { perimeter: 'foam', threshold: 'none', threshold_gap_mm: 4 } } as const;
    const pieces = [
      piece('The leaf itself', 0.2),
      piece('Joint at sides and head', 0.1),
      piece('Joint at the threshold', 0.7),
    ];
    expect(fittingRows(door, pieces).map(({ name, made, length, leak }) => [name, made, length, leak])).toEqual([
      ['Joint at the threshold', 'No seal, open joint', '0.9', '40'],
      ['The leaf itself', '', '', ''],
      ['Joint at sides and head', 'Foam strip', '4.9', '10'],
    ]);
  });
  it('tell of each service how many there are and how they are closed', () => {
    const service = {
      ...panel,
      kind: 'service' as const,
      items: [
        { kind: 'socket-surface' as const, count: 2, sealed: false },
        { kind: 'pipe' as const, count: 1, sealed: true, hole_mm: 40 },
      ],
    };
    const pieces = [piece('The leaf itself', 0.5), piece('Sockets on the surface', 0), piece('Pipes', 0.5)];
    const made = Object.fromEntries(fittingRows(service, pieces).map((row) => [row.name, row.made]));
    expect(made['Sockets on the surface']).toBe('2');
    expect(made['Pipes']).toBe('1, hole 40 mm for 22 mm, sealed');
    expect(made['The wall itself']).toBe('');
  });
});
