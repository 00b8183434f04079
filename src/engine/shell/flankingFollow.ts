import type { FlankingElement, FlankingMake, FlankingSide } from './flankingElement.ts';
import type { Part, PartElement } from './part.ts';

const makeOf = (element: PartElement | undefined): FlankingMake | null => {
  if (element?.kind === 'assembly') return element;
  return element?.kind === 'measured' && element.quantity === 'R' ? { kind: 'measured', curve: element.curve } : null;
};

const rebuilt = (side: FlankingSide, swaps: ReadonlyMap<string, PartElement>): FlankingSide => {
  const make = makeOf(side.part === null ? undefined : swaps.get(side.part));
  return make ? { ...side, make } : side;
};

/**
 * A flanking path after parts it runs along or past have been rebuilt.
 * @param part a part of the shell
 * @param swaps what the rebuilt parts are made of now, by id
 * @returns the path over the new elements; null for any other part, or where nothing on its way has changed
 */
export const followSwaps = (part: Part, swaps: ReadonlyMap<string, PartElement>): Part | null => {
  const { element } = part;
  if (element.kind !== 'flanking') return null;
  const touched = [element.inside.part, element.beyond.part, element.crossing.part].some(
    (id) => id !== null && swaps.has(id),
  );
  if (!touched) return null;
  const crossing = makeOf(swaps.get(element.crossing.part));
  const followed: FlankingElement = {
    ...element,
    inside: rebuilt(element.inside, swaps),
    beyond: rebuilt(element.beyond, swaps),
    crossing: crossing ? { ...element.crossing, make: crossing } : element.crossing,
  };
  return { ...part, element: followed };
};
