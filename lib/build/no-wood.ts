import type { WoodPlan } from './wood-plan.ts';

/** What the boards at hand do not give, as far as the plan knows. */
export interface NoWood {
  /** The strips of the top have no plan. */
  readonly top: boolean;
  /** Marks of the other parts that are not cut. */
  readonly parts: readonly string[];
}

/** Of a search that was ended early nothing is said. */
export function noWood({ strips, cuts, stopped }: WoodPlan): NoWood {
  if (stopped) return { top: false, parts: [] };
  return {
    top: strips !== undefined && !strips.status.plan,
    parts: cuts.flatMap(({ job: { problem }, progress: { plan }, left }) =>
      [...new Set([...left, ...(plan ? [] : problem.parts)])].map(({ id }) => id),
    ),
  };
}

/** Every strip and every part has its board. */
export const hasAllWood = (plan: WoodPlan): boolean => {
  const { top, parts } = noWood(plan);
  return !plan.stopped && !top && parts.length === 0;
};
