import { Document, type Material, type Mesh, WebIO } from '@gltf-transform/core';
import type { Rgb, SceneData, ScenePart, SceneShape } from '../derive/scene/scene-data.ts';
import { type Frame, zAxis } from '../geometry/frame.ts';
import type { Vec3 } from '../geometry/vec.ts';

/**
 * A scene as binary glTF 2.0: metres, Y up, so (x, y, z) mm of the table becomes (x, z, -y) / 1000. One named node a
 * part, its id and wood in `extras`; parts of one shape and wood share a mesh; normals are flat. Single-sided: what looks
 * inside out in a viewer is inside out.
 */
export async function glb(data: SceneData): Promise<Uint8Array> {
  const document = new Document();
  const buffer = document.createBuffer();
  const scene = document.createScene(data.words.title);
  const { title, revision, date, warning } = data.words;
  document.getRoot().getAsset().generator = 'tablewright';
  scene.setExtras({ title, revision, date, ...(warning === undefined ? {} : { warning }) });

  const materials = new Map<string, Material>();
  const materialOf = ({ wood }: ScenePart): Material => {
    const { early, late } = data.woods.get(wood)!;
    const color = early.map((c, k) => linear((c + late[k]!) / 2)) as unknown as Rgb;
    const made =
      materials.get(wood) ??
      document
        .createMaterial(wood)
        .setBaseColorFactor([...color, 1])
        .setMetallicFactor(0)
        .setRoughnessFactor(0.6);
    materials.set(wood, made);
    return made;
  };

  const meshes = new Map<string, Mesh>();
  const meshOf = (part: ScenePart): Mesh => {
    const key = `${part.shape} ${part.wood}`;
    const known = meshes.get(key);
    if (known) return known;
    const { positions, normals } = corners(data.shapes.get(part.shape)!);
    const accessor = (array: Float32Array<ArrayBuffer>) =>
      document.createAccessor().setType('VEC3').setArray(array).setBuffer(buffer);
    const primitive = document
      .createPrimitive()
      .setAttribute('POSITION', accessor(positions))
      .setAttribute('NORMAL', accessor(normals))
      .setMaterial(materialOf(part));
    const made = document.createMesh(part.name).addPrimitive(primitive);
    meshes.set(key, made);
    return made;
  };
  for (const part of data.parts) {
    const node = document
      .createNode(`${part.mark} ${part.name}`)
      .setMatrix(matrixOf(part.frame))
      .setMesh(meshOf(part))
      .setExtras({ id: part.id, mark: part.mark, wood: part.wood });
    scene.addChild(node);
  }
  document.getRoot().setDefaultScene(scene);
  return new WebIO().writeBinary(document);
}

/** A channel of sRGB, 0 to 255, as linear light (IEC 61966-2-1). */
function linear(channel: number): number {
  const c = channel / 255;
  return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
}

/** A point or direction of the table, as the format turns it; mm become metres where it is a point. */
const turned = ([x, y, z]: Vec3): [number, number, number] => [x, z, -y];

/** Columns of the matrix from the part, in metres of its own frame, to the world. */
function matrixOf(frame: Frame) {
  const columns = [frame.x, frame.y, zAxis(frame)].flatMap((axis) => [...turned(axis), 0]);
  const origin = turned(frame.origin).map((mm) => mm / 1000 + 0);
  return [...columns.map((n) => n + 0), ...origin, 1] as Parameters<ReturnType<Document['createNode']>['setMatrix']>[0];
}

/** Corners of all triangles in metres of the part's frame, with the normal of their triangle. */
function corners({ vertices, triangles }: SceneShape) {
  const positions = new Float32Array(3 * triangles.length);
  const normals = new Float32Array(3 * triangles.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => {
      const i = 3 * triangles[t + k]!;
      return [vertices[i]!, vertices[i + 1]!, vertices[i + 2]!] as const;
    }) as [Vec3, Vec3, Vec3];
    const [u, v] = [
      [b[0] - a[0], b[1] - a[1], b[2] - a[2]],
      [c[0] - a[0], c[1] - a[1], c[2] - a[2]],
    ] as [Vec3, Vec3];
    const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]] as const;
    const size = Math.hypot(...n) || 1;
    for (const [k, p] of [a, b, c].entries()) {
      positions.set([p[0] / 1000, p[1] / 1000, p[2] / 1000], 3 * (t + k));
      normals.set([n[0] / size, n[1] / size, n[2] / size], 3 * (t + k));
    }
  }
  return { positions, normals };
}
