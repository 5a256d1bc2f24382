import type { Finding, Verdict } from '../../model/finding.ts';
import { degrees, type Mm } from '../../units/mm.ts';
import { type CheckContext, say, sayMove } from './check.ts';
import { type GlueUp, glueUps, panelName } from './glued-boards.ts';
import { solvedFixes } from './solve-fix.ts';
import { JAW_GRIP } from './solvers/clamps.ts';
import { jointContact, type KernWindow, kernWindow } from './solvers/kern-rule.ts';

/** Differences below this are rounding, mm. */
const SAME: Mm = 1e-6;

const SOURCE = 'statics: a joint stays closed when the clamps pull through its middle third';

/** Where the clamps must pull so that joints of unequal depth all stay closed: before the taper, and after it. */
export function clampLines(context: CheckContext, panel: GlueUp): Finding[] {
  if (!panel.tapered) return [];
  return [asMilled(context, panel), taperedFirst(context, panel, panel.tapered), jaws(panel, panel.tapered.slope)];
}

/** Where a clamp pulls by habit: the middle of the outer edge. */
const midEdge = ({ boards }: GlueUp): Mm => Math.min(boards[0]!.thickness, boards.at(-1)!.thickness) / 2;

/** mm from a line to the stretch where all joints stay closed; 0 inside. */
const outside = ({ low, high }: KernWindow, y: Mm): Mm => Math.max(0, low - y, y - high);

const stretch = (context: CheckContext, { low, high }: KernWindow): string =>
  `${say(context, low, 'up').replace(/ (?:in|mm)$/, '')} to ${say(context, high, 'down')} below the show face`;

/** What a line through the middle of the edge does to the joint that suffers most. */
function gape(context: CheckContext, depths: readonly Mm[], y: Mm): string {
  const contacts = depths.map((depth) => jointContact(depth, y));
  const worst = contacts.reduce((a, b) => (b.open > a.open ? b : a));
  return `at the middle of the edge, ${say(context, y)}, the deepest joint would gape underneath over ${sayMove(context, worst.open)} of its depth and be pressed ${worst.peak.toFixed(1)} times harder at the show face`;
}

function asMilled(context: CheckContext, panel: GlueUp): Finding {
  const window = kernWindow(panel.depths);
  const y = midEdge(panel);
  const off = outside(window, y);
  const verdict: Verdict = !window.possible ? 'change it' : off > SAME ? 'look again' : 'ok';
  const name = panelName(panel);
  const [shallow, deep] = [Math.min(...panel.depths), Math.max(...panel.depths)];
  const because = {
    'change it': `${name}: no straight clamp line closes all its joints: the deepest, ${say(context, deep)}, is more than twice the shallowest, ${say(context, shallow)}`,
    'look again': `${name}: set the clamp screws ${stretch(context, window)}; ${gape(context, panel.depths, y)}`,
    ok: `${name}: clamps ${stretch(context, window)} close all its joints, the middle of the edge (${say(context, y)}) too`,
  };
  return {
    check: 'clamp line',
    verdict,
    part: panel.part.id,
    value: y,
    limit: y > window.high ? window.high : window.low,
    unit: 'mm',
    because: because[verdict],
    fixes: verdict === 'ok' ? [] : fixesFor(context, panel, window),
    source: SOURCE,
    assumptions: [
      'boards are milled to the thickness of their thick edge, glued flush at the show face, tapered afterwards',
    ],
  };
}

function fixesFor(context: CheckContext, panel: GlueUp, window: KernWindow): string[] {
  const { part } = panel;
  const thickest = Math.max(...panel.boards.map((b) => b.thickness));
  const level = `mill all its boards ${say(context, thickest, 'up')} thick and taper them after gluing`;
  const levers = ['top.edgeThickness', 'top.thickness'];
  const moved = (c: CheckContext): GlueUp | undefined => glueUps(c.assembly).find((p) => p.part.id === part.id);
  const solved = window.possible
    ? solvedFixes(context, {
        measure(c) {
          const then = moved(c);
          return then && outside(kernWindow(then.depths), midEdge(then));
        },
        limit: SAME,
        want: 'at most',
        levers,
        say: () => 'the middle of the edge into that stretch',
      })
    : solvedFixes(context, {
        measure(c) {
          const depths = moved(c)?.depths;
          return depths && Math.max(...depths) / Math.min(...depths);
        },
        limit: 2 - SAME,
        want: 'at most',
        levers,
        say: (ratio) => `joints of which the deepest is ${ratio.toFixed(1)} times the shallowest`,
      });
  return [...solved, level];
}

/** For whoever tapers the boards one by one; never a reason to change the piece, as they need not. */
function taperedFirst(context: CheckContext, panel: GlueUp, { depths, edge }: NonNullable<GlueUp['tapered']>): Finding {
  const window = kernWindow(depths);
  const y = edge / 2;
  const reaches = window.possible && window.low <= edge;
  const line = reaches
    ? `set the clamp screws ${stretch(context, window)}`
    : 'no straight clamp line would close all its joints';
  const closes = outside(window, y) <= SAME;
  return {
    check: 'clamp line, tapered first',
    verdict: 'ok',
    part: panel.part.id,
    value: y,
    limit: y > window.high ? window.high : window.low,
    unit: 'mm',
    because: `${panelName(panel)}: were it tapered before gluing, ${line}${closes ? '' : `; ${gape(context, depths, y)}`}. Better: glue flat, taper afterwards`,
    fixes: [],
    source: SOURCE,
  };
}

function jaws(panel: GlueUp, slope: number): Finding {
  const { doubt, slides } = JAW_GRIP.value;
  const angle = degrees(Math.atan(slope)).toFixed(1);
  const good = slope <= doubt;
  const grip = good ? 'grip' : slope <= slides ? 'may slide' : 'slide';
  return {
    check: 'clamp jaws',
    verdict: good ? 'ok' : 'look again',
    part: panel.part.id,
    value: slope,
    limit: doubt,
    unit: 'tangent',
    because: `${panelName(panel)}: once it is tapered, clamps along its underside meet the edges ${angle}° out of square; their jaws ${grip}`,
    fixes: good ? [] : [`cut the cauls to ${angle}°`],
    source: JAW_GRIP.source,
  };
}
