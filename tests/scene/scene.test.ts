import { describe, expect, it } from 'vitest';
import { sceneOfJob } from '../../lib/build/scene-of-job.ts';
import { cornerNormals } from '../../lib/derive/scene/corner-normals.ts';
import { packScene, unpackScene } from '../../lib/derive/scene/pack-scene.ts';
import { DESIGN_NAMES, jobOf } from '../written.ts';

describe.each(DESIGN_NAMES)('the scene of %s', (name) => {
  const job = jobOf(name);
  const scene = sceneOfJob(job);

  it('has every piece of wood once, a glued part as its strips or whole', () => {
    const shown = new Set(scene.parts.map((part) => part.id));
    for (const part of job.assembly.parts) {
      const glued = part.members?.every((id) => shown.has(id)) ?? false;
      const inside = job.assembly.parts.some((p) => p.members?.includes(part.id) && shown.has(p.id));
      expect([shown.has(part.id), glued, inside].filter(Boolean), part.id).toHaveLength(1);
    }
  });

  it('opens every joint with tenons by more than the tenon, and leaves the tenon between', () => {
    const moved = new Map(scene.parts.map((part) => [part.id, part.apart]));
    for (const { sides, tenons } of job.assembly.joints) {
      const [a, b] = sides.map((side) => moved.get(side.part));
      if (!a || !b || tenons.length === 0) continue;
      for (const tenon of tenons) {
        moved.get(tenon)!.forEach((mm, k) => {
          expect(mm).toBeCloseTo((a[k]! + b[k]!) / 2, 6);
        });
      }
      expect(Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])).toBeGreaterThan(25);
    }
    expect(Math.min(...scene.parts.map(({ apart }) => apart[2]))).toBeGreaterThanOrEqual(-1e-6);
  });

  it('goes through text and back to within a 32nd of a mm', () => {
    const back = unpackScene(packScene(scene));
    expect(back.words).toEqual(scene.words);
    for (const [key, shape] of scene.shapes) {
      const read = back.shapes.get(key)!;
      expect(read.triangles).toEqual(shape.triangles);
      expect(read.surfaces).toEqual(shape.surfaces);
      expect(read.edges).toEqual(shape.edges);
      expect(Math.max(...read.vertices.map((v, k) => Math.abs(v - shape.vertices[k]!)))).toBeLessThan(1 / 31);
    }
  });

  it('holds nothing of the shop and no price', () => {
    const text = packScene({ ...scene, shapes: new Map() });
    expect(text).not.toMatch(/price|cost|wage|\$|€|hour|machine|clamp|planer|finding/i);
  });

  it('has normals of length one', () => {
    for (const shape of scene.shapes.values()) {
      const normals = cornerNormals(shape);
      for (let k = 0; k < normals.length; k += 3) {
        expect(Math.hypot(normals[k]!, normals[k + 1]!, normals[k + 2]!)).toBeCloseTo(1, 4);
      }
    }
  });
});

describe('lines of a scene', () => {
  it('tell glue lines from edges, and are far fewer than the facets of a round-over make', () => {
    const layered = sceneOfJob(jobOf('study-table'));
    const strip = layered.parts.find((part) => part.kind === 'strip')!;
    expect(layered.shapes.get(strip.shape)!.seams.length).toBeGreaterThan(0);
    const round = sceneOfJob(jobOf('reading-table'));
    const edge = round.shapes.get(round.parts.find((part) => part.id === 'top/strip-1')!.shape)!;
    expect(edge.edges.length / 2).toBeLessThan(edge.triangles.length / 6);
  });
});
