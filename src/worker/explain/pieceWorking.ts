import {
  INTO_DUCT,
  INTO_ROOM,
  TURN_BACK,
  bendLoss,
  clearHeight,
  elementSpeed,
  grilleLoss,
  velocityPressure,
  type AirElement,
  type PathFlow,
} from '../../engine/airflow/index.ts';
import type { Evaluator } from '../../engine/evaluate.ts';
import { hydraulicDiameter, sectionArea, type Working, type WorkingLine } from '../../engine/quantities/index.ts';
import type { Project } from '../../project/schema.ts';
import { toBreathe } from '../../project/toBreathe.ts';
import { toBuild } from '../../project/toEngine.ts';
import { figure } from './wording.ts';

const TABLE = 'published table of air-duct loss coefficients';

const litres = (flow: number): string => `${figure(1000 * flow)} L/s`;
const square = (area: number): string => `${figure(1e4 * area)} cm²`;
const pascals = (pressure: number): string => `${figure(pressure)} Pa`;

type Piece = PathFlow['pieces'][number];

/** ζ·ρv²/2 on the speed in the piece's whole section. */
const coefficientLine = (what: string, zeta: number, area: number, flow: number, source = TABLE): WorkingLine => {
  const pressure = velocityPressure(flow / area);
  return {
    what,
    equation: 'Δp = ζ · ρv²/2',
    numbers: `ζ ${figure(zeta, 2)}; ρv²/2 ${figure(pressure, 2)} Pa at ${litres(flow)} / ${square(area)}: ${pascals(zeta * pressure)}`,
    source,
  };
};

const ductLine = (element: Extract<AirElement, { kind: 'duct' }>, loss: number, flow: number): WorkingLine => {
  const diameter = hydraulicDiameter(element.section);
  const pressure = velocityPressure(flow / sectionArea(element.section));
  const friction = pressure > 0 ? (loss * diameter) / (pressure * element.length * element.lossFactor) : 0;
  const pulled =
    element.lossFactor === 1 ? '' : ` · ${figure(element.lossFactor, 0)} for a flexible duct not pulled tight`;
  return {
    what: 'Friction along the duct, by how fast the air is and how rough the wall.',
    equation: 'Δp = f · L/Dh · ρv²/2',
    numbers: `f ${figure(friction, 4)} · ${figure(element.length, 2)} m / ${figure(diameter, 3)} m${pulled} · ${figure(pressure, 2)} Pa = ${pascals(loss)}`,
    source: 'Darcy-Weisbach, Colebrook (1939); flexible ducts: Abushakra, Walker & Sherman (LBNL)',
  };
};

const boxLine = ({ box }: Extract<AirElement, { kind: 'box' }>, loss: number, flow: number): WorkingLine => {
  const [room, out] = box.ports.map(({ section }) => velocityPressure(flow / sectionArea(section)));
  const turns = box.partitions.map(
    ({ gap }) => `${figure(TURN_BACK)} · ${figure(velocityPressure(flow / (gap * clearHeight(box))), 2)}`,
  );
  return {
    what: 'Out of the duct into the box, round each partition in two sharp turns, and into the next duct.',
    equation: 'Δp = Σ ζ · ρv²/2',
    numbers: `${[`${figure(INTO_ROOM)} · ${figure(room ?? 0, 2)}`, ...turns, `${figure(INTO_DUCT, 2)} · ${figure(out ?? 0, 2)}`].join(' + ')} Pa = ${pascals(loss)}`,
    source: `${TABLE}; turns at partitions: no discount for standing close together (engineering judgement)`,
  };
};

const lossLine = (element: AirElement, loss: number, flow: number): WorkingLine | null => {
  switch (element.kind) {
    case 'grille':
    case 'mesh':
      return coefficientLine(
        `${figure(100 * element.freeShare, 0)} % of its face is free.`,
        grilleLoss(element.freeShare),
        sectionArea(element.section),
        flow,
      );
    case 'bend':
      return coefficientLine(
        `A bend of ${element.angle}°.`,
        bendLoss(element.form, element.angle),
        sectionArea(element.section),
        flow,
      );
    case 'cowl':
      return coefficientLine(
        'As its maker says, or as usual for a cowl.',
        element.loss,
        sectionArea(element.section),
        flow,
        'the document; common practice where it is not given',
      );
    case 'duct':
      return ductLine(element, loss, flow);
    case 'box':
      return boxLine(element, loss, flow);
    case 'fan':
    case 'transition':
      return null;
  }
};

const SPEED_AREA: Readonly<Partial<Record<AirElement['kind'], string>>> = {
  grille: 'in the free part of its face',
  mesh: 'in the free part of its face',
  box: 'at the narrowest place of the box',
};

const speedLine = (element: AirElement, flow: number): WorkingLine => {
  const speed = elementSpeed(element, flow);
  return {
    what: `How fast the air is ${SPEED_AREA[element.kind] ?? 'in it'}.`,
    equation: 'v = q / S',
    numbers: `${litres(flow)} / ${square(speed > 0 ? flow / speed : 0)} = ${figure(speed, 2)} m/s`,
    source: 'continuity; up to 2.5 m/s in ducts and 1.5 m/s in grilles stays quiet: common practice',
  };
};

/** Into the vent, out of it, or from one size to another. */
const betweenLine = ({ name, loss }: Piece): WorkingLine => ({
  what: `${name}: where the air gathers speed or loses it.`,
  equation: 'Δp = ζ · ρv²/2, on the smaller area',
  numbers: `${pascals(loss)} (ζ ${figure(INTO_DUCT, 2)} into a duct, ${figure(INTO_ROOM)} out of it into the open; from size to size by the areas)`,
  source: `${TABLE}; enlargement: Borda-Carnot; contraction: Rennels & Hudson, Pipe Flow (2012)`,
});

/**
 * What one piece of a vent takes from the air and how fast the air is in it, worked out.
 * @param at place of the piece among those the vent's flow is told by
 * @throws Error where vent or piece are gone
 */
export const pieceWorking = (evaluator: Evaluator, project: Project, vent: string, at: number): Working => {
  const question = toBreathe(project);
  const { air } = evaluator.breathe(toBuild(project), question, 'full');
  const path = air?.paths.find(({ id }) => id === vent);
  const piece = path?.pieces[at];
  const elements = question.vents.find((it) => it.path.id === vent)?.path.elements;
  if (!path || !piece || !elements) throw new Error(`there is no piece number ${at + 1} of vent "${vent}" any more`);
  const flow = Math.abs(path.flow);
  const element = piece.element === null || piece.speed === null ? undefined : elements[piece.element];
  const taken = element && lossLine(element, piece.loss, flow);
  return {
    title: `${piece.name}: what it takes, and how fast the air is`,
    value: piece.speed === null ? pascals(piece.loss) : `${pascals(piece.loss)}, ${figure(piece.speed, 2)} m/s`,
    lines: [
      ...(element ? [speedLine(element, flow)] : [betweenLine(piece)]),
      ...(taken ? [taken] : []),
      ...(element?.kind === 'fan'
        ? [
            {
              what: 'A running fan takes nothing: it adds pressure, by its curve.',
              equation: 'Δp_fan (q)',
              numbers: `${pascals(path.fanPressure)} at ${litres(flow)}`,
              source: 'the fan’s curve in the document',
            },
          ]
        : []),
    ],
    assumptions: ['the air fills the piece evenly', 'joints do not leak'],
    likelyError: 'Pieces close together disturb one another: expect a fifth more or less. Measure it when it is built.',
  };
};
