import { facetOutline, type OutlinePoint } from '../../geometry/outline.ts';
import type { Body, BodyKind, PrismBody } from '../../model/body.ts';
import { type Convex, convexOf } from './convex.ts';
import { earcut } from './earcut.ts';
import { sweep } from './prism.ts';
import { bodySolid } from './solid-of.ts';

/** Chords of arcs when bodies are only compared, degrees: inside the true arc by 0.02 of the radius. */
const COARSE = 22.5;

/**
 * A body as convex pieces that fill it, in its own frame, before any pocket is cut. Profiles of a top are left off, so
 * that it is never smaller than it will be.
 */
export const convexPieces = (body: Body): Convex[] => PIECES[body.kind](body as never);

const PIECES: { readonly [K in BodyKind]: (body: Extract<Body, { kind: K }>) => Convex[] } = {
  prism: prismPieces,
  bar: (body) => [convexOf(bodySolid(body, []))],
  panel: (body) => [convexOf(bodySolid(body, []))],
  slice: (body) => [convexOf(bodySolid({ ...body, profiles: NONE }, []))],
};

const NONE = [] as const;

function prismPieces(body: PrismBody): Convex[] {
  const near = facetOutline(body.outline, COARSE);
  const far = body.far ? facetOutline(body.far, COARSE) : near;
  if (isConvex(near) && isConvex(far)) return [piece(near, far, body.thickness)];
  const corners = earcut(near.flatMap((p) => [p.x, p.y]));
  const pieces: Convex[] = [];
  for (let t = 0; t < corners.length; t += 3) {
    const pick = (outline: readonly OutlinePoint[]): OutlinePoint[] => {
      const [a, b, c] = [outline[corners[t]!]!, outline[corners[t + 1]!]!, outline[corners[t + 2]!]!];
      return turn(a, b, c) > 0 ? [a, b, c] : [a, c, b];
    };
    pieces.push(piece(pick(near), pick(far), body.thickness));
  }
  return pieces;
}

const piece = (near: readonly OutlinePoint[], far: readonly OutlinePoint[], thickness: number): Convex =>
  convexOf(sweep(near, far, thickness, (x, y, z) => [x, y, z], { near: 'near', far: 'far' }));

const turn = (a: OutlinePoint, b: OutlinePoint, c: OutlinePoint): number =>
  (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);

const isConvex = (outline: readonly OutlinePoint[]): boolean =>
  outline.every((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    const c = outline[(i + 2) % outline.length]!;
    return turn(a, b, c) >= -1e-9;
  });
