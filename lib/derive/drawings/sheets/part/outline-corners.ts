import type { Outline, OutlinePoint } from '../../../../geometry/outline.ts';
import type { Vec2 } from '../../../../geometry/vec.ts';
import type { Part } from '../../../../model/part.ts';
import type { Mm } from '../../../../units/mm.ts';
import type { Bounds } from '../../../solids/solid.ts';
import { scribedCorners } from '../../../templates/scribed-stretches.ts';

/** What is nearer to the box than this is on it, mm: a pencil line is no finer, and the far face may reach a hair further. */
const NEAR: Mm = 0.05;

/**
 * The corners that a part is cut to, in x and y of its own frame: sharp ones, where slopes would meet without a relief, and
 * those of the box around it that no other reaches. Ends of rounds and reliefs are not among them.
 */
export function outlineCorners({ body }: Pick<Part, 'body'>, { min, max }: Bounds): Vec2[] {
  const box: Vec2[] = [
    [min[0], min[1]],
    [max[0], min[1]],
    [max[0], max[1]],
    [min[0], max[1]],
  ];
  if (body.kind !== 'prism') return box;
  const onBox = (at: Mm, axis: 0 | 1): Mm => [min[axis], max[axis]].find((side) => Math.abs(side - at) < NEAR) ?? at;
  const own = [...sharpCorners(body.outline), ...scribedCorners(body.outline)].map(
    ([x, y]): Vec2 => [onBox(x, 0), onBox(y, 1)],
  );
  const reached = (axis: 0 | 1, at: Mm): boolean => own.some((corner) => corner[axis] === at);
  return [...own, ...box.filter(([x, y]) => !reached(0, x) || !reached(1, y))];
}

function sharpCorners(outline: Outline): Vec2[] {
  return outline.flatMap((p, k): Vec2[] => {
    const before = outline[(k + outline.length - 1) % outline.length]!;
    return isSoft(before) || isSoft(p) ? [] : [[p.x, p.y]];
  });
}

const isSoft = ({ surface = '' }: OutlinePoint): boolean => surface.startsWith('round') || surface.startsWith('relief');
