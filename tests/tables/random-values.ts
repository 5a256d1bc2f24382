import { applyRulesTo, type Known } from '../../lib/params/apply-rules.ts';
import { effectiveRange } from '../../lib/params/effective-range.ts';
import type { Param, Value } from '../../lib/params/param.ts';
import { sampleOthers } from '../../lib/params/sample-other.ts';
import type { PathOf, Spec } from '../../lib/params/spec.ts';
import { flattenValues, setPath, valueAt } from '../../lib/params/values.ts';
import { trestleParams } from '../../lib/tables/trestle/spec.ts';
import type { TrestleFields, TrestleValues } from '../../lib/tables/trestle/values.ts';
import { type Changes, DESIGNS, valuesOf } from '../written.ts';
import { pick, randomFrom } from './random.ts';

type Path = PathOf<TrestleFields>;
const SPEC = trestleParams as unknown as Spec;
const PATHS = [...trestleParams.table.keys()] as Path[];

interface Start {
  readonly design: 'reading-table' | 'meeting-table' | 'study-table';
  readonly changes: Changes;
}

const FEW = { 'edgeJoint.spacing': '22 in' };

/** Where the walks begin: every kind of frame, with and without stretchers, layers, tenons; most with few tenons. */
const STARTS: readonly Start[] = [
  { design: 'reading-table', changes: {} },
  { design: 'reading-table', changes: { ...FEW, 'frame.kind': 'posts' } },
  { design: 'reading-table', changes: { ...FEW, 'frame.kind': 'panel', 'top.strips': '5' } },
  { design: 'reading-table', changes: { ...FEW, 'stretcher.count': '0', 'lowerRail.use': 'no', 'top.strips': '6' } },
  { design: 'reading-table', changes: { 'stretcher.count': '2', 'top.layers': '2', 'edgeJoint.tenons': 'no' } },
  { design: 'meeting-table', changes: FEW },
  { design: 'meeting-table', changes: { ...FEW, 'frame.kind': 'bearer', 'top.strips': '5' } },
  { design: 'meeting-table', changes: { ...FEW, 'stretcher.to': 'rail', 'bearer.reliefDepth': '0 mm' } },
  {
    design: 'meeting-table',
    changes: { 'edgeJoint.tenons': 'no', 'top.strips': '24', 'top.layers': '2', 'top.showLayer': '20 mm' },
  },
  { design: 'study-table', changes: {} },
  { design: 'study-table', changes: { ...FEW, 'stretcher.count': '2', 'top.layers': '1', 'top.strips': '3' } },
];

export interface Sample {
  /** Which sample, from where, and what was changed: enough to make it again by hand. */
  readonly name: string;
  readonly design: Start['design'];
  readonly values: TrestleValues;
}

const starts = STARTS.map(({ design, changes }) => ({
  name: [design, ...Object.entries(changes).map((change) => change.join('='))].join(' '),
  design,
  values: valuesOf(DESIGNS[design], changes) as unknown as TrestleValues,
}));

/** Valid values: a walk of one to eight steps from one of the starts, each to a place that all rules allow. */
export function sampleOf(seed: number): Sample {
  const random = randomFrom(seed);
  const start = pick(random, starts);
  const steps: string[] = [];
  let values = start.values;
  const wanted = 1 + Math.floor(random() * 8);
  for (let tries = 0; steps.length < wanted && tries < 60; tries++) {
    const path = pick(random, PATHS);
    const value = other(random, values, path);
    if (value === undefined || JSON.stringify(value) === JSON.stringify(valueAt(values, path))) continue;
    // All rules hold so far: only those over this path can break.
    if (applyRulesTo(SPEC, knownOf(values), path, { value, unit: 'mm' }).length > 0) continue;
    values = setPath(trestleParams, values, path, value);
    steps.push(`${path}=${JSON.stringify(value)}`);
  }
  return { name: `${seed}: ${start.name}; ${steps.join(' ')}`, design: start.design, values };
}

const knownOf = (values: TrestleValues): Known =>
  new Map([...flattenValues(trestleParams, values)].map(([path, value]) => [path as string, { value, unit: 'mm' }]));

/** Another value of one parameter. Numbers go to the ends of what the rules leave, near by, or anywhere between. */
function other(random: () => number, values: TrestleValues, path: Path): Value | undefined {
  const param = trestleParams.table.get(path)!;
  const current = valueAt(values, path);
  if (typeof current !== 'number') return pick(random, sampleOthers<Param>(param, current as never));
  const { min, max } = effectiveRange(SPEC, knownOf(values), path, { value: current, unit: 'mm' })!;
  if (!(min < max)) return undefined;
  const way = random();
  const place = random();
  if (way < 0.15) return min;
  if (way < 0.3) return max;
  const free = way < 0.6 ? current + (place - 0.5) * 0.4 * (max - min) : min + place * (max - min);
  const whole = param.kind === 'count' || param.kind === 'division';
  return Math.min(max, Math.max(min, whole ? Math.round(free) : free));
}
