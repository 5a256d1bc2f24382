import { Group, LineBasicMaterial, LineSegments, Matrix4, Mesh, Vector3 } from 'three';
import type { SceneData, ScenePart } from '../../derive/scene/scene-data.ts';
import type { Vec3 } from '../../geometry/vec.ts';
import { cross } from '../../geometry/vec.ts';
import type { PartId } from '../../model/part.ts';
import { type PartGeometry, partGeometry } from './part-geometry.ts';
import { colorOf, type WoodMaterial, woodMaterial } from './wood-material.ts';

/** The piece of furniture on the stage. */
export interface Piece {
  readonly group: Group;
  /** Shows other data; buffers of shapes that stay are kept. */
  update(data: SceneData): void;
  /** How far the joints are open: 0 closed, 1 open. */
  open(share: number): void;
  highlight(parts: readonly PartId[]): void;
  dispose(): void;
}

interface Shown {
  readonly group: Group;
  readonly mesh: Mesh;
  readonly edges: LineSegments;
  readonly seams: LineSegments;
  readonly wood: WoodMaterial;
  readonly ink: LineBasicMaterial;
  part: ScenePart;
}

export function makePiece(): Piece {
  const group = new Group();
  const geometries = new Map<string, PartGeometry>();
  const shown = new Map<PartId, Shown>();
  let share = 0;

  const put = (one: Shown): void => {
    const { part } = one;
    one.group.position.set(...(part.apart.map((mm) => mm * share) as [number, number, number]));
    one.group.visible = part.group !== 'tenon' || share > 0;
    one.seams.visible = share > 0;
  };
  const drop = (one: Shown): void => {
    group.remove(one.group);
    one.wood.material.dispose();
    one.ink.dispose();
  };
  const geometryOf = (data: SceneData, key: string): PartGeometry => {
    const geometry = geometries.get(key) ?? partGeometry(data.shapes.get(key)!);
    geometries.set(key, geometry);
    return geometry;
  };
  return {
    group,
    update(data) {
      keepOnly(shown, new Set(data.parts.map((part) => part.id)), drop);
      for (const part of data.parts) {
        const one = shown.get(part.id) ?? newPart(part);
        if (!shown.has(part.id)) group.add(one.group);
        shown.set(part.id, one);
        one.part = part;
        dress(one, data, geometryOf(data, part.shape));
        put(one);
      }
      keepOnly(geometries, data.shapes, (geometry) => geometry.dispose());
    },
    open(to) {
      share = to;
      for (const one of shown.values()) put(one);
    },
    highlight(parts) {
      const marked = new Set(parts);
      for (const [id, one] of shown) one.wood.tint(marked.has(id));
    },
    dispose() {
      for (const one of shown.values()) drop(one);
      for (const geometry of geometries.values()) geometry.dispose();
    },
  };
}

function keepOnly<T>(all: Map<string, T>, wanted: { has(key: string): boolean }, drop: (one: T) => void): void {
  for (const [key, one] of all) {
    if (wanted.has(key)) continue;
    drop(one);
    all.delete(key);
  }
}

function newPart(part: ScenePart): Shown {
  const wood = woodMaterial();
  const ink = new LineBasicMaterial({ transparent: true, opacity: 0.5 });
  const mesh = new Mesh(undefined, wood.material);
  mesh.castShadow = true;
  mesh.receiveShadow = true;
  const [edges, seams] = [new LineSegments(undefined, ink), new LineSegments(undefined, ink)];
  const group = new Group();
  const placed = new Group();
  placed.matrixAutoUpdate = false;
  placed.add(mesh, edges, seams);
  group.add(placed);
  return { group, mesh, edges, seams, wood, ink, part };
}

/** Gives a part the buffers, the place and the wood that the data say. */
function dress(one: Shown, data: SceneData, geometry: PartGeometry): void {
  const { part } = one;
  one.mesh.geometry = geometry.faces;
  one.edges.geometry = geometry.edges;
  one.seams.geometry = geometry.seams;
  const look = data.woods.get(part.wood)!;
  one.wood.set(part, look);
  one.ink.color.copy(colorOf(look.late)).multiplyScalar(0.35);
  const { x, y, origin } = part.frame;
  const at = (v: Vec3): Vector3 => new Vector3(...v);
  const placed = one.mesh.parent!;
  placed.matrix = new Matrix4().makeBasis(at(x), at(y), at(cross(x, y))).setPosition(at(origin));
  placed.matrixWorldNeedsUpdate = true;
}
