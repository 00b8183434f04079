import type { MeasuredCase } from './measuredCases.ts';

type Layer = MeasuredCase['assembly']['layers'][number];
type Cavity = Extract<Layer, { kind: 'cavity' }>;
type Layers = readonly Layer[];

/** A change of one thing, for which the sources hold pairs of constructions that differ in nothing else. */
export interface Trend {
  readonly change: string;
  /** whether a construction is one that the change is about */
  readonly about: (it: MeasuredCase) => boolean;
  readonly changed: (layers: Layers) => Layers;
  /** the pair must name its stud or bar spacing, not a range */
  readonly exact: boolean;
}

const cavityOf = (it: MeasuredCase): Cavity | undefined => {
  const cavities = it.assembly.layers.filter((layer) => layer.kind === 'cavity');
  return cavities.length === 1 ? cavities[0] : undefined;
};

const firstLeaf = (layers: Layers): Layers => {
  const end = layers.findIndex((layer) => layer.kind === 'cavity');
  return layers.slice(0, Math.max(0, end));
};
const lastLeaf = (layers: Layers): Layers => [...firstLeaf([...layers].reverse())].reverse();

const inCavity =
  (change: (cavity: Cavity) => Layer) =>
  (layers: Layers): Layers =>
    layers.map((layer) => (layer.kind === 'cavity' ? change(layer) : layer));

const filledTo = (thickness: number) =>
  inCavity((cavity) => (cavity.fill ? { ...cavity, fill: { ...cavity.fill, thickness_mm: thickness } } : cavity));
const deepened = (depth: number, fill: number) => (layers: Layers) =>
  inCavity((cavity) => ({ ...cavity, depth_mm: depth }))(filledTo(fill)(layers));
const emptied = inCavity(({ kind, depth_mm, frame }) => ({ kind, depth_mm, ...(frame && { frame }) }));
const studsAt = (spacing: number) =>
  inCavity((cavity) => (cavity.frame ? { ...cavity, frame: { ...cavity.frame, spacing_mm: spacing } } : cavity));
const barsAt = (spacing: number) =>
  inCavity((cavity) => (cavity.frame ? { ...cavity, frame: { ...cavity.frame, bar_spacing_mm: spacing } } : cavity));

const isClass = (kind: string) => (it: MeasuredCase) => it.class === kind;
const startsWith = (kind: string) => (it: MeasuredCase) => it.class.startsWith(kind);
const oneBoardEach = (kind: string) => (it: MeasuredCase) =>
  it.class.startsWith(`${kind},`) &&
  firstLeaf(it.assembly.layers).length === 1 &&
  lastLeaf(it.assembly.layers).length === 1;
const filledWith = (kind: string, depth: number, fill: number) => (it: MeasuredCase) =>
  it.class.startsWith(kind) && cavityOf(it)?.depth_mm === depth && cavityOf(it)?.fill?.thickness_mm === fill;

const trend = (change: string, about: Trend['about'], changed: Trend['changed'], exact = false): Trend => ({
  change,
  about,
  changed,
  exact,
});

const FRAMES = ['timber', 'timber + bar', 'steel', 'steel heavy + bar', 'staggered', 'staggered + bar', 'twin'];

export const TRENDS: readonly Trend[] = [
  ...FRAMES.map((kind) => trend(`${kind} studs: without the fill`, isClass(`stud wall: ${kind}, fibre`), emptied)),
  trend('floor, boards direct: without the fill', isClass('floor: direct, fibre'), emptied),
  trend('floor on bars: without the fill', isClass('floor: bar, fibre'), emptied),
  trend('twin studs: both rows filled', filledWith('stud wall: twin', 203, 89), filledTo(178)),
  ...FRAMES.map((kind) =>
    trend(`${kind} studs: boards 1 + 1 to 2 + 2`, oneBoardEach(`stud wall: ${kind}`), (layers) => [
      ...firstLeaf(layers),
      ...layers,
      ...lastLeaf(layers),
    ]),
  ),
  trend('walls: second board on one face', startsWith('stud wall'), (layers) => [...firstLeaf(layers), ...layers]),
  trend('walls: second board on the other', startsWith('stud wall'), (layers) => [...layers, ...lastLeaf(layers)]),
  trend('steel studs 400 to 600 mm apart', startsWith('stud wall: steel,'), studsAt(600), true),
  trend('studs behind bars 400 to 600 mm apart', (it) => it.class.includes('+ bar'), studsAt(600)),
  trend('bars 400 to 600 mm apart', (it) => it.class.includes('bar,'), barsAt(600), true),
  trend('steel studs 64 to 92 mm deep', filledWith('stud wall: steel,', 64, 64), deepened(92, 89), true),
  trend('steel studs 92 to 152 mm deep', filledWith('stud wall: steel,', 92, 89), deepened(152, 150)),
];

const layerKey = (it: MeasuredCase, layer: Layer): string => {
  if (layer.kind === 'board') return JSON.stringify([it.materials[layer.material], layer.thickness_mm]);
  if (layer.kind === 'cavity') return JSON.stringify([layer.depth_mm, layer.fill?.thickness_mm ?? 0, layer.frame]);
  return JSON.stringify(layer);
};

/** The same for two constructions of one source that are alike, whichever side is named first. */
const keyOf = (it: MeasuredCase, layers: Layers): string => {
  const there = layers.map((layer) => layerKey(it, layer)).join();
  const back = [...layers]
    .reverse()
    .map((layer) => layerKey(it, layer))
    .join();
  return `${it.id.split('-')[0] ?? ''} ${there < back ? there : back}`;
};

/** A pair of constructions with single-number ratings, before and after a change. */
export interface TrendPair {
  readonly change: string;
  readonly before: MeasuredCase;
  readonly after: MeasuredCase;
}

/** All pairs of all trends among the cases that are judged by their rating. */
export const trendPairs = (cases: readonly MeasuredCase[]): readonly TrendPair[] => {
  const rated = cases.filter((it) => it.measured.bands_Hz === undefined);
  const known = new Map<string, MeasuredCase[]>();
  for (const it of rated) {
    const key = keyOf(it, it.assembly.layers);
    known.set(key, [...(known.get(key) ?? []), it]);
  }
  return TRENDS.flatMap((it) =>
    rated.filter(it.about).flatMap((before) =>
      (known.get(keyOf(before, it.changed(before.assembly.layers))) ?? [])
        .filter((after) => after.id !== before.id)
        .filter((after) => !it.exact || !(before.name.includes('[') || after.name.includes('[')))
        .map((after) => ({ change: it.change, before, after })),
    ),
  );
};
