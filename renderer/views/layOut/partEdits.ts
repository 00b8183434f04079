import { isSurface, partsOf, surfaceOfOpening } from '../../../src/project/parts.ts';
import type { Project, SurfaceEntry } from '../../../src/project/schema.ts';
import { gapsOf, movedWithGaps } from '../../drawings/netDrag.ts';
import { placeOpenings } from '../../drawings/netOpenings.ts';
import type { SurfacePoint } from '../../drawings/netTurn.ts';
import { studio } from '../../store/studio.svelte.ts';
import { toast } from '../../store/toast.svelte.ts';
import { newOpening, openingMake, type OpeningStart } from './newPart.ts';
import { boxRoom, oneSurface, type NewSurfaces } from './newRoom.ts';

/** Adds an opening to a surface and selects it. @returns its id; null where the edit was refused */
export const addOpeningTo = (
  project: Project,
  surfaceId: string,
  kind: OpeningStart,
  at: SurfacePoint | null,
): string | null => {
  const surface = project.surfaces.find((it) => it.id === surfaceId);
  if (!surface) return null;
  const opening = newOpening(project, surface, kind, at);
  const make = openingMake(project, surface, kind);
  const assemblies = make?.assembly ? { [make.id]: make.assembly } : {};
  if (!studio.run('addMadeOpening', { surface: surfaceId, opening, assemblies })) return null;
  studio.selectedPart = opening.id;
  return opening.id;
};

const addNew = ({ surfaces, assemblies }: NewSurfaces): string | null => {
  if (!studio.run('addSurfaces', { surfaces, assemblies })) return null;
  const first = surfaces[0]?.id ?? null;
  studio.selectedPart = first;
  return first;
};
export const addSurfaceOf = (project: Project, kind: SurfaceEntry['kind']): string | null =>
  addNew(oneSurface(project, kind));
export const addRoom = (project: Project, length: number, depth: number, height: number): string | null =>
  addNew(boxRoom(project, length, depth, height));

/** Puts an opening to a place given in figures; the gaps along its edges go with it. */
export const putOpening = (project: Project, id: string, x_m: number, y_m: number): void => {
  const surface = surfaceOfOpening(project, id);
  const openings = surface ? placeOpenings(surface) : [];
  const opening = openings.find((it) => it.id === id);
  if (!surface || !opening) return;
  const [du, dv] = [x_m - opening.u, y_m - opening.v];
  studio.run('moveOpenings', {
    moves: movedWithGaps(surface, opening, gapsOf(opening, openings), du, dv, false),
  });
};

/** Takes a part out; the message at the foot brings it back. */
export const removePart = (project: Project, id: string): void => {
  const part = partsOf(project).find((it) => it.id === id);
  if (!part) return;
  const taken = isSurface(part)
    ? studio.run('removeSurface', { surface: id })
    : studio.run('removeOpening', { opening: id });
  if (!taken) return;
  if (studio.selectedPart === id) studio.selectedPart = null;
  toast.say({ sentence: `${part.name} is removed.`, action: { label: 'Undo', run: () => void studio.undo() } });
};
