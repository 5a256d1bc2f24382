import type { Value } from '../../params/param.ts';
import { renderIssue } from '../../params/render-issue.ts';
import type { Fields, ValuesOf } from '../../params/spec.ts';
import { valueAt } from '../../params/values.ts';
import type { Bench } from './bench.ts';
import type { FieldState } from './field.ts';
import { textOf } from './read-edits.ts';
import type { View } from './view.ts';

/** What the field of a parameter shows. `design`: the values without any edits, when they are good. */
export function fieldState(bench: Bench, design: ValuesOf<Fields> | undefined, path: string, view: View): FieldState {
  const { edits, units, issues, piece, mark } = view;
  const param = bench.design.params.table.get(path)!;
  const say = (values: ValuesOf<Fields> | undefined): string | undefined =>
    values && textOf(param, valueAt(values, path), units);
  const own = say(design) ?? rawText(bench, path) ?? textOf(param, param.default, units);
  const text = edits.get(path) ?? own;
  const value: Value | undefined = piece && valueAt(piece.values, path);
  const before = mark && say(mark.piece.values);
  const problems = issues.filter((issue) => issue.path === path);
  const isGood = problems.length === 0;
  const moved = before !== undefined && (isGood ? before !== say(piece?.values) : before !== text);
  return {
    units,
    text,
    value,
    design: edits.has(path) ? own : undefined,
    was: moved ? before : undefined,
    problems: problems.map((issue) => ({ text: renderIssue(issue, units), try: issue.try })),
  };
}

/** What the design gives, when it could not be read. */
function rawText({ sources }: Bench, path: string): string | undefined {
  for (const { values } of sources.toReversed()) {
    let at: unknown = values;
    for (const name of path.split('.')) at = (at as Record<string, unknown> | undefined)?.[name];
    if (at !== undefined && typeof at !== 'object') return typeof at === 'number' ? `${at} mm` : `${at}`;
  }
  return undefined;
}
