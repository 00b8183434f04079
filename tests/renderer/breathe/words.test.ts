import { describe, expect, it } from 'vitest';
import { evaluateAir, type AirPlan, type AirPath } from '../../../src/engine/airflow/index.ts';
import type { VentElementEntry } from '../../../src/project/schema.ts';
import { showFlow, showMinutes, showSpeed } from '../../../renderer/text/showFlow.ts';
import { airVerdict, freshAirWords } from '../../../renderer/views/breathe/airWords.ts';
import { partitionAdded } from '../../../renderer/views/breathe/boxEdits.ts';
import { illustrativeCurve, newBox, startElements, STARTS } from '../../../renderer/views/breathe/newVent.ts';
import { notesOf, urgent } from '../../../renderer/views/breathe/noteKinds.ts';
import { pieceRows, speedLabels } from '../../../renderer/views/breathe/pieceRows.ts';
import { absences, plannedSession } from '../../../renderer/views/breathe/sessionEdits.ts';
import { solvingWords } from '../../../renderer/views/breathe/solvingWords.ts';
import { elementEntry } from '../../../renderer/views/breathe/ventEntries.ts';
import { checkProject } from '../../../src/project/check.ts';
import { commands } from '../../../src/project/commands/index.ts';
import { examples } from '../../../src/project/examples.ts';
import { toVentPath } from '../../../src/project/toVents.ts';
import { elements } from './vents.ts';

const plan: AirPlan = {
  volume: 40,
  floor: 16,
  people: [{ name: 'Players', count: 4, activity: 'playing-standing', person: null }],
  session: [
    { name: 'Playing', duration: 2700, presence: 1, door: 'closed', fan: true },
    { name: 'Break', duration: 600, presence: 0, door: 'open', fan: true },
  ],
  target: 1000,
  outdoor: 420,
  perPerson: 0.008,
  changesAt50: 0,
  indoorTemperature: 21,
  outdoorTemperature: 5,
  outdoorHumidity: 80,
  heightBetween: 0,
  wind: 0,
  windOn: 'supply',
  equipment: 500,
  mostRise: 5,
  door: { width: 0.9, height: 2 },
};
const section = { shape: 'round', diameter: 0.1 } as const;
const fan = {
  kind: 'fan',
  name: 'Fan',
  section,
  curve: { flows: [0, 0.1], pressures: [200, 0] },
  soundPower: null,
  type: 'axial',
} as const;
const paths = (withFan: boolean): AirPath[] => [
  { id: 'in', name: 'In', direction: 'supply', elements: withFan ? [...elements, fan] : elements },
  { id: 'out', name: 'Out', direction: 'extract', elements },
];

describe('the curve of a new fan', () => {
  it('is called illustrative until a point of it is changed', () => {
    const begun = startElements('boxes').flatMap((it) => (it.kind === 'fan' ? [it.curve] : []))[0] ?? [];
    expect(illustrativeCurve(begun)).toBe(true);
    expect(illustrativeCurve(begun.map((it, i) => (i === 1 ? { ...it, pressure_Pa: 150 } : it)))).toBe(false);
    expect(illustrativeCurve(begun.slice(1))).toBe(false);
  });
});

describe('the answer to how much fresh air', () => {
  it('names what is needed and what there is', () => {
    const none = evaluateAir(plan, []);
    expect(airVerdict(none)).toBe('unsafe');
    expect(freshAirWords(none, 'metric')).toBe(
      '4 people need 32 L/s of fresh air, 25 L/s at the very least; 0 L/s come in. That is too little to stay in.',
    );
    expect(airVerdict(evaluateAir(plan, paths(false)))).toBe('unsafe');
    const some = evaluateAir(plan, paths(true));
    expect(some.point.outdoorAir).toBeGreaterThan(0.01);
    const plenty = { ...some, point: { ...some.point, outdoorAir: 0.05 } };
    const held = plenty.notes.filter(({ code }) => code !== 'carbon-dioxide');
    expect(freshAirWords({ ...plenty, notes: held }, 'metric')).toMatch(/50 L\/s come in. Enough\.$/);
    const stuffy = evaluateAir({ ...plan, target: 500 }, paths(true)).notes;
    expect(freshAirWords({ ...plenty, notes: stuffy }, 'metric')).toMatch(/not enough to hold the CO2 aimed at\.$/);
    expect(airVerdict({ ...some, people: 0 })).toBe('nobody');
  });
  it('counts in cubic feet for those who build in feet', () => {
    expect([showFlow(0.05, 'metric'), showFlow(0.05, 'imperial'), showFlow(0.0042, 'metric')]).toEqual([
      '50 L/s',
      '106 cfm',
      '4.2 L/s',
    ]);
    expect([showSpeed(2.5, 'metric'), showSpeed(2.5, 'imperial')]).toEqual(['2.5 m/s', '492 ft/min']);
    expect([showMinutes(1020), showMinutes(7800), showMinutes(7200)]).toEqual(['17 min', '2 h 10 min', '2 h']);
  });
});

describe('speeds along a vent', () => {
  const air = evaluateAir(plan, paths(true));
  const [flow] = air.paths;
  it('are told where they will be heard: above 2.5 m/s in ducts and 1.5 m/s in a grille', () => {
    if (!flow) throw new Error('no flow');
    const rows = pieceRows([...elements, fan], flow);
    for (const row of rows) {
      const kind = row.element === null ? undefined : [...elements, fan][row.element]?.kind;
      const most = kind === 'grille' ? 1.5 : kind === 'duct' || kind === 'box' ? 2.5 : Infinity;
      expect(row.fast !== null, `${row.name} ${row.speed}`).toBe(
        (row.speed ?? 0) > most * 1.02 && row.element !== null,
      );
    }
    expect(rows.some(({ fast }) => fast !== null)).toBe(true);
    expect(speedLabels(elements, undefined, String)).toEqual([null, null, null, null]);
  });
});

describe('notes beside the figures they speak of', () => {
  const { notes } = evaluateAir(plan, []);
  const vents = [{ id: 'a', opening: 'hole-a' }];
  it('puts the lack of air first, and a vent’s note only where that vent is shown', () => {
    expect(
      notesOf(notes, 'air', null, vents)
        .filter(urgent)
        .map(({ code }) => code),
    ).toEqual(['no-way-for-air', 'too-little-air']);
    const own = { code: 'vent-bass', severity: 'hint', sentence: '', figures: [], about: { part: 'hole-a' } } as const;
    expect(notesOf([own], 'sound', vents[0] ?? null, vents)).toHaveLength(1);
    expect(notesOf([own], 'sound', { id: 'b', opening: 'hole-b' }, vents)).toHaveLength(0);
    expect(notesOf([own], 'air', vents[0] ?? null, vents)).toHaveLength(0);
  });
});

describe('a session in short', () => {
  it('is playing and breaks until the time is up', () => {
    const steps = plannedSession(120, 45, 10);
    expect(steps.map(({ name, minutes }) => `${name} ${minutes}`)).toEqual([
      'Playing 45',
      'Break 10',
      'Playing 45',
      'Break 10',
      'Playing 10',
    ]);
    expect(plannedSession(90, 90, 0)).toHaveLength(1);
    expect(absences(plan.session)).toEqual([{ from: 45, to: 55, label: 'Break' }]);
  });
});

describe('edits of a vent', () => {
  it('keep everything of a part but its sizes', () => {
    const entry: VentElementEntry = {
      kind: 'duct',
      name: 'My duct',
      section: { shape: 'round', diameter_mm: 100 },
      length_m: 0.3,
      type: 'flexible',
      pulled: 'slack',
      place: 'inside',
      lining: { material: 'mineral-wool-45', thickness_mm: 50 },
    };
    const dragged = elements[2];
    if (dragged?.kind !== 'duct') throw new Error('no duct');
    expect(elementEntry(entry, { ...dragged, length: 0.7 })).toEqual({ ...entry, length_m: 0.7 });
  });
  it.each(STARTS.map(({ key }) => key))('begin from a starting point that the document takes (%s)', (key) => {
    const checked = checkProject(examples[0]?.document);
    if (!checked.ok) throw new Error('the example is faulty');
    const [vent] = checked.project.vents ?? [];
    if (!vent) throw new Error('the example has no vent');
    const next = commands.addVent.apply(checked.project, {
      vent: { name: 'New', opening: vent.opening, direction: 'supply', elements: startElements(key) },
    });
    const again = checkProject(next);
    expect(again.ok ? [] : again.faults).toEqual([]);
    const added = next.vents?.at(-1);
    expect(added && toVentPath(next, added).elements.length).toBe(startElements(key).length);
    // what goes out to the drawing comes back as it was
    const path = added ? toVentPath(next, added).elements : [];
    added?.elements.forEach((entry, i) => {
      const element = path[i];
      if (element && entry.kind === 'box') expect(elementEntry(entry, element)).toEqual(entry);
    });
  });
  it('add a partition in the longest compartment, pointing the other way, until none fits', () => {
    const box = newBox({ shape: 'round', diameter_mm: 125 });
    const once = partitionAdded(box);
    expect(once?.partitions.map(({ side }) => side)).toEqual(['near', 'far', 'near']);
    const full = [box];
    for (let more = partitionAdded(box); more; more = partitionAdded(more)) full.push(more);
    expect(full.length).toBeGreaterThan(2);
    const places = (full.at(-1) ?? box).partitions.map(({ at_m }) => at_m);
    expect(places).toEqual([...places].sort((one, other) => one - other));
  });
});

describe('the state of the wave solution', () => {
  it('says which grid the curves stand on and how long the fine one takes', () => {
    const work = { key: 'a', name: 'Box of Fresh air', fraction: 0.4, band: 315, left: 4.6 };
    expect(solvingWords('a', false, work, false)).toContain('done up to 315 Hz, about 5 s left');
    expect(solvingWords('b', false, work, false)).toContain('waits for Box of Fresh air');
    expect(solvingWords('a', true, null, false)).toContain('fine grid (10 mm)');
    expect(solvingWords('a', false, null, true)).toContain('stopped');
  });
});
