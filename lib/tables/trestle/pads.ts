import { plainJoint } from '../../joints/loose-tenon-joint.ts';
import type { PlacedPart } from '../../model/assembly.ts';
import { pad } from '../../parts/board.ts';
import type { Mm } from '../../units/mm.ts';
import { type FrameContext, flatOnFloor, inTable } from './base-context.ts';

/** Pads under a piece of a frame, at the given places across it; no wider than the piece is thick. */
export function padUnder(
  context: FrameContext,
  over: PlacedPart,
  thickness: Mm,
  across: readonly Mm[],
  group = 'foot',
  first = 0,
): void {
  const { values: v, c, name, index } = context;
  across.forEach((at, k) => {
    const length = Math.min(v.pad.length, over.part.kind === 'post' ? v.post.width : v.pad.length);
    const number = first + k + 1;
    const placed = c.place(
      pad({
        id: `frame-${name}/pad-${number}`,
        mark: `D${2 * index + number}`,
        name: 'pad',
        wood: v.frame.wood,
        allowance: { thickness: 0, width: 0, length: 0 },
        length,
        width: thickness,
        thickness: v.pad.thickness,
        notes: ['from offcuts; replace when worn'],
      }),
      inTable(context, flatOnFloor(length, thickness, at)),
    );
    c.join(plainJoint(`frame-${name}/${group}-pad-${number}`, 'pad', [over, placed], length * thickness));
  });
}
