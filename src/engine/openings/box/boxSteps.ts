import { SOUND_SPEED, toReduction } from '../../quantities/index.ts';
import { bandFrequencies } from './bandFrequencies.ts';
import { orthonormal } from './basis.ts';
import type { BoxGeometry } from './boxGeometry.ts';
import { boxLine } from './boxLine.ts';
import { boxMesh } from './boxMesh.ts';
import type { BoxPlan } from './boxPlan.ts';
import type { BoxBand, BoxLine, BoxResult } from './boxResult.ts';
import { solveLine } from './boxSystem.ts';
import type { BoxSystem, SolvedLine } from './boxSystem.ts';
import { directRoom } from './directRoom.ts';
import type { DirectRoom } from './directRoom.ts';
import { planGrid } from './planGrid.ts';
import { cutOn, meshPorts } from './portShapes.ts';
import { reducedBox } from './reducedBox.ts';
import { requireBox } from './requireBox.ts';
import { snapshot, snapshotCount, snapshotFrequencies } from './snapshots.ts';

/** Between two pieces of work: how far it is, and the band that has just been finished. */
export interface BoxStep {
  /** 0 to 1 */
  readonly fraction: number;
  readonly band: BoxBand | null;
}

const toBand = (band: number, lines: readonly BoxLine[]): BoxBand => {
  const mean = (value: (line: BoxLine) => number): number =>
    lines.reduce((sum, line) => sum + value(line), 0) / lines.length;
  return {
    band,
    planeLoss: toReduction(mean((line) => line.planeToPlane)),
    multimodeLoss: toReduction(mean(({ modal }) => modal.reduce((sum, it) => sum + it, 0) / modal.length)),
    lines,
  };
};

interface Stage {
  readonly system: BoxSystem;
  readonly room: DirectRoom;
  readonly bands: readonly number[];
  /** operations, for the progress */
  readonly factorCost: number;
}

/** Neighbouring bands of the same cell size share a mesh. */
const stagesOf = (geometry: BoxGeometry, plan: BoxPlan): Stage[] => {
  const sizes = [...new Set(plan.bands.map(plan.cellSize))];
  return sizes.map((size) => {
    const mesh = boxMesh(planGrid(geometry, size));
    const ports = meshPorts(geometry, mesh);
    const room = directRoom(mesh, ports);
    return {
      system: { mesh, ports, height: geometry.height },
      room,
      bands: plan.bands.filter((band) => plan.cellSize(band) === size),
      factorCost: room.matrix.tree.cost,
    };
  });
};

/** The bands of a stage that a reduced basis serves: below the ports' cut-on, and only if it saves solutions. */
const reducedBands = (geometry: BoxGeometry, plan: BoxPlan, { bands }: Stage) => {
  const limit = cutOn(geometry, SOUND_SPEED);
  const below = bands.filter((band) => Math.max(...bandFrequencies(band, plan.lines(band))) < limit);
  const frequencies = below.flatMap((band) => bandFrequencies(band, plan.lines(band)));
  if (frequencies.length === 0) return { below: [], snapshots: [] };
  const [lowest, highest] = [Math.min(...frequencies), Math.max(...frequencies)];
  const count = snapshotCount(geometry, highest);
  return 1.5 * count > frequencies.length
    ? { below: [], snapshots: [] }
    : { below, snapshots: snapshotFrequencies(count, lowest, highest) };
};

/**
 * Transmission loss of a baffled, lined box between two ducts without reflections at their ends, by solving the wave
 * equation in plan: ∇·((1/ρ)∇p) + (ω²/K)p = 0, rigid walls, bulk-reacting linings, ports matched mode by mode.
 * Pieces of work come one by one, lowest bands first, so that the caller can show, wait or stop between them.
 * @param geometry plan of the box, m
 * @param plan bands, cell sizes and lines
 * @returns a generator of steps that returns all bands
 * @throws RangeError for a box that cannot be built or a grid beyond 60 000 unknowns
 * @validity pressure uniform over the height: below c/2H with ports in the flat faces, up to about c/H with centred
 * ports in the ends; rigid partitions, no flow. 12 cells per wavelength give 0.5 dB, 8 give 1 dB. Compared with
 * independent wave solutions and closed forms; never with a measurement.
 * @source finite elements with modified quadrature; modal ports; reduced basis (Galerkin) below the ports' cut-on
 */
export function* boxSteps(geometry: BoxGeometry, plan: BoxPlan): Generator<BoxStep, BoxResult> {
  requireBox(geometry, plan.bands.map(plan.cellSize));
  const stages = stagesOf(geometry, plan).map((stage) => ({ ...stage, ...reducedBands(geometry, plan, stage) }));
  const costs = stages.map(({ bands, below, snapshots, factorCost }) => {
    const direct = bands.filter((band) => !below.includes(band)).reduce((sum, band) => sum + plan.lines(band), 0);
    return factorCost * (direct + 1.8 * snapshots.length);
  });
  const total = costs.reduce((sum, it) => sum + it, 0);
  const bands: BoxBand[] = [];
  let done = 0;
  const step = (cost: number, band: BoxBand | null): BoxStep => {
    done += cost;
    return { fraction: Math.min(1, done / total), band };
  };
  for (const { system, room, below, snapshots, factorCost, bands: all } of stages) {
    const columns: Float64Array[] = [];
    for (const frequency of snapshots) {
      columns.push(...snapshot(system, frequency, room));
      yield step(1.8 * factorCost, null);
    }
    const reduced = snapshots.length > 0 ? reducedBox(system, orthonormal(columns)) : null;
    for (const band of all) {
      const quick = reduced !== null && below.includes(band);
      const lines: BoxLine[] = [];
      for (const frequency of bandFrequencies(band, plan.lines(band))) {
        const solved: SolvedLine = quick ? reduced.solve(frequency) : solveLine(system, frequency, room);
        lines.push(boxLine(system, solved, frequency, plan.inside));
        if (!quick && lines.length < plan.lines(band)) yield step(factorCost, null);
      }
      const finished = toBand(band, lines);
      bands.push(finished);
      yield step(quick ? 0 : factorCost, finished);
    }
  }
  const imbalances = bands.flatMap(({ lines }) =>
    lines.flatMap(({ inside }) => (inside ? [Math.abs(inside.imbalance)] : [])),
  );
  return {
    bands,
    unknowns: Math.max(...stages.map(({ system }) => system.mesh.unknowns)),
    imbalance: imbalances.length > 0 ? Math.max(...imbalances) : null,
  };
}
