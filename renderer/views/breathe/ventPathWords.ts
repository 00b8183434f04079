import type { VentElement } from '../../../src/engine/openings/index.ts';
import { acrossOf, lengthOf } from '../../drawings/ventMeasures.ts';
import type { SaySize } from './boxPlanWords.ts';
import { kindWord } from './elementWords.ts';

/** A part of a vent as it is read out: its name, kind and sizes. */
export const pieceWords = (element: VentElement, size: SaySize): string => {
  const across =
    element.kind === 'box'
      ? `${size(element.box.length)} long, ${size(element.box.width)} wide`
      : `${element.section.shape === 'round' ? 'diameter' : 'width'} ${size(acrossOf(element.section))}`;
  const long = element.kind === 'duct' || element.kind === 'transition' ? `${size(lengthOf(element))} long, ` : '';
  return `${element.name} (${kindWord(element.kind)}), ${long}${across}`;
};
