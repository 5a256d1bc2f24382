import { ADVICE } from '../../build/cautions.ts';
import { CHECKS } from '../../derive/checks/checks.ts';
import { type Finding, VERDICTS, type Verdict } from '../../model/finding.ts';
import { findingNumbers } from '../../model/finding-number.ts';
import { checksText, drawTogether, type LikeFindings, likeText } from '../../model/like-findings.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import { button, el, onlyWhenNew, refill } from './dom.ts';
import { type CheckState, isMending, pendingChecks } from './found.ts';
import type { Panel, View } from './view.ts';

/** A parameter and a value that a fix names. */
export interface Remedy {
  readonly path: string;
  readonly text: string;
}

export interface FindingsHands {
  /** What a fix would change, when it is a value of one parameter. */
  remedyOf(fix: string): Remedy | undefined;
  set(path: string, text: string): void;
}

/** Findings of one verdict that stand equally with the values as they are. */
interface Group {
  readonly verdict: Verdict;
  readonly state: CheckState['state'];
  readonly findings: readonly Finding[];
}

/** What the checks say, under their verdicts, worst first, in the sentences of the command line. */
export function findingsPanel(hands: FindingsHands): Panel {
  const status = el('p', { class: 'working' });
  const list = el('div', { class: 'verdict-list', tabindex: -1 });
  const fill = onlyWhenNew(({ groups, units }: { readonly groups: readonly Group[]; readonly units: UnitSystem }) => {
    refill(
      list,
      VERDICTS.flatMap((verdict) => verdictSection(verdict, groups, units, hands)),
    );
  });
  return {
    element: el(
      'section',
      { class: 'findings', 'aria-labelledby': 'findings' },
      el('h2', { id: 'findings' }, 'What the checks say'),
      status,
      list,
      el('p', { class: 'advice' }, ADVICE.text),
    ),
    update(view) {
      const text = statusText(view);
      if (status.textContent !== text) status.textContent = text;
      status.classList.toggle('pending', pendingChecks(view.found) > 0);
      fill({ groups: groupsOf(view), units: view.units });
    },
  };
}

function statusText({ found, issues, failure }: View): string {
  if (found.failed !== undefined) return `The checks have stumbled: ${found.failed}`;
  if (issues.length > 0 || failure !== undefined) return 'Of the last piece that went together:';
  const pending = pendingChecks(found);
  if (pending > 0) return `${pending === 1 ? '1 check is' : `${pending} checks are`} being worked out again.`;
  return isMending(found) ? 'All checks are done; what would mend it is being worked out.' : 'All checks are done.';
}

function groupsOf({ found }: View): readonly Group[] {
  return VERDICTS.flatMap((verdict) =>
    (['now', 'mending', 'before'] as const).map((state) => ({
      verdict,
      state,
      findings: CHECKS.flatMap(({ name }) => {
        const one = found.checks.get(name);
        return one?.state === state ? one.findings.filter((finding) => finding.verdict === verdict) : [];
      }),
    })),
  );
}

function verdictSection(
  verdict: Verdict,
  groups: readonly Group[],
  units: UnitSystem,
  hands: FindingsHands,
): HTMLElement[] {
  const mine = groups.filter((group) => group.verdict === verdict && group.findings.length > 0);
  const count = mine.reduce((sum, { findings }) => sum + findings.length, 0);
  if (count === 0) return [];
  const heading = el('h3', { class: verdict.replace(' ', '-') }, `${verdict} (${count})`);
  if (verdict === 'ok') return [heading, ...mine.map(okText)];
  const entries = mine.flatMap((group) => drawTogether(group.findings).map((like) => entry(like, group, units, hands)));
  return [heading, el('ul', {}, ...entries)];
}

const okText = ({ findings, state }: Group): HTMLElement =>
  el(
    'p',
    state === 'before' ? { class: 'before' } : {},
    checksText(findings),
    state === 'before' && el('span', { class: 'again' }, ' (before; being worked out again)'),
  );

function entry(like: LikeFindings, { state }: Group, units: UnitSystem, hands: FindingsHands): HTMLElement {
  const { worst } = like;
  const key = JSON.stringify([worst.check, worst.part, worst.verdict]);
  const canBeMended = worst.verdict === 'change it' || worst.verdict === 'look again';
  return el(
    'li',
    state === 'before' ? { class: 'before' } : {},
    el(
      'p',
      {},
      likeText(like),
      state === 'before' && el('span', { class: 'again' }, ' (before; being worked out again)'),
    ),
    ...(state === 'now' ? worst.fixes.map((fix, k) => fixLine(fix, `${key}${k}`, hands)) : []),
    state === 'mending' && canBeMended && el('p', { class: 'fix again' }, 'what would mend it is being worked out'),
    el(
      'details',
      { 'data-key': `${key}d` },
      el('summary', { 'data-key': `${key}s` }, 'what it rests on'),
      ...grounds(worst, units).map((line) => el('p', {}, line)),
    ),
  );
}

function fixLine(fix: string, key: string, hands: FindingsHands): HTMLElement {
  const remedy = hands.remedyOf(fix);
  return el(
    'p',
    { class: 'fix' },
    `try: ${fix}`,
    remedy &&
      button(`try ${remedy.text}`, () => hands.set(remedy.path, remedy.text), {
        'data-key': key,
        'aria-label': `try ${remedy.text} for ${remedy.path}`,
      }),
  );
}

function grounds(finding: Finding, units: UnitSystem): string[] {
  const { source, load, assumptions = [], unconfirmed = [] } = finding;
  const { value, limit, range } = findingNumbers(finding, units);
  const numbers = [value && `value ${value}${range && ` (${range})`}`, limit && `limit ${limit}`].filter(Boolean);
  return [
    ...(numbers.length > 0 ? [numbers.join(', ')] : []),
    `limit: ${source}`,
    ...(load === undefined ? [] : [`load: ${load}`]),
    ...assumptions.map((one) => `assumed: ${one}`),
    ...(unconfirmed.length > 0 ? [`rests on wood data still to be confirmed: ${unconfirmed.join('; ')}`] : []),
  ];
}
