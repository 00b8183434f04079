import { fireEvent, render, screen } from '@testing-library/svelte';
import { beforeEach, describe, expect, it } from 'vitest';
import type { VentBox } from '../../../src/engine/openings/index.ts';
import BoxPlan from '../../../renderer/views/breathe/BoxPlan.svelte';
import { box } from './vents.ts';

const said: VentBox[] = [];
const previewed: VentBox[] = [];
const ended: string[] = [];
const editing = {
  set: (it: VentBox) => void said.push(it),
  drag: () => ({
    preview: (it: VentBox) => void previewed.push(it),
    commit: () => void ended.push('commit'),
    cancel: () => void ended.push('cancel'),
  }),
};
const grip = (name: RegExp): Element => screen.getByRole('button', { name });

beforeEach(() => {
  for (const list of [said, previewed, ended]) list.length = 0;
  Object.defineProperty(HTMLElement.prototype, 'clientWidth', { configurable: true, get: () => 500 });
  Object.defineProperty(HTMLElement.prototype, 'clientHeight', { configurable: true, get: () => 220 });
  Object.defineProperty(Element.prototype, 'setPointerCapture', { configurable: true, value: () => undefined });
  render(BoxPlan, { name: 'Box', box, editing });
});

describe('the plan of a box under the hands', () => {
  it('moves a partition by 5 mm with an arrow, 50 mm with Shift, and its tip up and down', async () => {
    const partition = grip(/^Partition 1 of 2: 400 mm from the left, gap 100 mm at the far side/);
    await fireEvent.keyDown(partition, { key: 'ArrowRight' });
    await fireEvent.keyDown(partition, { key: 'ArrowLeft', shiftKey: true });
    await fireEvent.keyDown(partition, { key: 'ArrowUp' });
    expect(said.map(({ partitions }) => [partitions[0]?.at, partitions[0]?.gap])).toEqual([
      [0.405, 0.1],
      [0.35, 0.1],
      [0.4, 0.095],
    ]);
  });
  it('turns a partition to the other side with Enter and removes it with Delete', async () => {
    const partition = grip(/^Partition 2 of 2/);
    await fireEvent.keyDown(partition, { key: 'Enter' });
    await fireEvent.keyDown(partition, { key: 'Delete' });
    expect(said[0]?.partitions.map(({ side }) => side)).toEqual(['N', 'N']);
    expect(said[1]?.partitions).toEqual([box.partitions[0]]);
  });
  it('moves a duct along its side and makes the box longer and wider', async () => {
    await fireEvent.keyDown(grip(/^Duct from the room, left end, 200 mm/), { key: 'ArrowUp' });
    await fireEvent.keyDown(grip(/^Right end of the box: 1200 mm long/), { key: 'ArrowRight', shiftKey: true });
    await fireEvent.keyDown(grip(/^Far side of the box: 400 mm wide/), { key: 'ArrowDown' });
    expect([said[0]?.ports[0].at, said[1]?.length, said[2]?.width]).toEqual([0.205, 1.25, 0.395]);
  });
  it('previews while the pointer holds and ends in one step; Escape gives it up', async () => {
    const partition = grip(/^Partition 1 of 2/);
    const scale = 396 / 1.2;
    await fireEvent.pointerDown(partition, { button: 0, clientX: 200, clientY: 100, pointerId: 1 });
    await fireEvent.pointerMove(partition, { clientX: 200 + 0.1 * scale, clientY: 100, pointerId: 1 });
    expect(previewed.at(-1)?.partitions[0]?.at).toBeCloseTo(0.5, 9);
    await fireEvent.pointerUp(partition, { pointerId: 1 });
    await fireEvent.pointerDown(partition, { button: 0, clientX: 200, clientY: 100, pointerId: 1 });
    await fireEvent.keyDown(window, { key: 'Escape' });
    expect(ended).toEqual(['commit', 'cancel']);
    expect(said).toEqual([]);
  });
});
