import { plainJoint } from '../../joints/loose-tenon-joint.ts';
import type { PlacedPart } from '../../model/assembly.ts';
import { bearer } from '../../parts/bearer.ts';
import { post } from '../../parts/post.ts';
import {
  type FrameContext,
  type FrameParts,
  gluedAllowance,
  inTable,
  leastUnderside,
  level,
  upright,
} from './base-context.ts';
import { fixCleat, fixTop } from './fix-top.ts';
import { padUnder } from './pads.ts';

/** A wide leg glued up from staves, its upper end cut to the V of the underside, with a cleat inside that takes the top. */
export function panelFrame(context: FrameContext): FrameParts {
  const { values: v, c, name, index } = context;
  const { width, thickness } = v.panelLeg;
  const up = v.pad.thickness;
  const standing = inTable(context, upright(width, thickness, { across: 0, up }));
  const staves = placeStaves(context);
  staves.slice(1).forEach((next, k) => {
    const area = thickness * Math.min(staves[k]!.part.finished.length, next.part.finished.length);
    c.join(plainJoint(`frame-${name}/joint-${k + 1}`, 'edge', [staves[k]!, next], area));
  });
  const leg = post({
    id: `frame-${name}/panel`,
    mark: `L${index + 1}`,
    name: 'panel leg',
    kind: 'panelLeg',
    wood: v.frame.wood,
    allowance: v.allowance,
    width,
    thickness,
    top: { underside: context.underside, frame: standing },
  });
  const placed = c.place({ ...leg, members: staves.map((s) => s.part.id) }, standing);
  const across = width / 2 - v.pad.fromEnds - v.pad.length / 2;
  padUnder(context, placed, thickness, [-across, across]);
  placeCleat(context, placed);
  return { posts: [placed] };
}

function placeStaves(context: FrameContext): PlacedPart[] {
  const { values: v, c, name, index } = context;
  const width = v.panelLeg.width / v.panelLeg.staves;
  return Array.from({ length: v.panelLeg.staves }, (_, k) => {
    const across = v.panelLeg.width / 2 - (k + 0.5) * width;
    const frame = inTable(context, upright(width, v.panelLeg.thickness, { across, up: v.pad.thickness }));
    const letter = String.fromCharCode(65 + k);
    const stave = post({
      id: `frame-${name}/stave-${k + 1}`,
      mark: `L${index + 1}${letter}`,
      name: 'stave',
      kind: 'stave',
      wood: v.frame.wood,
      allowance: gluedAllowance(v.allowance),
      width,
      thickness: v.panelLeg.thickness,
      top: { underside: context.underside, frame },
      notes: ['cut to the underside after gluing'],
    });
    return c.place(stave, frame);
  });
}

function placeCleat(context: FrameContext, leg: PlacedPart): void {
  const { values: v, c, name, index } = context;
  const { length, thickness, depth } = v.cleat;
  const half = length / 2;
  const inwards = (v.panelLeg.thickness + thickness) / 2;
  const base = leastUnderside(context, -half, half, thickness, inwards) - depth;
  const frame = inTable(context, level(length, thickness, { across: 0, up: base }, inwards));
  const cleat = c.place(
    bearer({
      id: `frame-${name}/cleat`,
      mark: `C${index + 1}`,
      name: 'cleat',
      kind: 'cleat',
      wood: v.frame.wood,
      allowance: v.allowance,
      length,
      thickness,
      fit: {
        underside: context.underside,
        frame,
        relief: { width: v.bearer.reliefWidth, depth: v.bearer.reliefDepth },
      },
    }),
    frame,
  );
  const at = { base: cleat, half, up: base, inwards };
  fixTop(context, at);
  fixCleat(context, at, leg, base + depth / 2);
}
