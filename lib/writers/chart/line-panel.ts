import type { LineMark, LinePanel } from '../../derive/what-if/chart.ts';
import { axisBelow, axisBeside, line, type Plot, xOf, yOf } from './chart-axis.ts';
import { INK, PLAIN_MARK, QUIET, REFUSED_FILL, VERDICT_LOOK } from './chart-look.ts';
import { px } from './chart-text.ts';

/** Bands of the verdicts, the limit as a dashed line, the numbers as marks whose shape says the verdict, too. */
export function linePanelSvg(panel: LinePanel, plot: Plot): string[] {
  return [
    ...bands(panel, plot),
    ...axisBeside(panel.ticks, plot),
    ...nowLine(panel, plot),
    ...limits(panel, plot),
    ...(panel.joined ? joints(panel.marks, plot) : []),
    ...panel.marks.filter(({ up, verdict }) => up !== undefined || verdict).map((mark) => markSvg(mark, plot)),
    `<rect x="${px(plot.left)}" y="${px(plot.top)}" width="${px(plot.width)}" height="${px(plot.height)}" fill="none" stroke="${INK}"/>`,
    ...axisBelow(panel.across, plot),
  ];
}

function bands({ marks, borders }: LinePanel, plot: Plot): string[] {
  return marks.flatMap(({ verdict, refused }, k) => {
    const fill = refused ? REFUSED_FILL : verdict && VERDICT_LOOK[verdict].band;
    if (!fill) return [];
    const [from, to] = [xOf(plot, borders[k]!), xOf(plot, borders[k + 1]!)].sort((a, b) => a - b) as [number, number];
    return [
      `<rect x="${px(from)}" y="${px(plot.top)}" width="${px(to - from)}" height="${px(plot.height)}" fill="${fill}"/>`,
    ];
  });
}

function nowLine({ across: { now } }: LinePanel, plot: Plot): string[] {
  if (now === undefined) return [];
  const x = xOf(plot, now);
  return [line(x, plot.top, x, plot.top + plot.height, QUIET, ' stroke-dasharray="1 3"')];
}

/** A stretch for each value, drawn on as long as the limit stays. */
function limits({ marks, borders }: LinePanel, plot: Plot): string[] {
  const stretches: { from: number; to: number; limit: number }[] = [];
  for (const [k, { limit }] of marks.entries()) {
    if (limit === undefined) continue;
    const last = stretches.at(-1);
    const [from, to] = [borders[k]!, borders[k + 1]!];
    if (last && last.to === from && Math.abs(last.limit - limit) < 1e-6) last.to = to;
    else stretches.push({ from, to, limit });
  }
  return stretches.map(({ from, to, limit }) =>
    line(
      xOf(plot, from),
      yOf(plot, limit),
      xOf(plot, to),
      yOf(plot, limit),
      INK,
      ' stroke-width="1.4" stroke-dasharray="7 4"',
    ),
  );
}

/** Lines between marks that stand beside each other. */
function joints(marks: readonly LineMark[], plot: Plot): string[] {
  const path = marks
    .map(({ at, up }, k) => {
      if (up === undefined) return '';
      const joined = k > 0 && marks[k - 1]!.up !== undefined;
      return `${joined ? 'L' : 'M'}${px(xOf(plot, at))} ${px(yOf(plot, up))}`;
    })
    .join('');
  return path.includes('L') ? [`<path d="${path}" fill="none" stroke="${INK}" stroke-width="1.4"/>`] : [];
}

/** At the foot when there is no number. */
function markSvg({ at, up = 0.07, verdict }: LineMark, plot: Plot): string {
  const { mark, shape } = verdict ? VERDICT_LOOK[verdict] : PLAIN_MARK;
  const place = `translate(${px(xOf(plot, at))} ${px(yOf(plot, up))})`;
  return `<path transform="${place}" d="${shape}" fill="${mark}" stroke="#fff" stroke-width="0.8"/>`;
}
