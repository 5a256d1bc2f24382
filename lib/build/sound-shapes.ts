import { cutsInStock } from '../derive/checks/cuts-in-stock.ts';
import { faceTriangles } from '../derive/solids/face-triangles.ts';
import type { Shape } from '../derive/solids/shapes.ts';
import { blankOf } from '../derive/solids/solid-of.ts';
import type { PartId } from '../model/part.ts';
import type { Job } from './job.ts';

export type SoundShape = Pick<Shape, 'solid' | 'triangles'>;

/** The shape of every part; uncut where a cut breaks through or cannot be made (a forced build). */
export function soundShapes({ assembly, shapes, findings }: Job): Map<PartId, SoundShape> {
  const broken = new Set(
    findings.filter((f) => f.check === cutsInStock.name && f.verdict === 'change it').map((f) => f.part),
  );
  return new Map(
    assembly.parts.map((part) => {
      if (!broken.has(part.id)) return [part.id, shapes.get(part.id)!];
      const solid = blankOf(part);
      return [part.id, { solid, triangles: faceTriangles(solid).corners }];
    }),
  );
}
