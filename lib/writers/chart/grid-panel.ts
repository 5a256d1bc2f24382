import type { GridCell, GridPanel } from '../../derive/what-if/chart.ts';
import { VERDICT_MARKS } from '../../derive/what-if/verdict-marks.ts';
import { axisBelow, type Plot, xOf, yOf } from './chart-axis.ts';
import { CHART, INK, QUIET, REFUSED_FILL, VERDICT_LOOK } from './chart-look.ts';
import { linesOf, px, textAt, textWidth } from './chart-text.ts';

/** One cell for each pair of values: its color and letter say the verdict, its text the number or the check. */
export function gridPanelSvg(panel: GridPanel, plot: Plot): string[] {
  const [columns, rows] = [panel.across.ticks.length, panel.up.ticks.length];
  const [width, height] = [plot.width / columns, plot.height / rows];
  const { now: nowAcross } = panel.across;
  const { now: nowUp } = panel.up;
  const widest = Math.max(...panel.up.ticks.map(({ text }) => textWidth(text)));
  return [
    ...panel.cells.flatMap((cell) => {
      const place = { left: plot.left + cell.column * width, top: plot.top + (rows - 1 - cell.row) * height };
      return cellSvg(cell, { ...place, width, height });
    }),
    ...(nowAcross !== undefined && nowUp !== undefined
      ? [frame({ left: xOf(plot, nowAcross) - width / 2, top: yOf(plot, nowUp) - height / 2, width, height }, 2.5)]
      : []),
    ...panel.up.ticks.map(({ at, text }) =>
      textAt(text, plot.left - 6, yOf(plot, at) + CHART.text * 0.35, { anchor: 'end' }),
    ),
    textAt(panel.up.label, plot.left - widest - 14, plot.top + plot.height / 2, {
      anchor: 'middle',
      fill: QUIET,
      upright: true,
    }),
    ...axisBelow(panel.across, plot),
  ];
}

const frame = ({ left, top, width, height }: Plot, stroke: number): string =>
  `<rect x="${px(left)}" y="${px(top)}" width="${px(width)}" height="${px(height)}" fill="none" stroke="${INK}" stroke-width="${stroke}"/>`;

function cellSvg({ verdict, refused, text }: GridCell, box: Plot): string[] {
  const fill = refused ? REFUSED_FILL : verdict ? VERDICT_LOOK[verdict].band : '#fff';
  const letter = verdict ? VERDICT_MARKS[verdict] : '';
  return [
    `<rect x="${px(box.left)}" y="${px(box.top)}" width="${px(box.width)}" height="${px(box.height)}" fill="${fill}" stroke="#fff" stroke-width="1.5"/>`,
    ...centered(fitting(letter, text, box), box),
  ];
}

/** Letter and text in as many lines as fit; the letter alone when they do not. */
function fitting(letter: string, text: string, { width, height }: Plot): readonly string[] {
  const lines = linesOf(`${letter} ${text}`.trim(), width - 6);
  const fits = lines.every((one) => textWidth(one) <= width - 6) && lines.length * CHART.leading <= height - 2;
  return fits ? lines.filter(Boolean) : [letter].filter(Boolean);
}

function centered(lines: readonly string[], { left, top, width, height }: Plot): string[] {
  const first = top + height / 2 - ((lines.length - 1) * CHART.leading) / 2 + CHART.text * 0.36;
  return lines.map((text, k) => textAt(text, left + width / 2, first + k * CHART.leading, { anchor: 'middle' }));
}
