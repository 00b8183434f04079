import { describe, expect, it } from 'vitest';
import boatStore from '../../../assets/examples/boat-store.json' with { type: 'json' };
import { partTableContent } from '../../../renderer/views/layOut/partTableContent.ts';
import type { VentReport } from '../../../src/engine/breatheResult.ts';
import { checkProject } from '../../../src/project/check.ts';
import { commands } from '../../../src/project/commands/index.ts';

const checked = checkProject(boatStore);
if (!checked.ok) throw new Error('the example must be in order');
const boxed = commands.adoptCandidate.apply(checked.project, { part: 'vent-in', candidate: 'vent-in-short-box' });
const project = commands.setSeals.apply(boxed, {
  opening: 'doors',
  leaf: 'first',
  seals: { perimeter: 'double-compression', threshold: 'drop' },
});
const sound = {
  opening: 'vent-in',
  sound: { ratings: { Rw: 41 } },
  cost: { lostOverall: 3.456 },
} as unknown as VentReport;
const { headings, rows } = partTableContent(project, null, [sound]);
const cell = (name: string, heading: string): unknown =>
  rows.find(([part]) => part === name)?.[headings.indexOf(heading)];

describe('table of all parts as a file', () => {
  it('tells of a vent what it is made of, its Dn,e,w and what it costs its wall', () => {
    expect(cell('Fresh air vent', 'made of')).toBe('Fresh air, short box');
    expect(cell('Fresh air vent', 'Dn_e_w_dB')).toBe(41);
    expect(cell('Fresh air vent', 'costs wall_dB')).toBe(3.46);
  });

  it('puts the box of a vent under its opening, with the area of its boards and lining added up by hand', () => {
    // 0.8 x 0.5 x 0.2 m inside, one board of 18 mm; one partition 0.5 - 0.16 - 0.05 m long; lining 50 mm
    const casing = 2 * 0.836 * 0.536 + 2 * 0.836 * 0.2 + 2 * 0.5 * 0.2;
    expect(cell('Short box', 'on')).toBe('Fresh air vent');
    expect(cell('Short box', 'across_mm')).toBe(800);
    expect(cell('Short box', 'boards_m2')).toBeCloseTo(casing + 0.29 * 0.2, 2);
    expect(cell('Short box', 'lining_m2')).toBeCloseTo(0.2 * (0.8 - 0.012 + 0.8 + 2 * 0.4 + 2 * 0.24), 2);
  });

  it('gives the metres of seal of a door, two lines where there are two', () => {
    // doors 1.8 x 2.1 m
    expect(cell('Joint at sides and head', 'on')).toBe('Double door');
    expect(cell('Joint at sides and head', 'seal_m')).toBeCloseTo(2 * (2 * 2.1 + 1.8), 2);
    expect(cell('Joint at the threshold', 'seal_m')).toBeCloseTo(1.8, 2);
  });

  it('has as many cells in every row as headings', () => {
    expect(rows.every((row) => row.length === headings.length)).toBe(true);
  });
});
