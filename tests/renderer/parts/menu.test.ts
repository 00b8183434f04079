import { cleanup, fireEvent, render, screen } from '@testing-library/svelte';
import { afterEach, describe, expect, it, vi } from 'vitest';
import Menu from '../../../renderer/parts/Menu.svelte';

afterEach(cleanup);

const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

const open = async (key: string) => {
  const chosen = vi.fn<(label: string) => void>();
  const items = ['Open', 'Rename', 'Delete'].map((label) => ({
    label,
    disabled: label === 'Rename',
    onselect: () => chosen(label),
  }));
  render(Menu, { label: 'Project', items });
  const button = screen.getByRole('button', { name: /Project/ });
  button.focus();
  await fireEvent.keyDown(button, { key });
  await settled();
  return { chosen, button };
};
const focused = (): string => document.activeElement?.textContent.trim() ?? '';

describe('a menu by keyboard', () => {
  it('opens on the first item with the down arrow and on the last with the up arrow', async () => {
    await open('ArrowDown');
    expect(focused()).toBe('Open');
    cleanup();
    await open('ArrowUp');
    expect(focused()).toBe('Delete');
  });

  it('passes over what cannot be chosen and goes round', async () => {
    await open('ArrowDown');
    const list = screen.getByRole('menu');
    await fireEvent.keyDown(list, { key: 'ArrowDown' });
    expect(focused()).toBe('Delete');
    await fireEvent.keyDown(list, { key: 'ArrowDown' });
    expect(focused()).toBe('Open');
  });

  it('gives the focus back on Escape and after a choice', async () => {
    const { chosen, button } = await open('ArrowDown');
    await fireEvent.keyDown(screen.getByRole('menu'), { key: 'Escape' });
    expect(screen.queryByRole('menu')).toBeNull();
    expect(document.activeElement).toBe(button);
    await fireEvent.click(button);
    await fireEvent.click(screen.getByRole('menuitem', { name: 'Delete' }));
    expect(chosen).toHaveBeenCalledExactlyOnceWith('Delete');
    expect(document.activeElement).toBe(button);
  });
});
