import { describe, expect, test } from 'vitest';
import type { Job } from '../../lib/build/job.ts';
import { templateFiles } from '../../lib/build/output-templates.ts';
import { shapesOf } from '../../lib/derive/solids/shapes.ts';
import { volumeOf } from '../../lib/derive/solids/solid.ts';
import type { TrestleValues } from '../../lib/tables/trestle/values.ts';
import { ofMesh, release } from '../solids/kernel.ts';
import { asWritten, verify } from '../solids/verifier.ts';
import { faultsOf } from '../tables/faults-of.ts';
import { randomFrom } from '../tables/random.ts';
import type { Changes, DesignName } from '../written.ts';
import { measuredJob, moved } from './measured-jobs.ts';

const CASES: readonly (readonly [DesignName, Changes])[] = [
  ['reading-table', { 'edgeJoint.spacing': '30 in' }],
  ['meeting-table', { 'edgeJoint.spacing': '30 in' }],
  ['study-table', { 'edgeJoint.spacing': '30 in' }],
  ['study-table', { 'edgeJoint.spacing': '30 in', 'panelLeg.staves': '4' }],
  ['reading-table', { 'edgeJoint.spacing': '30 in', 'top.strips': '5', 'stretcher.count': '0' }],
];

/** The same with nothing found: the checks are not what is looked at. */
const unchecked = (job: Job): Job => Object.create(job, { findings: { value: [] }, forced: { value: [] } }) as Job;

/** Planes as a shop may make them: mm at the ridge, and over the length and half the width of about 2.1 m and 0.5 m. */
function randomMade(seed: number) {
  const random = randomFrom(seed);
  const off = (most: number): number => (2 * random() - 1) * most;
  const half = () => ({ c: off(0.8), a: off(0.8) / 2100, b: off(0.8) / 500 });
  return moved({ left: half(), right: half() });
}

// Source: manifold-3d takes only closed, oriented meshes; its booleans are a second opinion on the volumes.
describe('pieces on an underside whose two planes meet beside the center line', () => {
  test.each(CASES.flatMap(([name, changes], k) => [1, 2].map((n) => [name, changes, 10 * k + n] as const)))(
    '%s %o, seed %i: closed, the right volume, in touch with each other',
    (name, changes, seed) => {
      const job = measuredJob(name, randomMade(seed), changes);
      const values = job.values as unknown as TrestleValues;
      expect(faultsOf({ name, design: name as never, values }, job.assembly)).toEqual([]);
      const shapes = shapesOf(job.assembly);
      for (const part of job.assembly.parts) {
        if (part.kind === 'looseTenon' || part.kind === 'pad') continue;
        const shape = shapes.get(part.id)!;
        if (part.body.kind === 'prism' && part.body.far) {
          const mesh = asWritten(part, shape);
          const body = ofMesh(mesh.vertices, mesh.triangles);
          expect(body.status(), part.id).toBe('NoError');
          expect(body.volume() / volumeOf(shape.solid), part.id).toBeCloseTo(1, 3);
        } else {
          expect(verify(part, shape).faults, part.id).toEqual([]);
        }
      }
      release();
      expect(templateFiles(unchecked(job)).size).toBeGreaterThan(1);
    },
  );
});
