import type { VentElementEntry } from '../../../src/project/schema.ts';
import { PIECE_NAMES } from '../../../src/project/toVents.ts';

export type ElementKind = VentElementEntry['kind'];

/** Parts in the order in which they are offered. */
export const ELEMENT_KINDS: readonly ElementKind[] = [
  'grille',
  'duct',
  'bend',
  'box',
  'transition',
  'fan',
  'mesh',
  'cowl',
];

/** What a kind of part is called within a sentence. */
export const kindWord = (kind: ElementKind): string => PIECE_NAMES[kind].toLowerCase();

/** What a part of a vent is called: by its own name, or by its kind. */
export const elementName = (element: VentElementEntry): string => element.name ?? PIECE_NAMES[element.kind];
