import type { BoxBand, BoxField, BoxResult, VentBox } from '../engine/openings/index.ts';
import { latestOnly } from './latestOnly.ts';
import type { BoxGrid, BoxNews, BoxProgress, BoxRequest } from './boxProtocol.ts';

/** As much of a Worker as the client needs. */
export interface BoxPort {
  postMessage(message: BoxRequest): void;
  onmessage: ((event: MessageEvent<BoxNews>) => unknown) | null;
  onerror: ((event: ErrorEvent) => unknown) | null;
}

/** A solution under way. */
export interface BoxSolving {
  /** all bands; null where it was cancelled. Rejects with a sentence */
  readonly answer: Promise<BoxResult | null>;
  cancel(): void;
}

export interface BoxClient {
  solve(box: VentBox, grid: BoxGrid, onprogress: (progress: BoxProgress) => void): BoxSolving;
  /** The pressure; null where a later ask has taken this one's place. Rejects with a sentence */
  field(box: VentBox, frequency: number, cellSize: number, from: 0 | 1): Promise<BoxField | null>;
}

interface Waiting {
  readonly news: (news: BoxNews) => boolean;
  readonly fail: (fault: Error) => void;
}

const BROKEN = 'The box could not be solved because of a fault of ours. Change anything to try again.';

/** Talks with the box worker. */
export const createBoxClient = (worker: BoxPort): BoxClient => {
  const waiting = new Map<number, Waiting>();
  const state = { sequence: 0 };

  worker.onmessage = ({ data }) => {
    if (waiting.get(data.sequence)?.news(data)) waiting.delete(data.sequence);
  };
  worker.onerror = () => {
    const asked = [...waiting.values()];
    waiting.clear();
    for (const { fail } of asked) fail(new Error(BROKEN));
  };

  return {
    solve: (box, grid, onprogress) => {
      const sequence = (state.sequence += 1);
      const bands: BoxBand[] = [];
      const answer = new Promise<BoxResult | null>((resolve, reject) => {
        const news = (it: BoxNews): boolean => {
          if (it.kind === 'progress') {
            if (it.band) bands.push(it.band);
            onprogress({ fraction: it.fraction, bands: [...bands] });
            return false;
          }
          if (it.kind === 'solved') resolve(it.result);
          else if (it.kind === 'fault') reject(new Error(it.sentence));
          else resolve(null);
          return true;
        };
        waiting.set(sequence, { news, fail: reject });
        worker.postMessage({ kind: 'solve', sequence, box, grid });
      });
      return { answer, cancel: () => worker.postMessage({ kind: 'cancel', sequence }) };
    },
    field: latestOnly((box: VentBox, frequency: number, cellSize: number, from: 0 | 1) => {
      const sequence = (state.sequence += 1);
      return new Promise<BoxField>((resolve, reject) => {
        const news = (it: BoxNews): boolean => {
          if (it.kind === 'field') resolve(it.field);
          else if (it.kind === 'fault') reject(new Error(it.sentence));
          return it.kind !== 'progress';
        };
        waiting.set(sequence, { news, fail: reject });
        worker.postMessage({ kind: 'field', sequence, box, frequency, cellSize, from });
      });
    }),
  };
};
