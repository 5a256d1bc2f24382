import type { LumberPlan } from './lumber-plan.ts';

/** The lumber of a job for other programs: lengths in mm, infinite bounds left out. */
export function lumberData({ buying, tally, strips, cuts, stopped }: LumberPlan): object {
  const { zones, ...list } = buying;
  return {
    stopped,
    buying: { zones: zones.map(({ lumber, ...rest }) => ({ lumber: lumber.id, ...rest })), ...list },
    ...(tally ? { tally } : {}),
    ...(strips ? { strips: finite(strips.status) } : {}),
    cuts: cuts.map(({ job: { wood, lumber, costIn }, progress }) => ({ wood, lumber, costIn, ...finite(progress) })),
  };
}

/** Without the numbers that JSON cannot say, and without the count of work, which tells nothing of the plan. */
const finite = (record: object): object =>
  Object.fromEntries(
    Object.entries(record).filter(
      ([name, value]) => name !== 'work' && name !== 'steps' && (typeof value !== 'number' || Number.isFinite(value)),
    ),
  );
