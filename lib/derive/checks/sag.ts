import type { Vec2 } from '../../geometry/vec.ts';
import { partOf } from '../../model/assembly.ts';
import type { Finding, Verdict } from '../../model/finding.ts';
import type { Rounding } from '../../units/format-length.ts';
import { density } from '../../wood/density.ts';
import { speciesById } from '../../wood/species-list.ts';
import {
  atMostVerdict,
  beside,
  type Check,
  type CheckContext,
  called,
  fromMemory,
  notChecked,
  sayMove,
  sayShare,
} from './check.ts';
import { sayMass } from './say-load.ts';
import { solvedFixes } from './solve-fix.ts';
import type { Beam } from './solvers/beam.ts';
import { bendBeam } from './solvers/beam-bend.ts';
import { type BeamCaseName, beamCases } from './solvers/beam-cases.ts';
import { CREEP_ALONG, SAG_AT_ONCE, SAG_IN_TIME, TIP_GIVE } from './solvers/beam-limits.ts';
import { peakMoments } from './solvers/beam-peaks.ts';
import { GRAVITY } from './solvers/mass.ts';
import { polygonSection, type Section } from './solvers/section.ts';
import { STRESS_BANDS, workingStress } from './solvers/working-stress.ts';
import { strengthFromMemory } from './strength-from-memory.ts';
import { type TableModel, tableModel } from './table-model.ts';

interface LongBeam {
  readonly model: TableModel;
  readonly beam: Beam;
  readonly section: Section;
  readonly span: number;
  readonly overhang: number;
}

/** A number of the beam, its limit, and how it is told. */
interface Measure {
  readonly check: string;
  readonly load: string;
  readonly value: (long: LongBeam, context: CheckContext) => number;
  readonly limit: (long: LongBeam) => number;
  readonly unit: string;
  readonly source: string;
  /** The sentence, with value and limit as they are to be said. */
  readonly because: (context: CheckContext, value: string, limit: string) => string;
  readonly verdict: (value: number, limit: number) => Verdict;
}

const LEVERS = ['top.thickness', 'top.edgeThickness', 'frame.inset', 'top.length'];

const overLimit = (value: number, limit: number): Verdict => atMostVerdict(value, limit, limit);

/**
 * The top along the grain as a beam on its frames: sag at once and in time, tips, stress. It says nothing of edges and
 * corners, which bend across the grain: `give` does.
 */
export const sag: Check = {
  name: 'sag',
  run(context) {
    const { assembly } = context;
    const model = tableModel(assembly);
    if (!model) return [notChecked('sag', assembly.parts[0]!.id, 'a top of one panel on a base')];
    const wood = speciesById(model.top.wood);
    if (!wood.moe || !wood.mor)
      return [notChecked('sag', model.top.id, `stiffness and bending strength of ${wood.name}`)];
    const apron = model.bearings.find((b) => b.along);
    if (apron) {
      const piece = called(partOf(assembly, apron.part));
      return [notChecked('sag', model.top.id, `a top that lies on frames alone; it lies on ${piece} lengthwise`)];
    }
    const long = longBeam(model);
    if (!long) return [notChecked('sag', model.top.id, 'two frames under the top')];
    return MEASURES.map((m) => finding(context, long, m));
  },
};

/** Bearings at the two ends of the base, by x; the section of the top halfway between them. */
function longBeam(model: TableModel): LongBeam | undefined {
  const xs = model.bearings.filter((b) => b.screwed || model.bearings.every((o) => !o.screwed)).map((b) => b.x);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const e = speciesById(model.top.wood).moe?.value;
  if (!(right - left > 1) || e === undefined) return undefined;
  const { length } = model.body;
  const section = sectionAt(model, (left + right) / 2);
  const beam: Beam = { length, supports: [left, right], e, inertia: section.inertia };
  return { model, beam, section, span: right - left, overhang: Math.max(left, length - right) };
}

/** Points across the section: creases of a wedge fall on the center line, so an even count meets them. */
const STATIONS = 16;

function sectionAt({ body, thickness }: TableModel, x: number): Section {
  const ys = Array.from({ length: STATIONS + 1 }, (_, k) => body.width * (k / STATIONS - 0.5));
  const below = ys.map((y): Vec2 => [y, thickness(x, y)]);
  return polygonSection([[ys[STATIONS]!, 0], [ys[0]!, 0], ...below]);
}

/** N/mm of the top itself. */
const ownWeight = ({ model, section }: LongBeam): number =>
  (section.area * density(speciesById(model.top.wood), 12).value * GRAVITY) / 1e9;

function bent(long: LongBeam, { loads }: CheckContext, ...names: BeamCaseName[]) {
  const cases = beamCases(long.beam, ownWeight(long), { spread: loads.spread, spot: loads.lean, person: loads.person });
  return bendBeam(
    long.beam,
    cases.filter((c) => names.includes(c.name)).flatMap((c) => c.loads),
  );
}

const middle = ({ beam }: LongBeam): number => (beam.supports[0] + beam.supports[1]) / 2;
const farEnd = ({ beam }: LongBeam): number => (beam.length - beam.supports[1] > beam.supports[0] ? beam.length : 0);

const MEASURES: readonly Measure[] = [
  {
    check: 'sag at once',
    load: 'its own weight and a load spread over the top',
    value: (long, context) => Math.max(0, bent(long, context, 'own weight', 'spread').deflectionAt(middle(long))),
    limit: ({ span }) => span * SAG_AT_ONCE.value,
    unit: 'mm',
    source: SAG_AT_ONCE.source,
    because: (context, value, limit) =>
      `${sayMass(context, context.loads.spread)} spread over the top and its own weight lower the middle ${value}; up to ${limit} is well`,
    verdict: overLimit,
  },
  {
    check: 'sag in time',
    load: 'its own weight, for years',
    value: (long, context) =>
      Math.max(0, bent(long, context, 'own weight').deflectionAt(middle(long))) * CREEP_ALONG.value,
    limit: ({ span }) => span * SAG_IN_TIME.value,
    unit: 'mm',
    source: SAG_IN_TIME.source,
    because: (_, value, limit) => `over the years it sags ${value} under its own weight; above ${limit} it shows`,
    verdict: overLimit,
  },
  {
    check: 'overhang',
    load: 'its own weight and a load spread over the top',
    value: (long, context) => Math.abs(bent(long, context, 'own weight', 'spread').deflectionAt(farEnd(long))),
    limit: ({ overhang }) => Math.max(overhang * TIP_GIVE.value, 0.1),
    unit: 'mm',
    source: TIP_GIVE.source,
    because: (context, value, limit) =>
      `${sayMass(context, context.loads.spread)} spread over the top and its own weight move its ends ${value}; up to ${limit} is well`,
    verdict: overLimit,
  },
  bendingStress(
    'person at the end',
    'someone sitting on the very end',
    (context) => `${sayMass(context, context.loads.person)} on the very end`,
  ),
  bendingStress(
    'spot at the middle',
    'someone leaning on the middle, for a short time',
    (context) => `${sayMass(context, context.loads.lean / GRAVITY)} on the middle`,
  ),
];

function bendingStress(at: BeamCaseName, load: string, who: (context: CheckContext) => string): Measure {
  return {
    check: 'bending stress',
    load,
    value: (long, context) => stressShare(long, context, at),
    limit: () => STRESS_BANDS.value.ok,
    unit: 'of the working stress',
    source: STRESS_BANDS.source,
    because: (context, value, limit) =>
      `with ${who(context)} the wood works at ${value} of our working limit along the grain; up to ${limit} is well`,
    verdict: (value) => atMostVerdict(value, STRESS_BANDS.value.ok, STRESS_BANDS.value.least),
  };
}

function stressShare(long: LongBeam, context: CheckContext, at: BeamCaseName): number {
  const { sagging, hogging } = peakMoments(bent(long, context, 'own weight', at));
  const moment = Math.max(Math.abs(sagging.moment), Math.abs(hogging.moment));
  const stress = moment / Math.min(long.section.modulusLow, long.section.modulusHigh);
  return stress / workingStress(speciesById(long.model.top.wood).mor!.value, 'bending', 'short');
}

function finding(context: CheckContext, long: LongBeam, m: Measure): Finding {
  const value = m.value(long, context);
  const limit = m.limit(long);
  const verdict = m.verdict(value, limit);
  const { top } = long.model;
  const rounding = beside(verdict);
  const said = (x: number, how: Rounding): string => (m.unit === 'mm' ? sayMove(context, x, how) : sayShare(x, how));
  return {
    check: m.check,
    verdict,
    part: top.id,
    value,
    limit,
    unit: m.unit,
    because: `${called(top)}: ${m.because(context, said(value, rounding.value), said(limit, rounding.limit))}`,
    fixes:
      verdict === 'ok'
        ? []
        : solvedFixes(
            context,
            {
              // How far over its own limit, since the limit moves with the span.
              measure: (c) => {
                const moved = tableModel(c.assembly);
                const again = moved && longBeam(moved);
                return again && m.value(again, c) / m.limit(again);
              },
              limit: 1,
              want: 'at most',
              levers: LEVERS,
              say: (share) => `${sayShare(share)} of the limit`,
            },
            value / limit,
          ),
    source: m.source,
    load: m.load,
    assumptions: ['a beam of the section halfway between the frames, held by them up and down'],
    unconfirmed:
      m.unit === 'mm' ? fromMemory(top.wood, ['moe', 'specificGravity12']) : strengthFromMemory(top.wood, 'mor'),
  };
}
