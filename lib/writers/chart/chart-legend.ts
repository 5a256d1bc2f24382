import type { Chart } from '../../derive/what-if/chart.ts';
import { VERDICT_MARKS } from '../../derive/what-if/verdict-marks.ts';
import { VERDICTS, type Verdict } from '../../model/finding.ts';
import { CHART, INK, QUIET, REFUSED_FILL, VERDICT_LOOK } from './chart-look.ts';
import { px, textAt, textWidth } from './chart-text.ts';

interface Entry {
  readonly text: string;
  /** Drawn in a box of 22 by 12 px from its upper left corner. */
  readonly sample: string;
}

const BOX = 22;

/** One line of samples, in as many lines as its width needs; answers how high it is, too. */
export function legendSvg(chart: Chart, left: number, top: number, width: number) {
  const svg: string[] = [];
  let [x, y] = [left, top];
  for (const { text, sample } of entriesOf(chart)) {
    const wide = BOX + 6 + textWidth(text) + 20;
    if (x > left && x + wide - 20 > left + width) [x, y] = [left, y + CHART.leading + 5];
    svg.push(`<g transform="translate(${px(x)} ${px(y)})">${sample}</g>`, textAt(text, x + BOX + 6, y + 10));
    x += wide;
  }
  return { svg, height: y - top + CHART.leading };
}

function entriesOf({ panels }: Chart): Entry[] {
  const grid = panels.some(({ kind }) => kind === 'grid');
  const all = panels.flatMap((panel) => [...(panel.kind === 'grid' ? panel.cells : panel.marks)]);
  const verdicts = VERDICTS.filter((verdict) => all.some((one) => one.verdict === verdict));
  const hasNow = panels.some(
    (panel) => panel.across.now !== undefined && (panel.kind === 'lines' || panel.up.now !== undefined),
  );
  const hasLimit = panels.some(
    (panel) => panel.kind === 'lines' && panel.marks.some(({ limit }) => limit !== undefined),
  );
  return [
    ...verdicts.map((verdict) => verdictEntry(verdict, grid)),
    ...(all.some(({ refused }) => refused) ? [{ text: 'not allowed', sample: box(REFUSED_FILL) }] : []),
    ...(hasLimit
      ? [{ text: 'limit', sample: `<path d="M0 6h22" stroke="${INK}" stroke-width="1.4" stroke-dasharray="7 4"/>` }]
      : []),
    ...(hasNow ? [{ text: 'the design as it is', sample: grid ? framed : dotted }] : []),
  ];
}

const dotted = `<path d="M11 0v12" stroke="${QUIET}" stroke-dasharray="1 3"/>`;
const framed = `<rect x="1" y="0" width="20" height="12" fill="none" stroke="${INK}" stroke-width="2.5"/>`;

const box = (fill: string): string => `<rect width="22" height="12" fill="${fill}"/>`;

function verdictEntry(verdict: Verdict, grid: boolean): Entry {
  const { band, mark, shape } = VERDICT_LOOK[verdict];
  if (grid) return { text: [VERDICT_MARKS[verdict], verdict].filter(Boolean).join(' '), sample: box(band) };
  return { text: verdict, sample: `${box(band)}<path transform="translate(11 6)" d="${shape}" fill="${mark}"/>` };
}
