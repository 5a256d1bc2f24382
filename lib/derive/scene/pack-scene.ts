import type { SpeciesId } from '../../wood/species-id.ts';
import type { SceneData, SceneShape, WoodLook } from './scene-data.ts';

/** A scene as JSON can hold it: numbers of meshes as base64 of little-endian arrays. */
interface Packed extends Omit<SceneData, 'shapes' | 'woods'> {
  readonly shapes: Readonly<Record<string, PackedShape>>;
  readonly woods: readonly [SpeciesId, WoodLook][];
}

type PackedShape = Readonly<Record<keyof SceneShape, string>>;

/** A vertex is written to this, mm: less than a screen can show. */
const STEP = 1 / 16;

/** A scene as text, the same for the same scene; `unpackScene` reads it. */
export function packScene(data: SceneData): string {
  const shapes = Object.fromEntries([...data.shapes].map(([key, shape]) => [key, packShape(shape)]));
  const packed: Packed = { ...data, shapes, woods: [...data.woods] };
  return JSON.stringify(packed, (_, value) => (typeof value === 'number' ? Number(value.toFixed(6)) + 0 : value));
}

export function unpackScene(text: string): SceneData {
  const { shapes, woods, ...rest } = JSON.parse(text) as Packed;
  return {
    ...rest,
    shapes: new Map(Object.entries(shapes).map(([key, shape]) => [key, unpackShape(shape)])),
    woods: new Map(woods),
  };
}

function packShape({ vertices, triangles, surfaces, edges, seams }: SceneShape): PackedShape {
  return {
    vertices: base64(narrow(deltas(vertices.map((v) => Math.round(v / STEP))))),
    triangles: base64(shortest(triangles)),
    surfaces: base64(surfaces.every((n) => n < 256) ? new Uint8Array(surfaces) : surfaces),
    edges: base64(shortest(edges)),
    seams: base64(shortest(seams)),
  };
}

function unpackShape(packed: PackedShape): SceneShape {
  const { buffer } = bytesOf(packed.vertices);
  const steps = packed.vertices.startsWith('s') ? new Int16Array(buffer) : new Int32Array(buffer);
  const vertices = new Float32Array(steps.length);
  const sum = [0, 0, 0];
  steps.forEach((step, k) => {
    sum[k % 3]! += step;
    vertices[k] = sum[k % 3]! * STEP;
  });
  return {
    vertices,
    triangles: indicesOf(packed.triangles),
    surfaces: new Uint16Array(numbersOf(packed.surfaces)),
    edges: indicesOf(packed.edges),
    seams: indicesOf(packed.seams),
  };
}

/** Each vertex less the one before it: small numbers, which compress well. */
const deltas = (numbers: Float32Array): Float64Array =>
  Float64Array.from(numbers, (v, k) => v - (k < 3 ? 0 : numbers[k - 3]!));

const shortest = (indices: Uint32Array): Uint16Array | Uint32Array =>
  indices.every((i) => i < 65536) ? new Uint16Array(indices) : indices;

/** Steps beyond 2 m need more room. */
const narrow = (steps: Float64Array): Int16Array | Int32Array =>
  steps.every((step) => Math.abs(step) < 32768) ? new Int16Array(steps) : new Int32Array(steps);

function base64(array: Uint8Array | Uint16Array | Uint32Array | Int16Array | Int32Array): string {
  const bytes = new Uint8Array(array.buffer, array.byteOffset, array.byteLength);
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return `${WIDTHS[array.BYTES_PER_ELEMENT]!}${btoa(text)}`;
}

function bytesOf(packed: string): Uint8Array<ArrayBuffer> {
  const text = atob(packed.slice(1));
  const bytes = new Uint8Array(text.length);
  for (let k = 0; k < text.length; k++) bytes[k] = text.charCodeAt(k);
  return bytes;
}

/** One letter in front tells how many bytes a number takes. */
const WIDTHS: Readonly<Record<number, string>> = { 1: 'b', 2: 's', 4: 'l' };

function numbersOf(packed: string): Uint8Array | Uint16Array | Uint32Array {
  const bytes = bytesOf(packed);
  if (packed.startsWith('b')) return bytes;
  return packed.startsWith('s') ? new Uint16Array(bytes.buffer) : new Uint32Array(bytes.buffer);
}

const indicesOf = (packed: string): Uint32Array => new Uint32Array(numbersOf(packed));
