import { BufferAttribute, BufferGeometry, DoubleSide, Ray, Vector3 } from 'three';
import { MeshBVH } from 'three-mesh-bvh';
import { describe, expect, test } from 'vitest';
import { hiddenLines } from '../../lib/derive/drawings/hidden-lines.ts';
import type { PlacedSolid } from '../../lib/derive/drawings/placed-solid.ts';
import { toView, type View, viewFrom } from '../../lib/derive/drawings/view.ts';
import type { ViewLine } from '../../lib/derive/drawings/view-line.ts';
import { triangulate } from '../../lib/derive/solids/triangulate.ts';
import { toOuter } from '../../lib/geometry/frame.ts';
import { add, scale, type Vec2, type Vec3 } from '../../lib/geometry/vec.ts';
import { placeOf, visibleParts } from '../../lib/model/assembly.ts';
import { randomFrom } from '../tables/random.ts';
import { distance, type SceneEdge, sceneEdges } from './sampling-oracle.ts';
import { jobOf } from './sheet-jobs.ts';

/** Rays start so far before their point, mm: the mesh is kept in single precision, 0.0001 mm at the size of a table. */
const OFF = 0.02;

/** Nearer than this to a line is on it, mm. */
const ON = 0.01;

const POINTS = 800;

function meshOf(solids: readonly PlacedSolid[]): MeshBVH {
  const corners = solids.flatMap(({ solid, frame }) =>
    triangulate(solid).flatMap((i) => [...toOuter(frame, solid.vertices[i]!)]),
  );
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(corners), 3));
  return new MeshBVH(geometry);
}

const vector = (p: Vec3): Vector3 => new Vector3(...p);

/** A seeded view from anywhere around the table but straight above or below. */
function viewOf(random: () => number): View {
  const turn = random() * 2 * Math.PI;
  const rise = (random() - 0.4) * 2;
  return viewFrom([Math.cos(turn), Math.sin(turn), rise]);
}

const isDrawn = (lines: readonly ViewLine[], p: Vec2): boolean => lines.some((l) => distance([l.from, l.to], p) < ON);

const assembly = jobOf('reading-table').assembly;
const solids = visibleParts(assembly)
  .filter(({ kind }) => kind !== 'looseTenon')
  .map(
    ({ id }): PlacedSolid => ({
      part: id,
      solid: jobOf('reading-table').shapes.get(id)!.solid,
      frame: placeOf(assembly, id),
    }),
  );

const mesh = meshOf(solids);

/** An edge, the longer the likelier: the table has a hundred small pockets. */
function pickByLength(edges: readonly SceneEdge[], random: () => number): SceneEdge {
  const size = ({ flat: [a, b] }: SceneEdge): number => Math.hypot(b[0] - a[0], b[1] - a[1]);
  let left = random() * edges.reduce((sum, edge) => sum + size(edge), 0);
  for (const edge of edges) {
    left -= size(edge);
    if (left <= 0) return edge;
  }
  return edges.at(-1)!;
}

interface Seen {
  readonly visible: number;
  readonly wrong: readonly string[];
}

function look(view: View, random: () => number, lines: readonly ViewLine[]): Seen {
  const edges = sceneEdges(solids, view).filter(({ drawn }) => drawn);
  const [seen, hidden] = [lines.filter((l) => l.kind === 'visible'), lines.filter((l) => l.kind === 'hidden')];
  const wrong: string[] = [];
  let visible = 0;
  for (let k = 0; k < POINTS; k++) {
    const edge = pickByLength(edges, random);
    const t = 0.02 + 0.96 * random();
    const p = add(scale(edge.ends[0], 1 - t), scale(edge.ends[1], t));
    const [x, y] = toView(view, p);
    const ray = new Ray(vector(add(p, scale(view.toward, OFF))), vector(view.toward));
    const isSeen = mesh.raycastFirst(ray, DoubleSide) === null;
    if (isSeen) visible++;
    // A hidden edge may lie under a visible line.
    const right = isDrawn(seen, [x, y]) || (!isSeen && isDrawn(hidden, [x, y]));
    if (!right) wrong.push(`${edge.part}: no ${isSeen ? 'visible' : 'hidden'} line at ${x}, ${y}`);
  }
  return { visible, wrong };
}

describe('the reading table against rays through three-mesh-bvh', () => {
  const random = randomFrom(1918);
  for (let k = 0; k < 10; k++) {
    const view = viewOf(random);
    test(`view ${k + 1}, from ${view.toward.map((x) => x.toFixed(2)).join(' ')}`, () => {
      const { wrong, visible } = look(view, random, hiddenLines(solids, view));
      expect(wrong).toEqual([]);
      expect(visible).toBeGreaterThan(POINTS / 10);
    });
  }

  test('lines that are left out are missed, and a visible one that is hidden', () => {
    const view = viewFrom([0.5, -0.8, 0.4]);
    const lines = hiddenLines(solids, view);
    const lengths = lines.map(({ from, to }) => Math.hypot(to[0] - from[0], to[1] - from[1]));
    const most = Math.max(...lengths.filter((_, i) => lines[i]!.kind === 'visible'));
    const without = lines.filter((_, i) => lengths[i]! < most / 2);
    const faded = lines.map((line, i): ViewLine => (lengths[i]! < most / 2 ? line : { ...line, kind: 'hidden' }));
    for (const fault of [without, faded]) expect(look(view, randomFrom(3), fault).wrong.length).toBeGreaterThan(0);
  });
});
