import { seasonalTravel } from '../../joints/seasonal-travel.ts';
import type { Rule } from '../../params/rule.ts';
import type { Mm } from '../../units/mm.ts';
import { type ScrewGauge, shankDiameter } from '../../wood/screws.ts';
import { BESIDE_CENTER } from './fix-top.ts';
import { atLeast, atMost } from './rule-kinds.ts';
import { CARRIER, carrierLength, isKind, SLOPE, slope } from './rule-values.ts';
import type { TrestleFields, TrestleValues } from './values.ts';

/** Least wood between a hole or slot and whatever is next to it, mm (our convention). */
const ROOM: Mm = 1;

/** Room of a sunk washer and of a shank in their holes, both sides together, mm; as the holes are cut. */
const SUNK: Mm = 1;
const LOOSE: Mm = 0.4;

const shank = (v: TrestleValues): Mm => shankDiameter(Number(v.fixing.gauge) as ScrewGauge);

/** What the rules on slots read. */
const SLOTS = [
  ...CARRIER,
  'top.wood',
  'moisture.fitting',
  'moisture.low',
  'moisture.high',
  'moisture.sawn',
  'fixing.slotMargin',
  'fixing.washer',
] as const;

/** Travel of the wood at a screw, mm per mm from the center line. */
const travel = (v: TrestleValues): { readonly outward: Mm; readonly inward: Mm } =>
  seasonalTravel(v.top.wood, 1, v.moisture);

/** Half the length of the sunk part of a slot, travel not counted, mm. */
const halfSlot = (v: TrestleValues): Mm => (v.fixing.washer + SUNK + v.fixing.slotMargin) / 2;

export const FIXING_RULES: readonly Rule<TrestleFields>[] = [
  atLeast({
    fields: ['bearer.reliefWidth', 'bearer.reliefDepth', 'fixing.gauge'],
    limit: (v) => (v.bearer.reliefDepth > 0 ? shank(v) + LOOSE + 2 * ROOM : undefined),
    because: 'the hole of the center screw must come out in the relief',
  }),
  atMost({
    fields: ['bearer.reliefWidth', 'bearer.reliefDepth', 'fixing.fromEnds', 'fixing.perSide', ...SLOTS],
    limit(v) {
      if (v.bearer.reliefDepth === 0) return undefined;
      const first = (carrierLength(v) / 2 - v.fixing.fromEnds) / v.fixing.perSide;
      return 2 * (first * (1 - travel(v).inward) - halfSlot(v) - ROOM);
    },
    because: 'the slots must come out beside the relief',
  }),
  atMost({
    fields: ['fixing.fromEnds', 'fixing.perSide', ...SLOTS],
    limit(v) {
      // Pitch p = l / n with l from the center to the last screw; two slots take up their ends and l times the travel.
      const { outward, inward } = travel(v);
      const n = v.fixing.perSide;
      const slots = (2 * halfSlot(v) + ROOM) / (1 / n - outward - inward);
      return carrierLength(v) / 2 - Math.max(30 * n, slots);
    },
    because: 'screws with their slots must keep clear of each other, at least 30 mm apart',
  }),
  atLeast({
    fields: ['fixing.fromEnds', 'bearer.endRound', 'frameJoint.tenonDepth', ...SLOTS],
    limit(v) {
      const taken = { bearer: v.bearer.endRound, posts: v.frameJoint.tenonDepth, panel: 0 }[v.frame.kind];
      const { outward } = travel(v);
      return (taken + halfSlot(v) + 3 + (outward * carrierLength(v)) / 2) / (1 + outward);
    },
    because: 'the last slot must stay inside the end of the bearer, clear of a rounded corner or a mortise',
  }),
  atMost({
    fields: ['fixing.washer', 'frame.kind', 'bearer.thickness', 'upperRail.thickness', 'cleat.thickness'],
    limit: (v) =>
      ({ bearer: v.bearer.thickness, posts: v.upperRail.thickness, panel: v.cleat.thickness })[v.frame.kind] - 6,
    because: 'the sunk washer must leave 2 mm of wood on both sides',
  }),
  atLeast({
    fields: ['fixing.washer', 'fixing.gauge'],
    limit: (v) => shank(v) + 1,
    because: 'it must be wider than the hole for the screw',
  }),
  atLeast({
    fields: ['fixing.screwLength', 'fixing.penetration'],
    limit: (v) => v.fixing.penetration + 10,
    because: 'at least 10 mm of the screw must stay in the bearer',
  }),
  atLeast({
    fields: [
      'cleat.depth',
      'frame.kind',
      'cleat.length',
      ...SLOPE,
      'bearer.reliefDepth',
      'bearer.reliefWidth',
      'fixing.washer',
    ],
    limit(v) {
      if (!isKind(v, 'panel')) return undefined;
      const hole = v.fixing.washer + SUNK;
      const nearest = Math.max(0, BESIDE_CENTER - hole / 2);
      const relief = v.bearer.reliefWidth / 2 > nearest ? v.bearer.reliefDepth : 0;
      const over = slope(v) * (v.cleat.length / 2 - nearest) + relief + ROOM;
      const ridge = slope(v) * (v.cleat.length / 2) + v.bearer.reliefDepth;
      return Math.max(ridge + v.fixing.washer + 15, 2 * over + hole);
    },
    because: 'the screws into the leg sit at half its depth and need wood between them and the V',
  }),
];
