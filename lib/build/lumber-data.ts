import type { LumberPlan } from './lumber-plan.ts';
import type { MilledPlan } from './milled-plan.ts';
import { noWood } from './no-wood.ts';
import type { StripsFound } from './search-strips.ts';

/** The lumber of a job for other programs: lengths in mm, infinite bounds left out. */
export function lumberData(plan: LumberPlan): object {
  const { buying, tally, strips, kept, cuts, wanted, stopped } = plan;
  const { zones, ...list } = buying;
  return {
    stopped,
    buying: { zones: zones.map(({ lumber, ...rest }) => ({ lumber: lumber.id, ...rest })), ...list },
    ...(tally ? { tally } : {}),
    ...(tally ? { noWood: noWood(plan) } : {}),
    ...(strips ? { strips: stripsData(strips) } : {}),
    ...(kept ? { kept } : {}),
    cuts: cuts.map(({ job: { wood, lumber, costIn }, progress }) => ({ wood, lumber, costIn, ...finite(progress) })),
    ...(wanted.length > 0 ? { wanted } : {}),
  };
}

/** The same for boards as they came out, with the strips as measured and what moves. */
export function milledData({ boards, plan, before, moved, recut }: MilledPlan): object {
  const [was, is] = [before.strips?.status.plan, plan.strips?.status.plan];
  return {
    ...lumberData(plan),
    milled: {
      boards,
      ...(before.strips ? { before: stripsData(before.strips) } : {}),
      ...(moved ? { moved } : {}),
      recut,
      ...(was && is ? { dearer: is.value - was.value } : {}),
    },
  };
}

const stripsData = ({ status, stopped, shortage }: StripsFound): object => ({
  ...finite(status),
  ...(stopped ? { stopped } : {}),
  ...(shortage ? { shortage } : {}),
});

/** Without the numbers that JSON cannot say, and without the count of work, which tells nothing of the plan. */
const finite = (record: object): object =>
  Object.fromEntries(
    Object.entries(record).filter(
      ([name, value]) => name !== 'work' && name !== 'steps' && (typeof value !== 'number' || Number.isFinite(value)),
    ),
  );
