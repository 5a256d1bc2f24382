import { partOf } from '../../model/assembly.ts';
import type { Finding, Verdict } from '../../model/finding.ts';
import { formatNumber } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import { type CheckContext, say } from './check.ts';
import { type GluePlan, gluePlan, HANDS_FULL, OPEN_SHARE } from './glue-stages.ts';
import { type GlueUp, glueUps, panelName } from './glued-boards.ts';

/** Glue-ups against the planer and the open time of the glue. Clamps are a check of their own. */
export const shopGlue = (context: CheckContext): Finding[] =>
  glueUps(context.assembly).flatMap((panel) => {
    const trim = trimOf(context, panel);
    const plan = gluePlan(panel, context.shop, trim);
    return [planer(context, panel, plan, trim), time(context, panel, plan)];
  });

/** mm that a part is wider than finished until its edges are trimmed: as much as one board is. */
function trimOf({ assembly }: CheckContext, { part }: GlueUp): Mm {
  const { rough, finished } = partOf(assembly, part.members![0]!);
  return rough.width - finished.width;
}

function planer(context: CheckContext, panel: GlueUp, { planed }: GluePlan, trim: Mm): Finding {
  const limit = context.shop.machines.planerWidth;
  const value = panel.width + trim;
  const whole = value <= limit;
  const verdict: Verdict = whole || planed.boards > 1 ? 'ok' : planed.boards === 1 ? 'look again' : 'change it';
  const as = `${panelName(panel)} is ${say(context, value, 'up')} wide before trimming`;
  const work = panel.tapered ? 'plane and taper' : 'plane';
  const planerTakes = `the planer takes ${say(context, limit)}`;
  const part = say(context, planed.width + trim, 'up');
  const because: { readonly [V in 'ok' | 'look again' | 'change it']: string } = {
    ok: whole
      ? `${as}: it goes through the planer whole, which takes ${say(context, limit)}`
      : `${as} and ${planerTakes}: ${work} it in ${planed.parts} parts of up to ${planed.boards} boards, ${part} wide, then join those`,
    'look again': `${as} and ${planerTakes}: not even two boards go through together`,
    'change it': `${as} and ${planerTakes}: a single board is ${part} wide`,
  };
  return {
    check: 'planer and glue-up',
    verdict,
    part: panel.part.id,
    value,
    limit,
    unit: 'mm',
    because: because[verdict as keyof typeof because],
    fixes: planerFixes(context, panel, verdict, trim),
    source: 'planer of the shop',
  };
}

function planerFixes(context: CheckContext, panel: GlueUp, verdict: Verdict, trim: Mm): string[] {
  if (verdict === 'look again') {
    return [
      panel.tapered
        ? 'taper strips before gluing, and flush the joints by hand'
        : 'plane the boards before gluing, and flush the joints by hand',
    ];
  }
  if (verdict !== 'change it') return [];
  const count = Math.ceil(panel.width / (context.shop.machines.planerWidth - trim));
  return [`make it of at least ${count} boards`];
}

function time(context: CheckContext, panel: GlueUp, plan: GluePlan): Finding {
  const { openTime, perJoint } = context.shop.gluing;
  const limit = OPEN_SHARE * openTime;
  const joints = panel.boards.length - 1;
  const longest = Math.max(...plan.stages.map((s) => s.joints));
  const value = longest * perJoint;
  const allowed = `${formatNumber(limit, 1)} min are ${OPEN_SHARE * 100} % of the open time`;
  const good = plan.atOnce > 0;
  const hands = joints * perJoint <= limit && joints > HANDS_FULL ? `, but one person closes ${HANDS_FULL}` : '';
  const all = `${panelName(panel)}: ${joints === 1 ? 'its joint takes' : `${joints} joints at once take`} ${formatNumber(joints * perJoint, 1)} min, and ${allowed}${hands}`;
  const least = Math.ceil((perJoint / OPEN_SHARE) * 10 - 1e-9) / 10;
  return {
    check: 'gluing time',
    verdict: good ? 'ok' : 'change it',
    part: panel.part.id,
    value,
    limit,
    unit: 'min',
    because: good
      ? `${all}: ${stagesText(context, plan)}`
      : `${panelName(panel)}: one joint takes ${formatNumber(perJoint, 1)} min, and ${allowed}`,
    fixes: good ? [] : [`use a glue with an open time of at least ${formatNumber(least, 1)} min`],
    source:
      'glue of the shop; 70 % of the open time, and 2 to 3 joints at once for one person: common practice, no source',
  };
}

/** "glue it up in 3 stages: 8 boards to 4, 10 in wide; 4 to 2, 20 in wide; 2 to 1". */
function stagesText(context: CheckContext, { stages }: GluePlan): string {
  const steps = stages.map(({ from, to, width }, k) => {
    const wide = to > 1 ? `, ${say(context, width)} wide` : '';
    return `${from}${k === 0 ? ' boards' : ''} to ${to}${wide}`;
  });
  return `glue it up in ${stages.length === 1 ? 'one stage' : `${stages.length} stages`}: ${steps.join('; ')}`;
}
