import type { ChartAxis, Tick } from '../../derive/what-if/chart.ts';
import { CHART, FAINT, INK, QUIET } from './chart-look.ts';
import { px, textAt, textWidth } from './chart-text.ts';

/** The part of a panel where data is drawn, px. */
export interface Plot {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export const xOf = ({ left, width }: Plot, at: number): number => left + at * width;
export const yOf = ({ top, height }: Plot, up: number): number => top + (1 - up) * height;

/** Room between two labels, px. */
const APART = 6;

/** Room that the labels below a plot take, px: one line, or as much as the longest label when they stand upright. */
export function labelDepth({ ticks }: ChartAxis, width: number): number {
  return standsUpright(ticks, width) ? Math.max(...ticks.map(({ text }) => textWidth(text))) + 8 : CHART.leading + 3;
}

/** Choices cannot be left out as numbers can: where they do not fit side by side, they stand upright. */
function standsUpright(ticks: readonly Tick[], width: number): boolean {
  return !ticks.every(({ text }) => /^-?[\d/. ]+$/.test(text)) && thinned(ticks, width).length < ticks.length;
}

/** Labels below a plot, with the name of the axis under them. */
export function axisBelow(axis: ChartAxis, plot: Plot): string[] {
  const bottom = plot.top + plot.height;
  const upright = standsUpright(axis.ticks, plot.width);
  const shown = upright ? axis.ticks : thinned(axis.ticks, plot.width);
  return [
    ...axis.ticks.map(({ at }) => line(xOf(plot, at), bottom, xOf(plot, at), bottom + 3, INK)),
    ...shown.map(({ at, text }) =>
      upright
        ? textAt(text, xOf(plot, at) + CHART.text * 0.35, bottom + 6, { anchor: 'end', upright })
        : textAt(text, xOf(plot, at), bottom + CHART.leading, { anchor: 'middle' }),
    ),
    textAt(axis.label, plot.left + plot.width / 2, bottom + labelDepth(axis, plot.width) + CHART.text, {
      anchor: 'middle',
      fill: QUIET,
    }),
  ];
}

/** Labels at the left of a plot with a line across for each. */
export function axisBeside(ticks: readonly Tick[], plot: Plot): string[] {
  return ticks.flatMap(({ at, text }) => {
    const y = yOf(plot, at);
    return [
      line(plot.left, y, plot.left + plot.width, y, FAINT),
      textAt(text, plot.left - 6, y + CHART.text * 0.35, { anchor: 'end' }),
    ];
  });
}

export const line = (x1: number, y1: number, x2: number, y2: number, color: string, more = ''): string =>
  `<path d="M${px(x1)} ${px(y1)}L${px(x2)} ${px(y2)}" stroke="${color}"${more}/>`;

/** As many labels as fit beside each other: every one, every second, … */
function thinned(ticks: readonly Tick[], width: number): readonly Tick[] {
  for (let every = 1; every < ticks.length; every++) {
    const kept = ticks.filter((_, k) => k % every === 0);
    if (kept.every((tick, k) => k === 0 || apart(kept[k - 1]!, tick, width))) return kept;
  }
  return ticks.slice(0, 1);
}

function apart(a: Tick, b: Tick, width: number): boolean {
  return Math.abs(b.at - a.at) * width >= (textWidth(a.text) + textWidth(b.text)) / 2 + APART;
}
