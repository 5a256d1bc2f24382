import type { Outline, OutlinePoint } from '../../../../geometry/outline.ts';
import type { Vec2 } from '../../../../geometry/vec.ts';
import type { Part } from '../../../../model/part.ts';
import type { Bounds } from '../../../solids/solid.ts';
import { scribedCorners } from '../../../templates/scribed-stretches.ts';

/**
 * The corners that a part is cut to, in x and y of its own frame: sharp ones, where slopes would meet without a relief, and
 * those of the box around it. Ends of rounds and reliefs are not among them.
 */
export function outlineCorners({ body }: Pick<Part, 'body'>, { min, max }: Bounds): Vec2[] {
  const box: Vec2[] = [
    [min[0], min[1]],
    [max[0], min[1]],
    [max[0], max[1]],
    [min[0], max[1]],
  ];
  return body.kind === 'prism' ? [...sharpCorners(body.outline), ...scribedCorners(body.outline), ...box] : box;
}

function sharpCorners(outline: Outline): Vec2[] {
  return outline.flatMap((p, k): Vec2[] => {
    const before = outline[(k + outline.length - 1) % outline.length]!;
    return isSoft(before) || isSoft(p) ? [] : [[p.x, p.y]];
  });
}

const isSoft = ({ surface = '' }: OutlinePoint): boolean => surface.startsWith('round') || surface.startsWith('relief');
