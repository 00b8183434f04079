import { cleanup, fireEvent, render, screen } from '@testing-library/svelte';
import { afterEach, describe, expect, it, vi } from 'vitest';
import NumberField from '../../../renderer/parts/NumberField.svelte';
import { preferences } from '../../../renderer/store/preferences.svelte.ts';

const field = (unit: string, value: number, min: number, max: number) => {
  const onchange = vi.fn<(value: number) => void>();
  const view = render(NumberField, { label: 'Thickness', value, unit, min, max, onchange });
  const input = screen.getByLabelText<HTMLInputElement>('Thickness');
  const type = async (text: string, key = 'Enter'): Promise<void> => {
    await fireEvent.input(input, { target: { value: text } });
    await fireEvent.keyDown(input, { key });
  };
  return { onchange, input, type, view };
};

afterEach(() => {
  cleanup();
  preferences.setUnits('metric');
});

describe('a number field', () => {
  it('takes a product and says how it was read', async () => {
    const { onchange, type } = field('mm', 10, 0.05, 3000);
    await type('2 x 12.5');
    expect(onchange).toHaveBeenCalledExactlyOnceWith(25);
    expect(screen.getByText('Read as 2 × 12.5 mm = 25 mm.')).toBeTruthy();
  });

  it('keeps the last value when the text is out of range, and names field, value, range and way out', async () => {
    const { onchange, input, type } = field('mm', 12.5, 0.05, 3000);
    await type('4 m');
    expect(onchange).not.toHaveBeenCalled();
    expect(input.getAttribute('aria-invalid')).toBe('true');
    const described = document.getElementById(input.getAttribute('aria-describedby') ?? '');
    const sentence = described?.textContent ?? '';
    expect(sentence).toContain('Thickness');
    expect(sentence).toContain('4000 mm');
    expect(sentence).toContain('0.05 mm to 3000 mm');
    expect(sentence).toContain('12.5 mm is kept');
  });

  it('refuses a doubtful comma with both readings', async () => {
    const { onchange, type } = field('mm', 12.5, 0.05, 3000);
    await type('1,200');
    expect(onchange).not.toHaveBeenCalled();
    expect(screen.getByText(/could be 1\.200 or 1200/)).toBeTruthy();
  });

  it('brings the value back on Escape and commits on leaving', async () => {
    const { onchange, input, type } = field('mm', 12.5, 0.05, 3000);
    await type('99', 'Escape');
    expect(input.value).toBe('12.5');
    await fireEvent.input(input, { target: { value: '15' } });
    await fireEvent.blur(input);
    expect(onchange).toHaveBeenCalledExactlyOnceWith(15);
  });

  it('steps with the arrow keys, ten at a time with shift, and stops at the range', async () => {
    const { onchange, input } = field('mm', 20, 0.05, 25);
    await fireEvent.keyDown(input, { key: 'ArrowUp' });
    expect(onchange).toHaveBeenLastCalledWith(21);
    await fireEvent.keyDown(input, { key: 'ArrowUp', shiftKey: true });
    expect(onchange).toHaveBeenLastCalledWith(25);
  });

  it('shows and takes inches where lengths are imperial, and still hands over millimetres', async () => {
    preferences.setUnits('imperial');
    const { onchange, input, type } = field('mm', 12.7, 0.05, 3000);
    expect(input.value).toBe('0.5');
    await type('3/4');
    expect(onchange).toHaveBeenCalledExactlyOnceWith(19.05);
  });

  it('changes nothing when the shown text is entered again', async () => {
    preferences.setUnits('imperial');
    const { onchange, input, type } = field('m', 5.2, 0.1, 200);
    await type(input.value);
    expect(onchange).not.toHaveBeenCalled();
  });
});
