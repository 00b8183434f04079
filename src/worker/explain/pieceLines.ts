import {
  INTO_DUCT,
  INTO_ROOM,
  TURN_BACK,
  bendLoss,
  clearHeight,
  elementSpeed,
  endSections,
  grilleLoss,
  velocityPressure,
  type AirElement,
  type AirPath,
  type PieceLoss,
} from '../../engine/airflow/index.ts';
import { hydraulicDiameter, sectionArea, type WorkingLine } from '../../engine/quantities/index.ts';
import { figure } from './wording.ts';

const TABLE = 'published table of air-duct loss coefficients';

export const litres = (flow: number): string => `${figure(1000 * flow)} L/s`;
const square = (area: number): string => `${figure(1e4 * area)} cm²`;
export const pascals = (pressure: number): string => `${figure(pressure)} Pa`;

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

/** What a piece takes; null for one that takes nothing. */
export const lossLine = (element: AirElement, loss: number, flow: number): WorkingLine | null => {
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

export const speedLine = (element: AirElement, flow: number): WorkingLine => {
  const speed = elementSpeed(element, flow);
  return {
    what: `How fast the air is ${SPEED_AREA[element.kind] ?? 'in it'}.`,
    equation: 'v = q / S',
    numbers: `${litres(flow)} / ${square(speed > 0 ? flow / speed : 0)} = ${figure(speed, 2)} m/s`,
    source: 'continuity; up to 2.5 m/s in ducts and 1.5 m/s in grilles stays quiet: common practice',
  };
};

/** From one size to another: on the speed in the smaller area. */
const stepLine = (from: number, to: number, loss: number, flow: number): WorkingLine => {
  const pressure = velocityPressure(flow / Math.min(from, to));
  return {
    what: to > from ? 'Where the air comes into a wider piece.' : 'Where the air has to go into a narrower piece.',
    equation: 'Δp = ζ · ρv²/2',
    numbers: `from ${square(from)} to ${square(to)}: ζ ${figure(pressure > 0 ? loss / pressure : 0, 2)} · ${figure(pressure, 2)} Pa = ${pascals(loss)}`,
    source:
      'enlargement: (1 − S1/S2)², Borda-Carnot; contraction: Rennels & Hudson, Pipe Flow (2012); gentle tapers: published table',
  };
};

/** Into the vent, out of it, or from one size to another. */
export const betweenLine = (path: AirPath, pieces: readonly PieceLoss[], at: number, flow: number): WorkingLine => {
  const loss = pieces[at]?.loss ?? 0;
  const area = (piece: PieceLoss | undefined, end: 'in' | 'out'): number | null => {
    const element = piece?.element == null ? undefined : path.elements[piece.element];
    if (!element) return null;
    const [inner, outer] = endSections(element);
    return sectionArea((path.direction === 'supply') === (end === 'in') ? outer : inner);
  };
  const before = area(
    pieces.slice(0, at).findLast(({ speed }) => speed !== null),
    'out',
  );
  const after = area(
    pieces.slice(at + 1).find(({ speed }) => speed !== null),
    'in',
  );
  if (before !== null && after !== null) return stepLine(before, after, loss, flow);
  return before === null
    ? coefficientLine('Where the air gathers speed into the vent.', loss > 0 ? INTO_DUCT : 0, after ?? 1, flow)
    : coefficientLine('Where the air comes to rest behind the vent.', INTO_ROOM, before, flow);
};
