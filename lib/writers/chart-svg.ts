import type { Chart, Panel } from '../derive/what-if/chart.ts';
import { labelDepth, type Plot } from './chart/chart-axis.ts';
import { legendSvg } from './chart/chart-legend.ts';
import { CHART, QUIET, REFUSED_PATTERN } from './chart/chart-look.ts';
import { linesOf, px, textAt, textWidth } from './chart/chart-text.ts';
import { gridPanelSvg } from './chart/grid-panel.ts';
import { linePanelSvg } from './chart/line-panel.ts';
import { escapeXml } from './svg/xml.ts';

/** px. */
const WIDTH = 980;

/** Panels side by side, and the height of what is drawn in one. */
const ACROSS = { lines: 3, grid: 2 } as const;
const LINE_HEIGHT = 150;
const CELL_HEIGHT = { few: 46, many: 28 } as const;
const FEW = 6;

/** Lines of a panel's heading: the check, then unit and limit. */
const HEADING = 2 * CHART.leading + 6;

/** A chart as SVG, in px: heading, legend, panels in rows. */
export function chartSvg(chart: Chart): string {
  const { margin, gap, title, heading, leading } = CHART;
  const inner = WIDTH - 2 * margin;
  const subtitle = linesOf(chart.subtitle, inner, heading);
  const firstLine = margin + title + 6 + heading;
  const legend = legendSvg(chart, margin, firstLine + (subtitle.length - 1) * leading + 14, inner);
  const start = firstLine + (subtitle.length - 1) * leading + 14 + legend.height + gap;
  const across = ACROSS[chart.panels[0]?.kind ?? 'lines'];
  const width = (inner - (across - 1) * gap) / across;
  // The same for all, so that panels below each other stand in line.
  const beside = Math.max(...chart.panels.map(labelWidth));
  const body: string[] = [];
  let bottom = start;
  for (let k = 0; k < chart.panels.length; k += across) {
    const row = chart.panels.slice(k, k + across);
    body.push(
      ...row.flatMap((panel, i) => panelSvg(panel, { left: margin + i * (width + gap), top: bottom, width, beside })),
    );
    bottom += Math.max(...row.map((panel) => heightOf(panel, width - beside))) + gap;
  }
  const rest = chart.rest ? linesOf(chart.rest, inner) : [];
  const height = px(bottom - gap + margin + (rest.length > 0 ? gap / 2 + rest.length * leading : 0));
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${height}" viewBox="0 0 ${WIDTH} ${height}" font-family="sans-serif" role="img">`,
    `<title>${escapeXml(`${chart.title}. ${chart.subtitle}`)}</title>`,
    `<defs>${REFUSED_PATTERN}</defs>`,
    `<rect width="${WIDTH}" height="${height}" fill="#fff"/>`,
    textAt(chart.title, margin, margin + title, { size: title, bold: true }),
    ...subtitle.map((text, k) => textAt(text, margin, firstLine + k * leading, { size: heading, fill: QUIET })),
    ...legend.svg,
    ...body,
    ...rest.map((text, k) => textAt(text, margin, bottom + k * leading, { fill: QUIET })),
    '</svg>',
    '',
  ].join('\n');
}

/** The labels at the left of a plot need this. */
function labelWidth(panel: Panel): number {
  const ticks = panel.kind === 'grid' ? panel.up.ticks : panel.ticks;
  const widest = Math.max(12, ...ticks.map(({ text }) => textWidth(text)));
  return widest + 8 + (panel.kind === 'grid' ? CHART.leading + 6 : 0);
}

function plotHeight(panel: Panel): number {
  if (panel.kind === 'lines') return LINE_HEIGHT;
  const rows = panel.up.ticks.length;
  const cells = rows * (rows > FEW ? CELL_HEIGHT.many : CELL_HEIGHT.few);
  return Math.max(cells, textWidth(panel.up.label) + 8);
}

/** As high as its heading, its plot of some width, and what stands below. */
function heightOf(panel: Panel, width: number): number {
  const below = labelDepth(panel.across, width) + CHART.text + 6;
  return HEADING + plotHeight(panel) + below;
}

interface Place {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  /** Room for labels at the left of the plot. */
  readonly beside: number;
}

function panelSvg(panel: Panel, { left, top, width, beside }: Place): string[] {
  const plot: Plot = { left: left + beside, top: top + HEADING, width: width - beside, height: plotHeight(panel) };
  return [
    '<g>',
    textAt(panel.title, plot.left, top + CHART.heading, { size: CHART.heading, bold: true }),
    textAt(panel.note, plot.left, top + CHART.heading + CHART.leading, { fill: QUIET }),
    ...(panel.kind === 'grid' ? gridPanelSvg(panel, plot) : linePanelSvg(panel, plot)),
    '</g>',
  ];
}
