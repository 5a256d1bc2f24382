import { marksText } from '../derive/cut-list/building-order.ts';
import { noWood } from './no-wood.ts';
import type { WoodPlan } from './wood-plan.ts';

/** What the boards at hand do not give, in short; empty when they give all. */
export function noWoodWords(plan: WoodPlan): string[] {
  const { top, parts } = noWood(plan);
  return [
    ...(top ? ['the strips of the top have no plan'] : []),
    ...(parts.length > 0 ? [`no board for ${marksText(parts)}`] : []),
  ];
}
