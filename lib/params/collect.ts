import type { Override } from './assignment.ts';
import type { Issue } from './issue.ts';
import type { Kind } from './param.ts';
import { readParam } from './read-param.ts';
import { describeGiven } from './reading.ts';
import type { Fields, Spec } from './spec.ts';
import { groupAt, unknownPath } from './unknown-path.ts';

/** A nested record of given values, and its name in messages. */
export interface Source {
  readonly values: unknown;
  readonly from: string;
}

/** What came for one parameter, unread. */
export interface Entry {
  readonly raw: unknown;
  readonly from: string;
}

export interface Collected {
  readonly entries: Map<string, Entry>;
  /** What is wrong with the shape of the input: names, groups, repetitions. */
  readonly issues: Issue[];
  /** Paths of parameters and groups that have such an issue: nothing under them counts as read. */
  readonly spoiled: Set<string>;
}

/** Finds what came for each parameter. A later source wins over an earlier one, an override over all sources. */
export function collect(spec: Spec, sources: readonly Source[], overrides: readonly Override[]): Collected {
  const collected: Collected = { entries: new Map(), issues: [], spoiled: new Set() };
  for (const { values, from } of sources) walk(spec, collected, { fields: spec.fields, path: '' }, values, from);
  for (const path of new Set(overrides.map((one) => one.path))) {
    const same = overrides.filter((one) => one.path === path);
    if (spec.table.has(path)) takeOverrides(spec, collected, path, same);
    else refuseOverride(spec, collected, same[0]!);
  }
  return collected;
}

interface Place {
  readonly fields: Fields;
  /** Of the group; empty for the root. */
  readonly path: string;
}

interface Slot {
  readonly path: string;
  /** Undefined when no parameter has that name. */
  readonly kind: Kind | undefined;
}

function walk(spec: Spec, collected: Collected, place: Place, values: unknown, from: string): void {
  if (values === undefined) return;
  if (!isRecord(values)) {
    const options = Object.keys(place.fields);
    const given = describeGiven(values);
    spoil(collected, { code: 'group-as-parameter', path: place.path, given, from, unit: '', options });
    return;
  }
  for (const [name, value] of Object.entries(values)) {
    const path = place.path ? `${place.path}.${name}` : name;
    const node = Object.hasOwn(place.fields, name) ? place.fields[name]! : undefined;
    if (node?.kind === 'group') walk(spec, collected, { fields: node.fields, path }, value, from);
    else take(spec, collected, { path, kind: node?.kind }, value, from);
  }
}

/** Takes what a record has under a name that is no group. */
function take(spec: Spec, collected: Collected, { path, kind }: Slot, raw: unknown, from: string): void {
  const given = describeGiven(raw);
  if (!kind) collected.issues.push(unknownPath(spec, path, given, from, isRecord(raw) ? 'group' : 'parameter'));
  else if (isRecord(raw)) spoil(collected, { code: 'parameter-as-group', path, given, from, unit: '', kind });
  else if (raw !== undefined) collected.entries.set(path, { raw, from });
}

function takeOverrides(spec: Spec, collected: Collected, path: string, same: readonly Override[]): void {
  const param = spec.table.get(path)!;
  const { text, from } = same.at(-1)!;
  const values = same.map((one) => JSON.stringify(readParam(param, one.text).value ?? one.text));
  if (new Set(values).size === 1) {
    collected.entries.set(path, { raw: text, from });
    return;
  }
  const given = same.map((one) => one.text.trim()).join(' and ');
  const all = same.map((one) => one.from).join(' and ');
  spoil(collected, { code: 'repeated', path, given, from: all, unit: '', kind: param.kind });
}

function refuseOverride(spec: Spec, collected: Collected, override: Override): void {
  const issue = strayOverride(spec, override);
  if (issue.code === 'unknown') collected.issues.push(issue);
  else spoil(collected, issue);
}

/** What is wrong with the path of an override that names no parameter. */
export function strayOverride(spec: Spec, { path, text, from }: Override): Issue {
  const group = groupAt(spec.fields, path);
  const outer = [...spec.table.keys()].find((known) => path.startsWith(`${known}.`));
  if (group) {
    const options = Object.keys(group.fields);
    return { code: 'group-as-parameter', path, given: text, from, unit: '', options };
  }
  if (outer === undefined) return unknownPath(spec, path, text, from, 'parameter');
  const { kind } = spec.table.get(outer)!;
  return { code: 'parameter-as-group', path: outer, given: text, from, unit: '', kind };
}

function spoil(collected: Collected, issue: Issue): void {
  collected.issues.push(issue);
  collected.spoiled.add(issue.path);
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  Object.prototype.toString.call(value) === '[object Object]';
