import type { Client } from '../../contract/client.ts';
import type { MethodName } from '../../contract/methods.ts';
import { projectFromText } from '../../service/checkedProject.ts';
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
  readonly run: (client: Client, text: string) => Promise<Printed>;
}

/** What the command line can do, by command. The summary of each is its method's in the contract. */
export const cliCommands: Readonly<Record<string, CliCommand>> = {
  predict: {
    file: 'FILE',
    method: 'predict',
    detail:
      'Reads a project and prints, for each make-up, its ratings, mass, thickness, resonances and its sound reduction\nin third octaves from 25 Hz to 10 kHz.',
    run: async (client, text) => {
      const value = await client.call('predict', { document: projectFromText(text) });
      return { value, show: (width) => showPredict(value, width) };
    },
  },
  shell: {
    file: 'FILE',
    method: 'shell',
    detail:
      'Reads a project and prints the sound reduction of the whole room, the share of what gets out through each part,\nand the part that limits it. Each part is taken at its own size.',
    run: async (client, text) => {
      const value = await client.call('shell', { document: projectFromText(text) });
      return { value, show: (width) => showShell(value, width) };
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
};
