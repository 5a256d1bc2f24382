import { heightAt } from '../../geometry/surface.ts';
import type { PanelBody } from '../../model/body.ts';
import { isEdgeProfile, profileSize } from '../../model/feature.ts';
import type { Finding } from '../../model/finding.ts';
import type { Part } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';
import { atLeastVerdict, type Check, type CheckContext, called, say } from './check.ts';

/** A long edge thinner than this dents and chips: 3/4 in wanted, 1/2 in least; common practice, no source. */
const WANTED: Mm = 19.05;
const LEAST: Mm = 12.7;

/** Flat wanted between two profiles, so that the edge does not become an arris: 1/8 in, common practice, no source. */
const LAND: Mm = 3.175;

/** Thickness of the long edges of a top, and the flat that its profiles leave on them. */
export const edgeThickness: Check = {
  name: 'edge thickness',
  run(context) {
    const findings = context.assembly.parts.flatMap((part) =>
      part.body.kind === 'panel' ? [thickness(context, part, part.body), land(context, part, part.body)] : [],
    );
    return findings.length > 0 ? findings : [none(context)];
  },
};

function thinnestEdge({ underside, length, width }: PanelBody): Mm {
  return Math.min(...[0, length].flatMap((x) => [-width / 2, width / 2].map((y) => heightAt(underside, x, y))));
}

function thickness(context: CheckContext, part: Part, body: PanelBody): Finding {
  const value = thinnestEdge(body);
  const verdict = atLeastVerdict(value, WANTED, LEAST);
  return {
    check: edgeThickness.name,
    verdict,
    part: part.id,
    value,
    limit: WANTED,
    unit: 'mm',
    because: `${called(part)}: its long edges are ${say(context, value, 'down')} thick; under ${say(context, WANTED)} they dent and chip in use`,
    fixes: verdict === 'ok' ? [] : [`make the edges ${say(context, WANTED, 'up')} thick`],
    source: 'common practice, no source',
  };
}

function land(context: CheckContext, part: Part, body: PanelBody): Finding {
  const profiles = part.features.filter(isEdgeProfile);
  const value = thinnestEdge(body) - profiles.reduce((sum, p) => sum + profileSize(p), 0);
  const verdict = atLeastVerdict(value, LAND, LAND / 2);
  return {
    check: 'edge land',
    verdict,
    part: part.id,
    value,
    limit: LAND,
    unit: 'mm',
    because: `${called(part)}: between the profiles ${say(context, value, 'down')} of the edge stays flat; ${say(context, LAND, 'up')} is wanted`,
    fixes: verdict === 'ok' ? [] : [`take ${say(context, LAND - value, 'up')} off the profiles together`],
    source: 'common practice, no source',
  };
}

const none = ({ assembly }: CheckContext): Finding => ({
  check: edgeThickness.name,
  verdict: 'ok',
  part: assembly.parts[0]!.id,
  unit: 'mm',
  because: 'there is no top with a worked underside',
  fixes: [],
  source: 'our convention',
});
