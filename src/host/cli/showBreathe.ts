import type { Result } from '../../contract/methods.ts';
import { showFigure, showTable } from './table.ts';

type Breathed = Result<'breathe'>;
type Vent = Breathed['vents'][number];

/** Ways by which sound goes, in the reader's words. */
const WAYS: Readonly<Record<Vent['limiting'][number], string>> = {
  air: 'air',
  casing: 'boards',
  'duct-wall': 'duct wall',
  joints: 'joints',
};
const FROM = 50;
const TO = 5000;

const showAir = ({ air }: Breathed, width: number): string[] => {
  if (air === null) return ['The volume of the room is not known: give air.volume_m3, or a floor and walls.'];
  const { moisture, heat } = air;
  return [
    showTable(
      [
        {
          heading: 'Air of the room',
          cells: [
            'People',
            'Volume, m³',
            'Fresh air that comes in, L/s',
            'With the fan off, L/s',
            'Natural draught: warmth, Pa',
            'Natural draught: wind, Pa',
            'Fresh air planned, L/s',
            'Least, L/s',
            'For the CO2 target, L/s',
            'Pressure of the room, Pa',
            'Heat of people and equipment, W',
            'Warmer than outdoors, K',
            'Humidity, %',
            'Dew point, °C',
          ],
        },
        {
          heading: '',
          cells: [
            showFigure(air.people),
            showFigure(air.volume_m3, 1),
            showFigure(air.fresh_air_L_s, 1),
            showFigure(air.fan_off_L_s, 1),
            showFigure(air.natural_draught_Pa.warmth, 1),
            showFigure(air.natural_draught_Pa.wind, 1),
            showFigure(air.planned_L_s, 1),
            showFigure(air.least_L_s, 1),
            showFigure(air.for_CO2_target_L_s, 1),
            showFigure(air.room_pressure_Pa, 1),
            showFigure(heat.people_W + heat.equipment_W),
            showFigure(heat.rise_K, 1),
            showFigure(moisture?.relative_humidity_percent),
            showFigure(moisture?.dew_point_C, 1),
          ],
        },
      ],
      width,
    ),
    '',
    showTable(
      [
        { heading: 'CO2', cells: air.scenarios.map(({ name }) => name) },
        { heading: 'Highest, ppm', cells: air.scenarios.map((it) => showFigure(it.peak_ppm)) },
        { heading: '1000 ppm after, min', cells: air.scenarios.map((it) => showFigure(it.minutes_to_1000_ppm)) },
        { heading: '1500 ppm after, min', cells: air.scenarios.map((it) => showFigure(it.minutes_to_1500_ppm)) },
        { heading: '5000 ppm after, min', cells: air.scenarios.map((it) => showFigure(it.minutes_to_5000_ppm)) },
      ],
      width,
    ),
  ];
};

/** NR of a vent by itself and the piece that most of it comes from. */
const showNoise = ({ noise_in_room: noise, noise_pieces: pieces, loudest_piece: loudest }: Vent): string[] => {
  if (!noise || loudest === null) return [];
  const told = pieces
    .filter(({ NR }) => NR !== null && NR > 0)
    .map(({ name, NR }) => `${name} ${showFigure(NR)}`)
    .join(', ');
  return [
    `Its noise in the room: NR ${noise.NR < 0 ? 'below 0' : showFigure(noise.NR)}, most of it from ${loudest}${told ? ` (each by itself: ${told})` : ''}.`,
    '',
  ];
};

const showVent = (vent: Vent, width: number): string[] => {
  const { bands_Hz: bands, ratings, wall } = vent;
  const shown = bands.flatMap((band, b) => (band >= FROM && band <= TO ? [b] : []));
  const column = (heading: string, values: readonly number[] | undefined) => ({
    heading,
    cells: shown.map((b) => showFigure(values?.[b], 1)),
  });
  return [
    `${vent.name} (${vent.direction}): Dn,e,w ${showFigure(ratings.Dnew)} (${showFigure(ratings.C)}; ${showFigure(ratings.Ctr)}) dB, ${showFigure(vent.flow_L_s, 1)} L/s` +
      (wall ? `; costs ${wall.surface} ${showFigure(wall.lost_overall_dB, 1)} dB` : ''),
    '',
    showTable(
      [
        { heading: 'Band, Hz', cells: shown.map((b) => String(bands[b])) },
        column('Dn,e, dB', vent.Dne_dB),
        { heading: '±', cells: shown.map((b) => showFigure(vent.spread_dB[b])) },
        column('against a hole, dB', vent.insertion_loss_dB),
        column('fan off', vent.insertion_loss_fan_off_dB),
        { heading: 'let through by', cells: shown.map((b) => WAYS[vent.limiting[b] ?? 'air']) },
        ...(wall ? [column('wanted Dn,e, dB', wall.wanted_Dne_dB), column('wall loses, dB', wall.lost_dB)] : []),
      ],
      width,
    ),
    '',
    showTable(
      [
        { heading: 'Piece', cells: vent.pieces.map(({ name }) => name) },
        { heading: 'm/s', cells: vent.pieces.map(({ speed_m_s }) => showFigure(speed_m_s, 1)) },
        { heading: 'Pa', cells: vent.pieces.map(({ loss_Pa }) => showFigure(loss_Pa, 1)) },
      ],
      width,
    ),
    '',
    ...showNoise(vent),
  ];
};

const SEVERITIES = { caution: 'Caution', mistake: 'Mistake', hint: 'Hint' } as const;

/** Air, then each vent, then what to beware of. */
export const showBreathe = (breathed: Breathed, width: number): string => {
  const { vents, notes, noise_in_room: noise } = breathed;
  const heard = noise
    ? [
        `Noise of all vents in the room: NR ${noise.NR < 0 ? 'below 0' : showFigure(noise.NR)}, NC ${noise.NC === null ? 'below 15' : showFigure(noise.NC)}.`,
        '',
      ]
    : [];
  return [
    ...showAir(breathed, width),
    '',
    ...(vents.length === 0 ? ['No vent of this project has a path; add them under "vents".', ''] : []),
    ...vents.flatMap((vent) => showVent(vent, width)),
    ...heard,
    ...notes.map(({ severity, sentence }) => `${SEVERITIES[severity]}: ${sentence}`),
  ]
    .join('\n')
    .trimEnd();
};
