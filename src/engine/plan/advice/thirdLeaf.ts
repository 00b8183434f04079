import { massAirMassResonances, structureOf } from '../../assembly/index.ts';
import type { Assembly, Leaf, Structure } from '../../assembly/index.ts';
import type { Remedy, RemedyLayer } from '../../quantities/index.ts';
import type { Rule } from './look.ts';
import { RwGainOf, gainAt, reductionAt } from './look.ts';
import { remedied } from './remedied.ts';
import { figure } from './figure.ts';
import { decibels, hertz } from './wording.ts';

/** What counts as a leaf and as a gap. @source common practice */
const LEAST_MASS = 3;
const LEAST_GAP = 0.005;
const BASS: readonly number[] = [63, 100, 125];

type Split = readonly [readonly Leaf[], readonly Leaf[]];

/** Ways to put all boards on two faces without turning masonry round: the middle ones move to either side. */
const splitsOf = (leaves: readonly Leaf[]): Split[] => {
  const cuts = leaves.slice(1).map((_, i): Split => [leaves.slice(0, i + 1), leaves.slice(i + 1)]);
  const light = leaves.filter((leaf) => !leaf.masonry);
  const heavy = leaves.filter((leaf) => leaf.masonry);
  return heavy.length === 0 ? cuts : [...cuts, [light, heavy]];
};

const massOf = (leaves: readonly Leaf[]): number => leaves.reduce((sum, leaf) => sum + leaf.surfaceMass, 0);

/** the two faces that resonate lowest */
const bestSplit = (leaves: readonly Leaf[]): Split | undefined => {
  const reduced = ([a, b]: Split): number => (massOf(a) * massOf(b)) / (massOf(a) + massOf(b));
  return splitsOf(leaves)
    .filter(([a, b]) => a.length > 0 && b.length > 0)
    .reduce<Split | undefined>((best, one) => (best && reduced(best) >= reduced(one) - 1e-9 ? best : one), undefined);
};

/** All boards on two faces, all gaps in one between them; studs that filled only their own gap now stand free. */
const reordered = (assembly: Assembly, structure: Structure): Remedy | null => {
  const split = bestSplit(structure.leaves);
  if (!split || structure.leaves.filter((leaf) => leaf.masonry).length > 1) return null;
  const boards = (leaves: readonly Leaf[]): RemedyLayer[] =>
    leaves.flatMap((leaf) => leaf.layers.map((keep) => ({ keep })));
  const gaps = structure.cavities.flatMap(({ layers }) =>
    layers.map((keep): RemedyLayer => {
      const layer = assembly.layers[keep];
      const studs = layer?.kind === 'cavity' && layer.frame !== undefined && layer.frame.stud !== 'none';
      return studs ? { keep, arrangement: 'twin' } : { keep };
    }),
  );
  const outside = (layers: readonly number[] | undefined): RemedyLayer[] => (layers ?? []).map((keep) => ({ keep }));
  return {
    kind: 'reorder',
    label: 'same boards on two faces, one gap',
    layers: [
      ...outside(structure.leading?.layers),
      ...boards(split[0]),
      ...gaps,
      ...boards(split[1]),
      ...outside(structure.trailing?.layers),
    ],
  };
};

/**
 * A third (or fourth) leaf: what the same boards on two faces, with all gaps made one, would give.
 * @source common practice; the comparison is predicted
 */
export const thirdLeaf: Rule = ({ assembly, structure, prediction, predict }) => {
  const counted = structure.leaves.filter((leaf) => leaf.surfaceMass >= LEAST_MASS);
  const narrow = structure.cavities.some((cavity) => cavity.depth < LEAST_GAP);
  if (counted.length < 3 || narrow) return [];
  const about = { layers: structure.leaves.slice(1, -1).flatMap((leaf) => leaf.layers) };
  const resonances = massAirMassResonances(assembly).map((value) => ({ term: 'resonance now', value, unit: 'Hz' }));
  const remedy = reordered(assembly, structure);
  if (!remedy)
    return [
      {
        code: 'third-leaf',
        severity: 'hint',
        sentence:
          `This part has ${counted.length} leaves with gaps between them, which resonate at ` +
          `${prediction.resonances.map(hertz).join(' and ')}. Two heavy leaves with one wide gap do more in the bass; ` +
          'where masonry stands already, keep the outer gap and put all new boards on one face.',
        figures: resonances,
        about,
      },
    ];
  const twoLeaves = remedied(assembly, remedy);
  const better = predict(twoLeaves);
  const worst = BASS.reduce((a, b) => (gainAt(prediction, better, b) > gainAt(prediction, better, a) ? b : a));
  const cost = gainAt(prediction, better, worst);
  const [single = 0] = massAirMassResonances(structureOf(twoLeaves).leaves.length === 2 ? twoLeaves : assembly);
  const glazed = structure.leaves.every((leaf) => leaf.glass);
  const these =
    counted.length === 3 ? 'This third leaf' : `These third and ${counted.length === 4 ? 'fourth' : 'further'} leaves`;
  const verbs = counted.length === 3 ? ['costs', 'buys'] : ['cost', 'buy'];
  return [
    {
      code: 'third-leaf',
      severity: cost >= 1 && !glazed ? 'mistake' : 'hint',
      sentence:
        (cost >= 1
          ? `${these} ${verbs[0]} you ${decibels(cost)} at ${worst} Hz: the same boards on two faces with one gap would ` +
            `give ${Math.round(reductionAt(better, worst))} dB there instead of ${Math.round(reductionAt(prediction, worst))}, `
          : `${these} ${verbs[1]} you nothing in the bass: the same boards on two faces would give ` +
            `${Math.round(reductionAt(better, worst))} dB at ${worst} Hz instead of ${Math.round(reductionAt(prediction, worst))}, `) +
        `and Rw ${better.ratings.Rw ?? 0} instead of ${prediction.ratings.Rw ?? 0}. ` +
        `The leaves now resonate at ${prediction.resonances.map(hertz).join(', ')}; two would at ${hertz(single)}.`,
      figures: [
        ...BASS.map((band) => figure('gain', `gain of two leaves at ${band} Hz`, gainAt(prediction, better, band))),
        figure('gain', 'gain of two leaves in Rw', RwGainOf(prediction, better)),
        ...resonances,
        figure('resonance', 'resonance of two leaves', single),
      ],
      about,
      ...(!glazed && { remedy }),
    },
  ];
};
