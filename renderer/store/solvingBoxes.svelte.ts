import type { BoxField, BoxResult, VentBox } from '../../src/engine/openings/index.ts';
import type { Project } from '../../src/project/schema.ts';
import { toVentPath, ventsInUse } from '../../src/project/toVents.ts';
import { createBoxClient, type BoxClient, type BoxSolving } from '../../src/worker/boxClient.ts';
import { studio } from './studio.svelte.ts';

/** A box is left alone for so long before it is solved finely, ms: a drag has ended by then. */
const CALM = 600;

const startClient = (): BoxClient =>
  createBoxClient(new Worker(new URL('../../src/worker/box.worker.ts', import.meta.url), { type: 'module' }));

/** The fine solution in work. */
export interface BoxInWork {
  readonly key: string;
  readonly name: string;
  /** 0 to 1 */
  readonly fraction: number;
  /** highest band that is done, Hz; null before the first */
  readonly band: number | null;
  /** s, from how long it took so far; null while that says nothing */
  readonly left: number | null;
}

export const boxKey = (box: VentBox): string => JSON.stringify(box);

interface NamedBox {
  readonly name: string;
  readonly box: VentBox;
}

/** Boxes of all vents in use, each shape once. */
const boxesOf = (project: Project): readonly NamedBox[] => {
  const boxes = ventsInUse(project).flatMap((vent) =>
    toVentPath(project, vent).elements.flatMap((element) =>
      element.kind === 'box' ? [{ name: `${element.name} of ${vent.name}`, box: element.box }] : [],
    ),
  );
  return [...new Map(boxes.map((it) => [boxKey(it.box), it])).values()];
};

/** Solves the boxes of the open project on the fine grid, one after another, off the window's thread. */
export class SolvingBoxes {
  inWork = $state.raw<BoxInWork | null>(null);
  /** fine solutions by the box's key */
  solved = $state.raw<ReadonlyMap<string, BoxResult>>(new Map());
  /** the user has stopped it: nothing is solved until it is asked for again */
  stopped = $state(false);
  fault = $state<string | null>(null);
  #client: BoxClient | null = null;
  #running: BoxSolving | null = null;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #wanted: readonly NamedBox[] = [];

  /** The project on screen has changed: what is no longer in it is dropped, what is new waits until it is calm. */
  follow(project: Project | null): void {
    const look = (): void => {
      this.#wanted = project ? boxesOf(project) : [];
    };
    if (this.#running) {
      look();
      if (!this.#wanted.some(({ box }) => boxKey(box) === this.inWork?.key)) this.#abort();
    }
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      look();
      void this.#next();
    }, CALM);
  }

  stop(): void {
    this.stopped = true;
    this.#abort();
  }
  goOn(): void {
    this.stopped = false;
    void this.#next();
  }

  /** Sound pressure in a box; null where a later ask came before it was begun. @param fine on 10 mm, otherwise 20 mm */
  field(box: VentBox, frequency: number, fine: boolean): Promise<BoxField | null> {
    return this.#ask().field(box, frequency, fine ? 0.01 : 0.02, 0);
  }

  #ask(): BoxClient {
    this.#client ??= startClient();
    return this.#client;
  }

  #abort(): void {
    this.#running?.cancel();
    this.#running = null;
    this.inWork = null;
  }

  async #next(): Promise<void> {
    if (this.#running || this.stopped) return;
    const next = this.#wanted.find(({ box }) => !this.solved.has(boxKey(box)));
    if (!next) return;
    const key = boxKey(next.box);
    const began = performance.now();
    this.inWork = { key, name: next.name, fraction: 0, band: null, left: null };
    const solving = this.#ask().solve(next.box, 'fine', ({ fraction, bands }) => {
      if (this.#running !== solving) return;
      const taken = (performance.now() - began) / 1000;
      const left = fraction > 0.05 ? (taken / fraction) * (1 - fraction) : null;
      this.inWork = { key, name: next.name, fraction, band: bands.at(-1)?.band ?? null, left };
    });
    this.#running = solving;
    try {
      const result = await solving.answer;
      if (this.#running === solving) this.#abort();
      if (!result) return;
      this.solved = new Map([...this.solved, [key, result]]);
      this.fault = null;
      await studio.results.learn([{ box: next.box, result }]);
      void this.#next();
    } catch (fault) {
      if (this.#running === solving) this.#abort();
      this.fault = fault instanceof Error ? fault.message : String(fault);
    }
  }
}

export const solvingBoxes = new SolvingBoxes();
