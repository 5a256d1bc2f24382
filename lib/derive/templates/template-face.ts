import type { Outline } from '../../geometry/outline.ts';
import { isPocket } from '../../model/feature.ts';
import type { Part } from '../../model/part.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import { type FaceOutlines, type FaceView, faceView } from './face-view.ts';
import { outerOfBoth } from './outer-of-both.ts';
import { outsideOf } from './outline.ts';
import { type PocketKind, pocketKinds } from './pocket-kinds.ts';
import { type PocketMark, pocketMark } from './pocket-marks.ts';
import { scribedStretches } from './scribed-stretches.ts';
import type { TemplatePart } from './template-part.ts';

/**
 * Distance of the saw line outside the finished line, mm: 1/8 in, by which makers saw outside a line they will rout
 * to; common practice, no source.
 */
const SAW_MARGIN = 3.175;

/** Outlines whose points differ by less than this are one, mm. */
const SAME = 1e-6;

/** What is worked on one face of one part, or of several that are alike: all in the frame of the sheet, mm. */
export interface TemplateFace {
  /** Alike but for mark and id; the first gives the file its name. */
  readonly parts: readonly [Part, ...Part[]];
  readonly thickness: Mm;
  readonly outlines: FaceOutlines;
  /** Outside the finished line of either face. */
  readonly saw: Outline;
  readonly pockets: readonly PocketMark[];
  readonly kinds: readonly PocketKind[];
}

/** The face of a part as its template shows it; `designed` is the same part before the underside was measured. */
export function templateFace(
  { part, body, frame }: TemplatePart,
  units: UnitSystem,
  designed?: TemplatePart,
): TemplateFace {
  const view = faceView(frame, body.outline);
  const near = view.outline(body.outline);
  const far = body.far ? view.outline(body.far) : undefined;
  const pockets = part.features.filter(isPocket).map((f) => markOnSheet(pocketMark(f, body.outline), view));
  const before = designed && faceView(designed.frame, designed.body.outline).outline(designed.body.outline);
  const outlines: FaceOutlines = {
    near,
    ...(far && isApart(near, far) ? { far } : {}),
    ...(before && isOther(near, before) ? { designed: before } : {}),
  };
  return {
    parts: [part],
    thickness: body.thickness,
    outlines,
    saw: outsideOf(far ? outerOfBoth(near, far) : near, SAW_MARGIN),
    pockets,
    kinds: pocketKinds(pockets, units),
  };
}

/** The two faces of a cut that is square but for less than this are one line, mm: a pencil line is no finer. */
const SEEN = 0.05;

const isApart = (near: Outline, far: Outline): boolean =>
  near.some((p, i) => Math.hypot(p.x - far[i]!.x, p.y - far[i]!.y) >= SEEN);

/** Whether two faces have their scribed edges in different places. */
function isOther(face: Outline, before: Outline): boolean {
  const [now, then] = [scribedStretches(face), scribedStretches(before)];
  if (now.length !== then.length) return true;
  return now.some(({ a, b }, i) => {
    const { a: c, b: d } = then[i]!;
    return [a.x - c.x, a.y - c.y, b.x - d.x, b.y - d.y].some((by) => Math.abs(by) > SAME);
  });
}

function markOnSheet(mark: PocketMark, view: FaceView): PocketMark {
  const { axis } = mark;
  return {
    pocket: mark.pocket,
    outline: view.outline(mark.outline),
    center: view.toSheet(...mark.center),
    ...(axis ? { axis: [view.toSheet(...axis[0]), view.toSheet(...axis[1])] as const } : {}),
  };
}
