import { pricesOf } from '../derive/lumber/strip-plan/prices.ts';
import type { StripPlan } from '../derive/lumber/strip-plan/strip-plan.ts';
import type { StripProblem, StripTerm } from '../derive/lumber/strip-plan/strip-problem.ts';
import { formatNumber, type UnitSystem } from '../units/format-length.ts';
import { TERM_WORDS } from './term-words.ts';

interface Share {
  readonly term: StripTerm;
  readonly value: number;
  readonly cost: number;
}

/** Less than this prints as nothing. */
const NOTHING = 0.005;

/** Whether a plan has a cost at all: terms in order have none that says anything. */
export const hasCost = ({ settings }: StripProblem): boolean => settings.preference.mode === 'weighted';

/** What the cost of a plan is made of, dearest first; of terms in order, how much there is of each. */
export function costWords(plan: StripPlan, problem: StripProblem, units: UnitSystem): string {
  const { preference } = problem.settings;
  if (preference.mode === 'ordered') return `in this order: ${inOrder(plan, preference.order, units)}`;
  const shares = sharesOf(plan, problem).filter(({ cost }) => cost >= NOTHING);
  const parts = shares
    .toSorted((a, b) => b.cost - a.cost)
    .map(({ term, value, cost }) => `${TERM_WORDS[term].name} ${formatNumber(cost, 2)} (${noted(term, value, units)})`);
  const free = sharesOf(plan, problem).filter(({ cost }) => cost < NOTHING);
  const rest = free.length > 0 ? `; nothing for ${free.map(({ term }) => TERM_WORDS[term].name).join(', ')}` : '';
  return parts.length > 0 ? `made of ${parts.join(' + ')}${rest}` : 'nothing counts against it';
}

/** What a plan costs more or less than another, term by term; empty when nothing differs. */
export function costChanges(before: StripPlan, after: StripPlan, problem: StripProblem, units: UnitSystem): string[] {
  const were = new Map(sharesOf(before, problem).map((share) => [share.term, share]));
  return sharesOf(after, problem).flatMap(({ term, value, cost }): string[] => {
    const was = were.get(term)!;
    if (Math.abs(cost - was.cost) < NOTHING) return [];
    const by = hasCost(problem)
      ? `${formatNumber(Math.abs(cost - was.cost), 2)} ${cost > was.cost ? 'more' : 'less'}, `
      : '';
    const [now, then] = [amount(term, value, units), amount(term, was.value, units)];
    return [`${TERM_WORDS[term].name} ${by}${now === then ? `about ${now} both times` : `${now} in place of ${then}`}`];
  });
}

const amount = (term: StripTerm, value: number, units: UnitSystem): string => TERM_WORDS[term].amount(value, units);

const noted = (term: StripTerm, value: number, units: UnitSystem): string =>
  [amount(term, value, units), TERM_WORDS[term].note].filter(Boolean).join(', ');

const inOrder = ({ terms }: StripPlan, order: readonly StripTerm[], units: UnitSystem): string =>
  order.map((term) => `${TERM_WORDS[term].name} ${noted(term, terms[term], units)}`).join('; ');

/** The terms that count. */
function sharesOf({ terms }: StripPlan, problem: StripProblem): Share[] {
  const { of } = pricesOf(problem);
  return (Object.keys(TERM_WORDS) as StripTerm[])
    .filter((term) => of[term] > 0)
    .map((term) => ({ term, value: terms[term], cost: of[term] * terms[term] }));
}
