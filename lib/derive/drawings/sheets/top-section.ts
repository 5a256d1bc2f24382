import type { Frame } from '../../../geometry/frame.ts';
import { heightAt } from '../../../geometry/surface.ts';
import { type Assembly, placeOf } from '../../../model/assembly.ts';
import type { PanelBody } from '../../../model/body.ts';
import type { Part } from '../../../model/part.ts';
import type { Mm } from '../../../units/mm.ts';

/** A top of one panel where it is cut across its middle. */
export interface TopSection {
  readonly part: Part;
  readonly body: PanelBody;
  readonly frame: Frame;
  /** Thickness on the center line and at the right edge, seen from the reference end. */
  readonly middle: Mm;
  readonly edge: Mm;
  /** Half the width. */
  readonly half: Mm;
}

/** Undefined for a piece without a top of one panel. */
export function topSection(assembly: Assembly): TopSection | undefined {
  const part = assembly.parts.find(({ body }) => body.kind === 'panel');
  if (part?.body.kind !== 'panel') return undefined;
  const { body } = part;
  const half = body.width / 2;
  const thickness = (y: Mm): Mm => heightAt(body.underside, body.length / 2, y);
  return { part, body, frame: placeOf(assembly, part.id), middle: thickness(0), edge: thickness(half), half };
}
