import { findMaterial } from './library.ts';
import type { LayerEntry, Project } from './schema.ts';

/** Masonry and concrete from this thickness stand by themselves, mm. Common practice: no leaf of blocks is thinner. */
const SELF_STANDING = 50;

const selfStanding = (project: Project, layer: LayerEntry | undefined): boolean => {
  if (layer?.kind !== 'board' || layer.thickness_mm < SELF_STANDING) return false;
  const material = findMaterial(project, layer.material);
  return material?.kind === 'board' && material.family === 'mineral';
};

/** On which sides of a cavity a row of studs of its own stands. */
export interface FrameRows {
  readonly room: boolean;
  readonly outside: boolean;
}

/**
 * Rows of studs in a cavity. Of two frames that share nothing, the one in front of masonry is the masonry itself; a
 * common or staggered frame is one row.
 * @returns null where the cavity has no studs
 */
export const frameRows = (project: Project, layers: readonly LayerEntry[], cavity: number): FrameRows | null => {
  const layer = layers[cavity];
  if (layer?.kind !== 'cavity' || !layer.frame || layer.frame.stud === 'none') return null;
  if (layer.frame.arrangement !== 'twin') return { room: true, outside: false };
  const room = !selfStanding(project, layers[cavity - 1]);
  const outside = !selfStanding(project, layers[cavity + 1]);
  return room || outside ? { room, outside } : { room: true, outside: true };
};
