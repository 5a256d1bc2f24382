import type { Text } from '../../drawing/entity.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { type Style, sizes } from '../../drawing/style.ts';
import { formatLength, type UnitSystem } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import { RIP_WORDS, ripSide } from '../lumber/rip-side.ts';
import type { BoardPlace, StripPlace, StripPlan } from '../lumber/strip-plan/strip-plan.ts';

/** Beside each strip, right of the top, what comes off its boards and off which edge. Origin as that of the view. */
export function stripPlanRips({ strips }: StripPlan, length: Mm, style: Style, units: UnitSystem): Text[] {
  const { text } = sizes(style);
  return strips.map((strip) => ({
    kind: 'text',
    layer: LAYERS.TEXT,
    text: ripsText(strip, units),
    at: [length + text, -(strip.from + strip.to) / 2],
    height: style.textHeight,
    valign: 'middle',
  }));
}

/** `board 5: rip 1 7/16 in off the far edge; board 7: rip 1/2 in off the reference edge` */
function ripsText(strip: StripPlace, units: UnitSystem): string {
  const { show, bottom } = strip;
  const told = (place: BoardPlace): string => {
    const off = formatLength(place.ripOff, units, 'nearest');
    const words =
      off === formatLength(0, units) ? 'nothing to rip off' : `rip ${off} ${RIP_WORDS[ripSide(place, strip)]}`;
    return `board ${place.mark}: ${words}`;
  };
  return [show, ...(bottom ? [bottom] : [])].map(told).join('; ');
}
