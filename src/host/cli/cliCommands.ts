import type { Client } from '../../contract/client.ts';
import type { MethodName } from '../../contract/methods.ts';
import { boxFromText } from '../../service/checkedBox.ts';
import { projectFromText } from '../../service/checkedProject.ts';
import type { Drawing } from './drawOptions.ts';
import { partNames } from './partNames.ts';
import type { Design } from './readArguments.ts';
import { showBox } from './showBox.ts';
import { showBreathe } from './showBreathe.ts';
import { showDesign } from './showDesign.ts';
import { drawnIntervals, predictedIntervals } from './showIntervals.ts';
import { showPredict } from './showPredict.ts';
import { showRate } from './showRate.ts';
import { showShell } from './showShell.ts';

/** What a command printed: one JSON value, and the same for reading. */
export interface Printed {
  readonly value: unknown;
  readonly show: (width: number) => string;
}

export interface CliCommand {
  readonly file: string;
  readonly method: MethodName;
  readonly detail: string;
  /** @throws {Refusal} with what is wrong with the file */
  readonly run: (client: Client, text: string, drawing: Drawing | null, design: Design | null) => Promise<Printed>;
}

const asked = (drawing: Drawing | null) => (drawing ? { uncertainty: drawing } : {});

const DRAWN =
  'With --uncertainty also what may come of it: intervals of curve and ratings from --samples builds (10000), drawn from\n' +
  '--seed (1), and what the doubt comes from; in JSON under "intervals".';

/** What the command line can do, by command. The summary of each is its method's in the contract. */
export const cliCommands: Readonly<Record<string, CliCommand>> = {
  predict: {
    file: 'FILE',
    method: 'predict',
    detail:
      'Reads a project and prints, for each make-up, its ratings, mass, thickness, resonances and its sound reduction\nin third octaves from 25 Hz to 10 kHz.\n' +
      DRAWN,
    run: async (client, text, drawing) => {
      const document = projectFromText(text);
      const value = await client.call('predict', { document, ...asked(drawing) });
      return { value, show: (width) => showPredict(value, width, document) + predictedIntervals(value, width) };
    },
  },
  shell: {
    file: 'FILE',
    method: 'shell',
    detail:
      'Reads a project and prints the sound reduction of the whole room, the share of what gets out through each part,\nand the part that limits it. Each part is taken at its own size.\n' +
      DRAWN,
    run: async (client, text, drawing) => {
      const document = projectFromText(text);
      const value = await client.call('shell', { document, ...asked(drawing) });
      return {
        value,
        show: (width) => showShell(value, width, partNames(document)) + drawnIntervals(value.intervals, width),
      };
    },
  },
  breathe: {
    file: 'FILE',
    method: 'breathe',
    detail:
      'Reads a project and prints what its vents let through and cost their walls, how much air they bring with the fans\nrunning, CO2 over the session with the fan on, off and the door open, heat, moisture, the noise of fan and flow, and\nwhat to beware of. Vents stand under "vents", people and session under "air"; "height_between_vents_m" and "wind_m_s"\nthere let warmth and wind drive the air as well.\nWith --design also the smallest lined boxes for each vent opening that carry the air and cost its wall at most 1 dB,\nin JSON as "vent" and "assemblies" to be put into the project; with --bass the cost is that of music rich in bass from\n50 Hz on. It may take half a minute for each vent.',
    run: async (client, text, _drawing, design) => {
      const document = projectFromText(text);
      const value = await client.call('breathe', { document });
      if (!design) return { value, show: (width) => showBreathe(value, width) };
      const found = await client.call('designVents', { document, ...design });
      return {
        value: { ...value, ...found },
        show: (width) => `${showBreathe(value, width)}\n\n${showDesign(found, width)}`,
      };
    },
  },
  rate: {
    file: 'FILE.csv',
    method: 'rate',
    detail:
      'Reads a table of two columns, the band in Hz and R or D in dB, one line per band, and prints the single-number\nratings. A rating is missing where the table lacks a band that it needs.',
    run: async (client, text) => {
      const value = await client.call('rate', { csv: text });
      return { value, show: (width) => showRate(value, width) };
    },
  },
  box: {
    file: 'FILE',
    method: 'box',
    detail: [
      'Reads { "geometry": { … }, "h_m": 0.008 }, all in metres, and prints the transmission loss of the box in third',
      'octaves from 50 Hz to 5 kHz. In plan, x runs along L from side W to side E, y along W from side S to side N:',
      '  L, W, H   inside of the box; H between its flat faces',
      '  solids    [x0, y0, x1, y1] of each partition',
      '  linings   [x0, y0, x1, y1, material]; later ones win over earlier, solids over all;',
      '            material ["miki", flow resistivity in Pa s/m2], or null for air',
      '  base      material of the rest, null for air; ["sandwich", H, t1, t2, material] where the flat faces are lined',
      '  ports     two: { "side": "W", "c": middle along the side, "w": S/H, "S": area }, or in a flat face',
      '            { "side": "F", "rect": [x0, y0, x1, y1], "S": area }',
      'h_m is the size of the grid’s cells: 0.01 to look, 0.008 to rely on up to 2.5 kHz, 0.006 up to 5 kHz. A box of',
      '1.2 x 0.4 m takes some seconds at 0.008 and a minute at 0.003; at most 60000 unknowns.',
    ].join('\n'),
    run: async (client, text) => {
      const start = performance.now();
      const box = await client.call('box', { document: boxFromText(text) });
      const value = { ...box, seconds: Number(((performance.now() - start) / 1000).toFixed(3)) };
      return { value, show: (width) => showBox(value, width) };
    },
  },
};
