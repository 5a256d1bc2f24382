import type { Entity } from '../../../drawing/drawing.ts';
import { HATCH, type HatchLook, hatch } from '../../../drawing/hatch.ts';
import { LAYERS } from '../../../drawing/layers.ts';
import type { Style } from '../../../drawing/style.ts';
import type { CutFace } from '../section-view.ts';

/** Hatches of parts that lie beside each other. */
const LOOKS: readonly HatchLook[] = [HATCH, { ...HATCH, angle: 135 }];

/** The cut faces of a section: borders and hatching that changes its slant from part to part. */
export const cutFaceEntities = (cuts: readonly CutFace[], style: Style): Entity[] =>
  cuts.flatMap(({ loops }, k): Entity[] => [
    ...hatch(loops, style, LOOKS[k % LOOKS.length]),
    ...loops.map((points): Entity => ({ kind: 'poly', layer: LAYERS.SECTION, points, closed: true })),
  ]);
