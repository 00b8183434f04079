import { describe, expect, it } from 'vitest';
import { DesignSearch, type DesignPort } from '../../../renderer/store/designSearch.svelte.ts';
import { designLimits, designRows, designWords } from '../../../renderer/views/breathe/designWords.ts';
import { checkProject } from '../../../src/project/check.ts';
import { examples } from '../../../src/project/examples.ts';
import type { Project } from '../../../src/project/schema.ts';
import type { DesignAsk, DesignFound } from '../../../src/worker/breathe/designAnswer.ts';
import { designTask } from '../../../src/worker/breathe/designTask.ts';

const example = (): Project => {
  const checked = checkProject(examples[0]?.document);
  if (!checked.ok) throw new Error('the example is faulty');
  return checked.project;
};
const project = example();
const opening = project.vents?.[0]?.opening ?? '';
const found: DesignFound = {
  mostCost: 1,
  flow: 0.036,
  count: 2,
  enough: true,
  terms: { boards: 25, wallDepth: 0.3, mostSpeed: 2.5, mostLoss: 30 },
  box: {
    ductDiameter: 0.15,
    length: 1.2,
    width: 0.5,
    height: 0.18,
    lining: 0.05,
    partitions: 2,
    gap: 0.135,
    loss: 12.4,
    speed: 2.04,
    cost: 0.83,
    limit: 'casing',
  },
};

describe('the smallest box for a vent of the project', () => {
  it('is one that does it, or is said not to be enough, and is told of on the way', () => {
    const solved: number[] = [];
    const answer = designTask({ project, opening, mostCost: 20 }, (boxes) => solved.push(boxes));
    expect(answer.enough).toBe(true);
    expect(answer.box?.cost).toBeLessThanOrEqual(20);
    expect(answer.box?.speed).toBeLessThanOrEqual(2.5);
    expect(solved.at(-1)).toBeGreaterThan(0);
  }, 60_000);

  it('is refused for an opening that is in no wall', () => {
    expect(() => designTask({ project, opening: 'nowhere', mostCost: 1 }, () => undefined)).toThrow(/no wall/);
  });

  it('is told in words, with what is not counted', () => {
    expect(designWords(found, 'metric')).toBe('This one costs the wall 0.8 dB, not more than the 1 dB asked for.');
    expect(designWords({ ...found, enough: false }, 'metric')).toMatch(/^No box that was tried is enough: the nearest/);
    expect(designWords({ ...found, box: null, enough: false }, 'metric')).toMatch(/carries 36 L\/s quietly/);
    const rows = new Map(designRows(found, 'metric').map(([name, words]) => [name, words]));
    expect(rows.get('Box, inside')).toBe('1200 mm × 500 mm × 180 mm');
    expect(rows.get('Lets most through')).toBe('the boards of the box');
    expect(designLimits(found, 'metric')).toMatch(/One box .*25 kg\/m².*below 100 Hz is not counted/);
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
  const say = (worker: DesignPort, data: unknown) => worker.onmessage?.(new MessageEvent('message', { data }) as never);

  it('ends its worker when it is stopped and hears nothing of it any more', () => {
    const { worker, asked, ended } = port();
    const search = new DesignSearch(() => worker);
    search.look(project, opening, 1);
    say(worker, { kind: 'progress', boxes: 3 });
    expect(search.working).toEqual({ opening, boxes: 3 });
    search.stop();
    say(worker, { kind: 'found', found });
    expect([search.working, search.answer, ended.times, asked.length]).toEqual([null, null, 1, 1]);
  });

  it('keeps what was found with the project that it was found for', () => {
    const { worker, ended } = port();
    const search = new DesignSearch(() => worker);
    search.look(project, opening, 1);
    say(worker, { kind: 'found', found });
    expect(search.answer).toEqual({ of: project, opening, found });
    expect([search.working, ended.times]).toEqual([null, 1]);
  });
});
