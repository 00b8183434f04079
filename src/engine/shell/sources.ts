import type { Provenance, Spectrum } from '../quantities/index.ts';
import { THIRD_OCTAVES } from '../quantities/index.ts';

/** A source to weigh the bands by. Only the differences between bands matter here. */
export interface Source {
  readonly key: string;
  readonly name: string;
  /** level per third octave 25 Hz to 10 kHz, dB */
  readonly spectrum: Spectrum;
  readonly provenance: Provenance;
}

/** An octave's level shared equally by its three thirds: −10 lg 3. */
const PER_THIRD = -4.8;

const illustrative: Provenance = {
  how: 'engineering judgement',
  source:
    'illustrative Leq in a lightly treated room of 30 to 50 m³ (from memory), made so that the sums agree with ' +
    'published levels of teaching, rehearsing and playing; third octave = octave − 4.8 dB',
};

/** @param octaves levels at 31.5, 63, 125, 250, 500 Hz, 1, 2, 4, 8 kHz, dB */
const fromOctaves = (key: string, name: string, octaves: readonly number[]): Source => ({
  key,
  name,
  spectrum: {
    bands: THIRD_OCTAVES,
    values: THIRD_OCTAVES.map((_, i) => (octaves[Math.floor(i / 3)] ?? 0) + PER_THIRD),
  },
  provenance: illustrative,
});

/** Levels by which shares can be weighed: a flat spectrum and what is played in such rooms. */
export const sources: readonly Source[] = [
  {
    key: 'flat',
    name: 'All bands alike',
    spectrum: { bands: THIRD_OCTAVES, values: THIRD_OCTAVES.map(() => 0) },
    provenance: { how: 'engineering judgement', source: 'no instrument: every band counts the same' },
  },
  fromOctaves('drum-kit-hard', 'Drum kit, played hard', [88, 98, 98, 96, 96, 96, 95, 94, 92]),
  fromOctaves('drum-kit-moderate', 'Drum kit, moderate', [80, 90, 90, 88, 88, 88, 87, 86, 84]),
  fromOctaves('rock-band', 'Amplified rock band', [95, 104, 104, 102, 102, 100, 97, 93, 87]),
  fromOctaves('rock-band-moderate', 'Amplified band, moderate', [85, 96, 96, 94, 94, 92, 89, 85, 79]),
  fromOctaves('bass-heavy-playback', 'Playback with heavy bass', [98, 106, 103, 97, 95, 94, 92, 88, 82]),
  fromOctaves('bass-amplifier', 'Bass amplifier alone', [88, 98, 98, 92, 84, 76, 68, 60, 50]),
  fromOctaves('guitar-amplifier', 'Practice guitar amplifier', [55, 72, 86, 88, 88, 88, 86, 80, 68]),
  fromOctaves('brass', 'Brass, two or three players', [55, 62, 75, 88, 97, 97, 92, 84, 75]),
  fromOctaves('trumpet', 'Trumpet', [40, 50, 60, 80, 90, 94, 91, 84, 75]),
  fromOctaves('saxophone', 'Saxophone', [40, 52, 70, 86, 92, 90, 84, 77, 68]),
  fromOctaves('piano', 'Piano, forte', [60, 72, 82, 86, 85, 80, 73, 65, 55]),
  fromOctaves('recorded-music', 'Recorded music, 50 Hz to 5 kHz alike', [20, 90, 90, 90, 90, 90, 90, 90, 20]),
];
