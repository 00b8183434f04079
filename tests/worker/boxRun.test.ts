import { describe, expect, it } from 'vitest';
import { COARSE_PLAN, solveBox, ventBoxGeometry } from '../../src/engine/openings/index.ts';
import { createBoxClient, type BoxPort } from '../../src/worker/boxClient.ts';
import type { BoxNews, BoxProgress } from '../../src/worker/boxProtocol.ts';
import { createBoxRun } from '../../src/worker/boxRun.ts';
import { box } from '../renderer/breathe/vents.ts';

const geometry = ventBoxGeometry(box);

/** The worker without a thread: messages are copied as a real one would. */
const port = (): BoxPort => {
  const clock = { now: 0 };
  const run = createBoxRun({
    tell: (news: BoxNews) => worker.onmessage?.(new MessageEvent('message', { data: structuredClone(news) })),
    now: () => (clock.now += 30),
    pause: () => new Promise((resolve) => setTimeout(resolve)),
  });
  const worker: BoxPort = {
    onmessage: null,
    onerror: null,
    postMessage: (message) => void Promise.resolve().then(() => run(structuredClone(message))),
  };
  return worker;
};

describe('the box worker', () => {
  it('tells each band when it is done, lowest first, and ends with what the engine says', async () => {
    const heard: BoxProgress[] = [];
    const { answer } = createBoxClient(port()).solve(box, 'coarse', (progress) => heard.push(progress));
    const result = await answer;
    const direct = solveBox(geometry, {
      cellSize: COARSE_PLAN.cellSize,
      frequenciesPerBand: COARSE_PLAN.lines,
      inside: true,
    });
    expect(result?.bands.map((band) => band.multimodeLoss)).toEqual(direct?.bands.map((band) => band.multimodeLoss));
    const done = heard.map(({ bands }) => bands.length);
    expect(done).toEqual([...done].sort((a, b) => a - b));
    expect(heard.at(-1)?.bands.map(({ band }) => band)).toEqual(COARSE_PLAN.bands);
    expect(heard.every(({ fraction }, i) => fraction >= (heard[i - 1]?.fraction ?? 0))).toBe(true);
  });

  it('stops soon after a cancel and answers nothing', async () => {
    const heard: BoxProgress[] = [];
    const client = createBoxClient(port());
    const solving = client.solve(box, 'fine', (progress) => {
      heard.push(progress);
      if (heard.length === 2) solving.cancel();
    });
    await expect(solving.answer).resolves.toBeNull();
    expect(heard.length).toBeLessThan(5);
    expect(heard.at(-1)?.fraction).toBeLessThan(0.2);
  });

  it('says why a box cannot be solved', async () => {
    const closed = { ...box, ports: [{ ...box.ports[0], at: 3 }, box.ports[1]] as const };
    const { answer } = createBoxClient(port()).solve(closed, 'coarse', () => undefined);
    await expect(answer).rejects.toThrow(/^The box cannot be solved: linings\.8 must be/);
  });

  it('gives the pressure at every grid crossing', async () => {
    const field = await createBoxClient(port()).field(box, 500, 0.02, 0);
    expect(field?.re).toHaveLength((field?.x.length ?? 0) * (field?.y.length ?? 0));
    expect(Math.max(...(field?.re ?? []).map(Math.abs))).toBeGreaterThan(0.1);
  });

  it('draws one field at a time and of those that wait only the latest', async () => {
    const worker = port();
    const asked: number[] = [];
    const post = worker.postMessage.bind(worker);
    worker.postMessage = (message) => {
      if (message.kind === 'field') asked.push(message.frequency);
      post(message);
    };
    const client = createBoxClient(worker);
    const fields = await Promise.all([100, 200, 300, 400].map((frequency) => client.field(box, frequency, 0.02, 0)));
    expect(asked).toEqual([100, 400]);
    expect(fields.map((field) => field !== null)).toEqual([true, false, false, true]);
    expect(await client.field(box, 500, 0.02, 0)).not.toBeNull();
  });

  it('goes on after a field that could not be made', async () => {
    const closed = { ...box, ports: [{ ...box.ports[0], at: 3 }, box.ports[1]] as const };
    const client = createBoxClient(port());
    const [refused, made] = [client.field(closed, 500, 0.02, 0), client.field(box, 500, 0.02, 0)];
    await expect(refused).rejects.toThrow(/^The box cannot be solved/);
    expect(await made).not.toBeNull();
  });
});
