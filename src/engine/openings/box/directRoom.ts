import type { BoxMesh } from './boxMesh.ts';
import { frontTree } from './frontTree.ts';
import type { MeshPort } from './portShapes.ts';
import { storePlaces } from './storePlaces.ts';
import { treeMatrix } from './treeFactor.ts';
import type { TreeMatrix } from './treeFactor.ts';

/** Room for one factorisation, used again for every frequency, and where the entries of the mesh stand in it. */
export interface DirectRoom {
  readonly matrix: TreeMatrix;
  /** of each filling's entries */
  readonly entries: readonly Int32Array[];
  /** of each port's local term */
  readonly ports: readonly Int32Array[];
}

export const directRoom = (mesh: BoxMesh, ports: readonly MeshPort[]): DirectRoom => {
  const tree = frontTree(mesh);
  return {
    matrix: treeMatrix(tree),
    entries: mesh.entries.map((it) => storePlaces(tree, it)),
    ports: ports.map(({ mass }) => storePlaces(tree, mass)),
  };
};
