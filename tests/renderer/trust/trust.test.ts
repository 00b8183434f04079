import { cleanup, fireEvent, render, screen, within } from '@testing-library/svelte';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { classRows, comparisons, ENOUGH } from '../../../renderer/views/trust/evidence.ts';
import TrustDialog from '../../../renderer/views/trust/TrustDialog.svelte';
import {
  bandsOnly,
  bassEvidence,
  lead,
  rareFeatures,
  ratedOnly,
  unproven,
} from '../../../renderer/views/trust/trustWords.ts';
import record from '../../../assets/accuracy/record.json' with { type: 'json' };

beforeEach(() => {
  HTMLDialogElement.prototype.showModal = () => undefined;
  HTMLDialogElement.prototype.close = () => undefined;
});
afterEach(cleanup);

describe('how far to trust this', () => {
  it('counts every row of the record once, and every class, with evidence or without', () => {
    expect(comparisons).toHaveLength(record.rows.length);
    expect(classRows.map(({ kind }) => kind)).toEqual(['all', ...record.classes]);
    const [all, ...classes] = classRows;
    const sum = (half: 'ratings' | 'bands') => classes.reduce((total, row) => total + (row[half]?.count ?? 0), 0);
    expect(sum('ratings')).toBe(all?.ratings?.count);
    expect(sum('bands')).toBe(all?.bands?.count);
  });
  it('names each class of little evidence in exactly one list', () => {
    const few = classRows.filter(
      ({ ratings, bands }) => (ratings?.count ?? 0) < ENOUGH || (bands?.count ?? 0) < ENOUGH,
    );
    expect([...unproven, ...ratedOnly, ...bandsOnly].sort()).toEqual(few.map(({ kind }) => kind).sort());
    expect(ratedOnly.length).toBeGreaterThan(0);
  });
  it('says what is missing in the bass and of which ways to build there is no test', () => {
    const low = comparisons.filter(({ band }) => band !== null && band < 100).length;
    expect(bassEvidence()).toContain(`there are ${low} figures`);
    expect(bassEvidence()).toContain('next to no evidence');
    expect(rareFeatures()).toContain('isolating clips: none');
    expect(lead()).toContain(`${record.constructions} measured constructions`);
  });
  it('says of each class what was measured below 100 Hz, or that nothing was', async () => {
    render(TrustDialog, { onclose: () => undefined });
    const table = screen.getByRole('region', { name: 'Accuracy by class of construction', hidden: true });
    for (const kind of ['masonry', 'floor: bars, filled']) {
      await fireEvent.click(within(table).getByText(kind));
      const count = comparisons.filter((it) => it.kind === kind && it.band === 63).length;
      const said = screen.getByText(/below 100 Hz:|Below 100 Hz \d/).textContent;
      expect(said).toContain(count === 0 ? 'theory alone' : `Below 100 Hz ${count} figures`);
    }
  });
  it('draws a class when it is pressed, and describes the drawing in words', async () => {
    render(TrustDialog, { onclose: () => undefined });
    const table = screen.getByRole('region', { name: 'Accuracy by class of construction', hidden: true });
    await fireEvent.click(within(table).getByText('masonry'));
    const count = comparisons.filter(({ kind, band }) => kind === 'masonry' && band === null).length;
    const [drawing] = screen.getAllByRole('img', { hidden: true });
    expect(drawing?.getAttribute('aria-label')).toContain(`${count} figures, mean error`);
    expect(drawing?.querySelectorAll('circle, path').length).toBe(count);
  });
  it('shows published beside predicted changes, pair by pair in one direction at least', () => {
    expect(record.trends.length).toBeGreaterThan(10);
    const agreeing = record.trends.filter(({ published, predicted }) => published * predicted > 0);
    expect(agreeing.length / record.trends.length).toBeGreaterThan(0.9);
  });
});
