import { fireEvent, render, screen } from '@testing-library/svelte';
import { beforeEach, describe, expect, it } from 'vitest';
import { studio } from '../../../renderer/store/studio.svelte.ts';
import Harness from './SectionHarness.svelte';
import { layersOf, openExample } from './example.ts';

const layer = (number: number): Element => screen.getByRole('button', { name: new RegExp(`^Layer ${number} of`) });
const press = (number: number, key: string, more: object = {}) => fireEvent.keyDown(layer(number), { key, ...more });

beforeEach(() => {
  Object.defineProperty(HTMLElement.prototype, 'clientWidth', { configurable: true, get: () => 360 });
  openExample();
});
const show = (id = 'stud') => render(Harness, { id });

describe('the section under the keyboard', () => {
  it('names every layer with its place, material and thickness', () => {
    show();
    expect(layer(1).getAttribute('aria-label')).toBe('Layer 1 of 3: Plasterboard, standard, 12.5 mm');
    expect(layer(2).getAttribute('aria-label')).toContain('95 mm');
  });
  it('steps a board to the next thickness sold with plus and back with minus', async () => {
    show();
    await press(1, '+');
    expect(layersOf('stud')[0]).toBe('plasterboard-standard 15');
    await press(1, '-');
    expect(layersOf('stud')[0]).toBe('plasterboard-standard 12.5');
  });
  it('reorders with Alt and an arrow', async () => {
    show();
    await press(3, 'ArrowLeft', { altKey: true });
    expect(layersOf('stud')).toEqual(['plasterboard-standard 12.5', 'osb 18', 'cavity 95']);
  });
  it('has exactly one layer in the tab order, and arrows move it', async () => {
    show();
    const stops = (): string[] => [1, 2, 3].filter((n) => layer(n).getAttribute('tabindex') === '0').map(String);
    expect(stops()).toEqual(['1']);
    await press(1, 'ArrowRight');
    expect(stops()).toEqual(['2']);
    await press(2, 'End');
    expect(stops()).toEqual(['3']);
  });
  it('inserts a board at the outside', async () => {
    show();
    await press(3, 'Insert');
    await fireEvent.click(screen.getByRole('button', { name: 'Board' }));
    expect(layersOf('stud')).toEqual(['plasterboard-standard 12.5', 'cavity 95', 'osb 18', 'osb 18']);
  });
  it('adds a cavity at the outside together with the board that closes it', async () => {
    show();
    await press(3, 'Insert');
    await fireEvent.click(screen.getByRole('button', { name: 'Cavity and board' }));
    expect(layersOf('stud')).toEqual(['plasterboard-standard 12.5', 'cavity 95', 'osb 18', 'cavity 50', 'osb 18']);
  });
  it('does not offer a damping layer next to a cavity', async () => {
    show();
    await fireEvent.click(screen.getByRole('button', { name: 'Insert a layer between layers 1 and 2' }));
    const damping = screen.getByRole('button', { name: 'Damping layer' });
    expect(damping.getAttribute('aria-disabled')).toBe('true');
    await fireEvent.click(damping);
    expect(layersOf('stud')).toHaveLength(3);
  });
  it('keeps an order that must not be, and says why', async () => {
    show('damped');
    const before = layersOf('damped');
    await press(1, 'ArrowRight', { altKey: true });
    expect(layersOf('damped')).toEqual(before);
    expect(studio.refusal?.sentence).toMatch(/interlayer/);
    await press(3, 'Delete');
    expect(layersOf('damped')).toEqual(before);
  });
  it('takes a layer out with Delete', async () => {
    show();
    await press(3, 'Delete');
    expect(layersOf('stud')).toEqual(['plasterboard-standard 12.5', 'cavity 95']);
  });
});

describe('the section under the pointer', () => {
  it('thickens a board by its handle in one gesture', async () => {
    show();
    const kept: string[] = [];
    const add = studio.saving.add.bind(studio.saving);
    studio.saving.add = (label) => kept.push(label);
    const handle = document.querySelectorAll('.handle')[2];
    if (!handle) throw new Error('There is no handle.');
    handle.setPointerCapture = () => undefined;
    await fireEvent.pointerDown(handle, { clientX: 100, pointerId: 1 });
    await fireEvent.pointerMove(handle, { clientX: 106, pointerId: 1 });
    await fireEvent.pointerMove(handle, { clientX: 110, pointerId: 1 });
    expect(kept).toEqual([]);
    await fireEvent.pointerUp(handle, { pointerId: 1 });
    studio.saving.add = add;
    expect(layersOf('stud')[2]).toBe('osb 22');
    expect(kept).toHaveLength(1);
  });
});
