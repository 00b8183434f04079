import type { AssemblyEntry, LayerEntry, MeasuredEntry } from '../../../src/project/schema.ts';
import type { PartEntry } from '../../../src/project/parts.ts';

export type MaterialName = (id: string) => string;

const millimetres = (value: number): string => `${Number(value.toFixed(2))} mm`;
const STUDS = { timber: 'timber studs', steel: 'steel studs' } as const;
const ARRANGEMENTS = { common: '', staggered: 'staggered ', twin: 'separate ' } as const;
const FIXINGS = {
  direct: '',
  'resilient-bar': ' with resilient bars',
  'isolating-clip': ' with isolating clips',
} as const;

const lowered = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);

const layerInWords = (layer: LayerEntry, nameOf: MaterialName): string => {
  if (layer.kind === 'board') return `${millimetres(layer.thickness_mm)} ${lowered(nameOf(layer.material))}`;
  if (layer.kind === 'interlayer')
    return layer.material === 'rigid-adhesive' ? 'glued flat to' : `${lowered(nameOf(layer.material))} between`;
  const fill = layer.fill
    ? ` with ${millimetres(layer.fill.thickness_mm)} ${lowered(nameOf(layer.fill.material))}`
    : ', empty';
  const frame =
    layer.frame && layer.frame.stud !== 'none'
      ? `, ${ARRANGEMENTS[layer.frame.arrangement]}${STUDS[layer.frame.stud]}${FIXINGS[layer.frame.fixing]}`
      : '';
  return `${millimetres(layer.depth_mm)} space${fill}${frame}`;
};

/** Layers from the room outwards, one phrase each; equal neighbours are counted. */
export const layersInWords = (assembly: AssemblyEntry, nameOf: MaterialName): readonly string[] => {
  const lines: { words: string; count: number }[] = [];
  for (const layer of assembly.layers) {
    const words = layerInWords(layer, nameOf);
    const last = lines.at(-1);
    if (last?.words === words && layer.kind === 'board') last.count += 1;
    else lines.push({ words, count: 1 });
  }
  return lines.map(({ words, count }) => (count > 1 ? `${count} × ${words}` : words));
};

const curveInWords = (curve: MeasuredEntry): string => {
  const bands = `${curve.bands_Hz[0] ?? ''} to ${curve.bands_Hz.at(-1) ?? ''} Hz`;
  const what = curve.Dne_dB ? 'Given as a curve of an element (Dn,e)' : 'Given as a curve (R)';
  return `${what}, ${bands}${curve.source ? `: ${curve.source}` : ''}`;
};

/** What a part is made of, in words, from the room outwards. */
export const partInWords = (
  part: PartEntry,
  assemblies: Readonly<Record<string, AssemblyEntry>>,
  nameOf: MaterialName,
): readonly string[] => {
  if (part.kind === 'slit') {
    if (part.sealed) return ['Sealed for good'];
    return [
      `Open gap ${part.edge ? 'along an edge, ' : ''}${millimetres(part.width_mm)} wide, ${millimetres(part.length_mm)} long, ${millimetres(part.depth_mm)} deep`,
    ];
  }
  if (part.kind === 'hole')
    return [
      part.sealed
        ? 'Sealed for good'
        : `Open hole ${millimetres(part.diameter_mm)} across, ${millimetres(part.depth_mm)} deep`,
    ];
  if (part.measured) return [curveInWords(part.measured)];
  const assembly = part.assembly === undefined ? undefined : assemblies[part.assembly];
  return assembly ? layersInWords(assembly, nameOf) : ['Nothing chosen yet'];
};
