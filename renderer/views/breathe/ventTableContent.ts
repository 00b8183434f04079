import type { PathFlow } from '../../../src/engine/airflow/index.ts';
import type { VentElement } from '../../../src/engine/openings/index.ts';
import type { VentEntry } from '../../../src/project/schema.ts';
import type { TableContent } from '../../actions/csvFile.ts';
import { elementName, kindWord } from './elementWords.ts';
import { pieceRows } from './pieceRows.ts';

/** The parts of a vent as a file, from the room outwards. */
export const ventTableContent = (
  vent: VentEntry,
  elements: readonly VentElement[],
  flow: PathFlow | undefined,
): TableContent => {
  const rows = flow ? pieceRows(elements, flow) : [];
  return {
    headings: ['no.', 'part', 'kind', 'length_m', 'diameter_mm', 'width_mm', 'height_mm', 'speed_m_s', 'takes_Pa'],
    rows: vent.elements.map((element, index) => {
      const section = 'section' in element ? element.section : null;
      const row = rows.find((it) => it.element === index && it.speed !== null);
      const box = element.kind === 'box' ? element : null;
      return [
        index + 1,
        elementName(element),
        kindWord(element.kind),
        'length_m' in element ? element.length_m : null,
        section?.shape === 'round' ? section.diameter_mm : null,
        section?.shape === 'rectangular' ? section.width_mm : box ? Math.round(box.width_m * 1000) : null,
        section?.shape === 'rectangular' ? section.height_mm : box ? Math.round(box.height_m * 1000) : null,
        row?.speed == null ? null : Number(row.speed.toFixed(2)),
        row ? Number(row.loss.toFixed(2)) : null,
      ];
    }),
  };
};
