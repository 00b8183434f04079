import type { TableContent } from '../../actions/csvFile.ts';
import { thicknessOf } from '../../drawings/section.ts';
import { frameRows } from '../../../src/project/frameRows.ts';
import type { AssemblyEntry, Project } from '../../../src/project/schema.ts';
import { frameWords } from './frameWords.ts';
import { materialName } from './materialWords.ts';

/** The layers of an assembly as a table, from the music room outwards. */
export const layerTableContent = (project: Project, entry: AssemblyEntry): TableContent => ({
  headings: ['layer', 'kind', 'material', 'thickness_mm', 'fill', 'fill_mm', 'frame'],
  rows: entry.layers.map((layer, index) => [
    index + 1,
    layer.kind,
    layer.kind === 'cavity' ? null : materialName(project, layer.material),
    thicknessOf(layer),
    layer.kind === 'cavity' && layer.fill ? materialName(project, layer.fill.material) : null,
    layer.kind === 'cavity' && layer.fill ? layer.fill.thickness_mm : null,
    layer.kind === 'cavity' ? frameWords(layer.frame, frameRows(project, entry.layers, index)) : null,
  ]),
});
