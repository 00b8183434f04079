import { fireEvent, render, screen } from '@testing-library/svelte';
import { beforeEach, describe, expect, it } from 'vitest';
import type { ChartGuide } from '../../../renderer/drawings/chartGuide.ts';
import BandChart from '../../../renderer/parts/BandChart.svelte';
import { THIRD_OCTAVES } from '../../../src/engine/quantities/index.ts';

const curve = (start: number): readonly number[] => THIRD_OCTAVES.map((_, i) => start + i);
const series = [
  {
    label: 'A Stud wall',
    short: 'A',
    bands: THIRD_OCTAVES,
    values: curve(10),
    spread: THIRD_OCTAVES.map(() => 3),
    extrapolated: THIRD_OCTAVES.map((band) => (band < 50 ? 'below the record' : null)),
  },
  { label: 'B Brick', short: 'B', bands: THIRD_OCTAVES, values: curve(20) },
];
const guides: readonly ChartGuide[] = [
  { kind: 'curve', group: 'mass law', label: 'mass law', bands: THIRD_OCTAVES, values: curve(5) },
  { kind: 'mark', group: 'f0, fc', label: 'f0', what: 'resonance', frequency: 70, series: 0 },
];
const slider = (): HTMLElement => screen.getByRole('slider');
const value = (): string | null => slider().getAttribute('aria-valuetext');

beforeEach(() => {
  Object.defineProperty(HTMLElement.prototype, 'clientWidth', { configurable: true, get: () => 400 });
  Object.defineProperty(HTMLElement.prototype, 'clientHeight', { configurable: true, get: () => 420 });
});

describe('the band chart', () => {
  it('is read band by band with the arrow keys, and its ends with Home and End', async () => {
    render(BandChart, { title: 'R', series });
    expect(value()).toBe('no band chosen');
    await fireEvent.keyDown(slider(), { key: 'ArrowRight' });
    expect(value()).toBe('25 Hz: A Stud wall 10.0 dB, B Brick 20.0 dB');
    await fireEvent.keyDown(slider(), { key: 'End' });
    expect(value()).toContain('10k Hz: A Stud wall 36.0 dB');
    await fireEvent.keyDown(slider(), { key: 'ArrowRight' });
    expect(value()).toContain('10k Hz');
    await fireEvent.keyDown(slider(), { key: 'Escape' });
    expect(value()).toBe('no band chosen');
  });
  it('says the difference to the first curve, and where the model is out of its depth', async () => {
    render(BandChart, { title: 'R', series });
    await fireEvent.keyDown(slider(), { key: 'Home' });
    expect(screen.getByText(/20\.0 \(\+10\.0\)/)).toBeTruthy();
    expect(screen.getByText('outside the tested range').getAttribute('title')).toBe('below the record');
    await fireEvent.keyDown(slider(), { key: 'End' });
    expect(screen.queryByText('outside the tested range')).toBeNull();
  });
  it('draws guides and the likely error only when asked', async () => {
    const { container } = render(BandChart, { title: 'R', series, guides });
    const drawn = (): number => container.querySelectorAll('svg path').length;
    const plain = drawn();
    await fireEvent.click(screen.getByRole('button', { name: 'mass law' }));
    const withGuide = drawn();
    expect(withGuide).toBeGreaterThan(plain);
    await fireEvent.click(screen.getByRole('button', { name: 'likely error' }));
    expect(drawn()).toBe(withGuide + 1);
    await fireEvent.click(screen.getByRole('button', { name: 'mass law' }));
    await fireEvent.click(screen.getByRole('button', { name: 'likely error' }));
    expect(drawn()).toBe(plain);
  });
  it('has a twin as a table with every value, its error and its doubts', async () => {
    render(BandChart, { title: 'R', series });
    await fireEvent.click(screen.getByRole('button', { name: 'as a table' }));
    const rows = screen.getAllByRole('row');
    expect(rows).toHaveLength(THIRD_OCTAVES.length + 1);
    expect(rows[1]?.textContent.replace(/\s+/g, ' ')).toContain('10.0, extrapolated: below the record');
    expect(rows[4]?.textContent).not.toContain('extrapolated');
  });
  it('says so when there is nothing to draw', () => {
    render(BandChart, { title: 'R', series: [] });
    expect(screen.getByText('No curve yet.')).toBeTruthy();
    expect(screen.queryByRole('slider')).toBeNull();
  });
});
