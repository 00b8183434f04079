import { describe, expect, it } from 'vitest';
import { DesignSearch, type DesignPort } from '../../../renderer/store/designSearch.svelte.ts';
import { designRows } from '../../../renderer/views/breathe/designRows.ts';
import {
  designLimits,
  designWords,
  progressWords,
  proofWords,
  putWords,
} from '../../../renderer/views/breathe/designWords.ts';
import { checkProject } from '../../../src/project/check.ts';
import { examples } from '../../../src/project/examples.ts';
import type { Project } from '../../../src/project/schema.ts';
import type { DesignAsk, DesignFound, DesignedVent } from '../../../src/worker/breathe/designAnswer.ts';

const example = (): Project => {
  const checked = checkProject(examples[0]?.document);
  if (!checked.ok) throw new Error('the example is faulty');
  return checked.project;
};
const project = example();
const [supply] = project.vents ?? [];
if (!supply) throw new Error('the example has a vent');
const opening = supply.opening;

const vent: DesignedVent = {
  ductDiameter: 0.15,
  boxes: 1,
  length: 1.2,
  width: 0.5,
  height: 0.18,
  lining: 0.05,
  partitions: 2,
  gap: 0.135,
  linedDuct: 0,
  ductLining: 0.1,
  casing: 'Vent box of two boards',
  layers: [
    { name: 'OSB', thickness: 0.018 },
    { name: 'Plasterboard, dense', thickness: 0.015 },
  ],
  weight: 45.2,
  volume: 0.153,
  widened: [{ name: 'Grille', diameter: 0.24 }],
  loss: 12.4,
  speed: 2.04,
  cost: 0.83,
  inPlace: { cost: 0.41, rating: 52, flow: 0.037 },
  limits: {
    ways: [
      { kind: 'casing', cost: 0.5 },
      { kind: 'air', cost: 0.3 },
    ],
    bands: [100, 125],
    bass: { band: 63, loss: -7.2 },
  },
  entry: { vent: supply, assemblies: {} },
};
const found: DesignFound = {
  mostCost: 1,
  bass: false,
  flow: 0.036,
  count: 2,
  enough: true,
  floor: 0.01,
  tried: { all: 5632, airy: 1264, boxes: 105, coarse: 40, whole: 9, fine: 2 },
  terms: { wallDepth: 0.3, mostSpeed: 2.5, mostLoss: 30, doubt: 1 },
  oneBox: null,
  hole: { width: 0.2, height: 0.2 },
  vent,
};

describe('a design in words', () => {
  it('says what it costs, or why nothing is enough and what would help', () => {
    expect(designWords(found, 'metric')).toBe('This one costs the wall 0.8 dB, not more than the 1 dB asked for.');
    const short = { ...found, enough: false, mostCost: 0.5 };
    expect(designWords(short, 'metric')).toMatch(
      /^Nothing .* enough: the nearest costs the wall 0.8 dB, not 0.5 dB\. Heavier/,
    );
    expect(designWords({ ...short, floor: 0.6 }, 'metric')).toMatch(/Joints and edges alone cost 0.6 dB.* Less air/);
    expect(designWords({ ...found, vent: null, enough: false }, 'metric')).toMatch(/carries 36 L\/s quietly/);
  });

  it('tells what to build, what limits it, and its bass', () => {
    const rows = new Map(designRows(found, 'metric'));
    expect(rows.get('Box, inside')).toBe('1200 mm × 500 mm × 180 mm');
    expect(rows.get('Built of')).toBe('two boards (OSB 18 mm, Plasterboard, dense 15 mm), about 45 kg');
    expect(rows.get('Grille')).toBe('made wider, 240 mm');
    expect(rows.get('Costs the wall')).toBe('0.8 dB, its 2 vents together');
    expect(rows.get('Each way alone')).toBe('the boards 0.5 dB, the open way 0.3 dB');
    expect(rows.get('Bass')).toBe(
      'worst at 63 Hz: 7.2 dB more than an open hole, with the fan off; count from 50 Hz if that matters',
    );
    expect(rows.get('Once it is in')).toBe('Dn,e,w 52 dB, costs the wall 0.4 dB by itself, fans running');
    expect(rows.has('Lined duct') || rows.has('With one box') || rows.has('Hole in the wall')).toBe(false);
    const moved = (flow: number) =>
      new Map(designRows({ ...found, vent: { ...vent, inPlace: { ...vent.inPlace, flow } } }, 'metric')).get(
        'Fans as they are',
      );
    expect([moved(0.037), moved(0)]).toEqual([undefined, undefined]);
    expect(moved(0.06)).toBe('move 60 L/s for 36 L/s needed, more than enough: slow it down');
    expect(moved(0.02)).toBe('move 20 L/s for 36 L/s needed, too little: a stronger fan');
    const narrow = new Map(designRows({ ...found, hole: { width: 0.14, height: 0.2 } }, 'metric'));
    expect(narrow.get('Hole in the wall')).toBe('at least 150 mm; it is drawn 140 mm × 200 mm');
    const oneBox = { cost: 7.25, length: 1.6, width: 0.7, height: 0.28, linedDuct: 1 };
    const short = new Map(designRows({ ...found, enough: false, oneBox }, 'metric'));
    expect(short.get('With one box')).toBe('7.3 dB at best, 1600 mm × 700 mm × 280 mm inside, and a lined duct');
    const low = new Map(designRows({ ...found, bass: true }, 'metric'));
    expect(low.get('Bass')).toMatch(/with the fan off$/);
    expect(low.get('Costs the wall')).toBe('0.8 dB, its 2 vents together, counted from 50 Hz');
    expect(low.get('Once it is in')).toMatch(/by itself from 100 Hz on, fans running$/);
    const both = new Map(designRows({ ...found, vent: { ...vent, boxes: 2, linedDuct: 1 } }, 'metric'));
    expect(both.get('Two boxes, inside')).toMatch(/one in the room, one outside$/);
    expect(both.get('Built of')).toMatch(/^two boards .* about 45 kg each$/);
    expect(both.get('Lined duct')).toBe('1000 mm behind the box, 100 mm of wool round it');
  });

  it('says on what it stands, and what is not counted', () => {
    expect(proofWords(found)).toMatch(
      /^Nothing smaller .*: 40 of the 105 boxes .* at 20 mm, 9 in all bands .*; 2 on the fine grid/,
    );
    expect(proofWords({ ...found, enough: false })).toMatch(/^Nothing in the list does it.* trusted to 1 dB/);
    expect(designLimits(found, 'metric')).toMatch(/300 mm.*Below 100 Hz nothing is counted/);
    expect(designLimits({ ...found, bass: true }, 'metric')).toMatch(/from 50 Hz on/);
    expect(designLimits(found, 'metric')).not.toMatch(/rain/);
    expect(designLimits({ ...found, vent: { ...vent, boxes: 2 } }, 'metric')).toMatch(/outside and must shed the rain/);
    expect(designLimits(found, 'metric')).not.toMatch(/built in place/);
    expect(designLimits({ ...found, vent: { ...vent, weight: 130 } }, 'metric')).toMatch(/built in place.* structure/);
    expect(progressWords({ home: 'a', opening, boxes: 12, of: 105 })).toBe('Looking: 12 boxes of at most 105 solved …');
    expect(putWords(found, vent)).toBe('Put this box into the vent');
    expect(putWords({ ...found, enough: false }, vent)).toBe('Put the nearest into the vent');
  });
});

describe('the search for it', () => {
  const port = () => {
    const asked: DesignAsk[] = [];
    const ended = { times: 0 };
    const worker: DesignPort = {
      postMessage: (ask) => asked.push(ask),
      terminate: () => (ended.times += 1),
      onmessage: null,
      onerror: null,
    };
    return { worker, asked, ended };
  };
  const ask: DesignAsk = { project, opening, mostCost: 1, bass: false };
  const say = (worker: DesignPort, data: unknown) => worker.onmessage?.(new MessageEvent('message', { data }) as never);

  it('ends its worker when it is stopped and hears nothing of it any more', () => {
    const { worker, asked, ended } = port();
    const search = new DesignSearch(() => worker);
    search.look('home', ask);
    say(worker, { kind: 'progress', boxes: 3, of: 9 });
    expect(search.working).toEqual({ home: 'home', opening, boxes: 3, of: 9 });
    search.stop();
    say(worker, { kind: 'found', found });
    expect([search.working, search.outcome('home', opening), ended.times, asked.length]).toEqual([null, null, 1, 1]);
  });

  it('goes on to its end when another vent is asked about meanwhile', () => {
    const { worker, asked, ended } = port();
    const search = new DesignSearch(() => worker);
    search.look('home', ask);
    search.look('home', { ...ask, opening: 'other' });
    expect([asked.length, ended.times, search.working?.opening]).toEqual([1, 0, opening]);
    say(worker, { kind: 'found', found });
    expect(search.outcome('home', opening)).toMatchObject({ kind: 'found', of: project, putIn: false });
    search.look('home', { ...ask, opening: 'other' });
    expect([asked.length, search.working?.opening]).toEqual([2, 'other']);
    expect(search.outcome('home', opening)).not.toBeNull();
  });

  it('keeps what was found with the project that it was found for, and for that kept project only', () => {
    const { worker, ended } = port();
    const search = new DesignSearch(() => worker);
    search.look('home', ask);
    say(worker, { kind: 'found', found });
    expect(search.outcome('home', opening)).toEqual({ kind: 'found', of: project, found, putIn: false });
    expect(search.outcome('elsewhere', opening)).toBeNull();
    expect([search.working, ended.times]).toEqual([null, 1]);
    const next = { ...project };
    search.hasPutIn('home', opening, next);
    expect(search.outcome('home', opening)).toEqual({ kind: 'found', of: next, found, putIn: true });
  });

  it('tells a fault of its worker', () => {
    const { worker } = port();
    const search = new DesignSearch(() => worker);
    search.look('home', ask);
    say(worker, { kind: 'fault', sentence: 'No box can be looked for.' });
    expect(search.outcome('home', opening)).toEqual({ kind: 'fault', sentence: 'No box can be looked for.' });
    expect(search.working).toBeNull();
  });
});
