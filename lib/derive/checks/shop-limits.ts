import type { Finding } from '../../model/finding.ts';
import type { Mm } from '../../units/mm.ts';
import { marksText } from '../cut-list/building-order.ts';
import { type Check, type CheckContext, called, say } from './check.ts';
import { shopGlue } from './shop-glue.ts';
import { MACHINES, type Machine } from './shop-machines.ts';
import { mortisesOf, type PlacedMortise, type ShopPiece } from './shop-pieces.ts';
import { solvedFixes } from './solve-fix.ts';

/** Rounding, mm. */
const SAME: Mm = 1e-6;

/** Every piece, part of a panel and glue-up against what the machines and the glue of the shop allow, with the way round. */
export const shopLimits: Check = {
  name: 'shop limits',
  run(context) {
    return [...MACHINES.flatMap((m) => atMachine(context, m)), ...mortises(context), ...shopGlue(context)];
  },
};

function atMachine(context: CheckContext, machine: Machine): Finding[] {
  const pieces = machine.pieces(context);
  if (pieces.length === 0) return [];
  const limit = machine.limit(context.shop);
  const over = pieces.filter((p) => machine.value(p) > limit + SAME);
  const names = [...new Set(over.map((p) => p.name))];
  if (names.length > 0) return names.map((name) => tooMuch(context, machine, among(over, name)));
  const most = largest(machine, pieces);
  return [
    {
      ...found(context, machine, most),
      verdict: 'ok',
      because: `${sizeText(context, machine, [most])}, the most of all pieces; ${machine.takes} ${say(context, limit)}`,
      fixes: [],
    },
  ];
}

const among = (pieces: readonly ShopPiece[], name: string): ShopPiece[] => pieces.filter((p) => p.name === name);

const largest = (machine: Machine, pieces: readonly ShopPiece[]): ShopPiece =>
  pieces.reduce((a, b) => (machine.value(b) > machine.value(a) ? b : a));

const found = (context: CheckContext, machine: Machine, piece: ShopPiece) => ({
  check: machine.check,
  part: piece.part,
  value: machine.value(piece),
  limit: machine.limit(context.shop),
  unit: 'mm',
  source: 'machines of the shop',
});

/** "strip T3 to T6: up to 2 5/16 in thick". */
function sizeText(context: CheckContext, machine: Machine, pieces: readonly ShopPiece[]): string {
  const sizes = pieces.map(machine.value);
  const [least, most] = [Math.min(...sizes), Math.max(...sizes)];
  const marks = marksText(pieces.flatMap((p) => p.marks));
  return `${pieces[0]!.name} ${marks}: ${most - least > SAME ? 'up to ' : ''}${say(context, most, 'up')} ${machine.is}`;
}

/** Pieces of one name that are over the limit. */
function tooMuch(context: CheckContext, machine: Machine, pieces: readonly ShopPiece[]): Finding {
  const limit = machine.limit(context.shop);
  const most = largest(machine, pieces);
  const way = machine.ways(context.shop).find(({ upTo }) => machine.value(most) <= upTo + SAME);
  return {
    ...found(context, machine, most),
    verdict: way ? 'look again' : 'change it',
    because: `${sizeText(context, machine, pieces)}, and ${machine.takes} ${say(context, limit)}${way ? '' : '; nothing here reaches further'}`,
    fixes: [...(way ? [way.way] : []), ...smaller(context, machine, most)],
  };
}

/** What makes every piece of that name small enough. */
const smaller = (context: CheckContext, machine: Machine, { kind, name }: ShopPiece): string[] =>
  solvedFixes(context, {
    measure: (moved) => {
      const sizes = among(machine.pieces(moved), name).map(machine.value);
      return sizes.length > 0 ? Math.max(...sizes) : undefined;
    },
    limit: machine.limit(context.shop) + SAME,
    want: 'at most',
    levers: machine.levers[kind],
    say: (value) => say(context, value, 'up'),
  });

/** The deepest mortises: those of edge joints and those of frames, which have each their own parameter. */
function mortises(context: CheckContext): Finding[] {
  const all = mortisesOf(context);
  const limit = context.shop.machines.mortiseDepth;
  const groups = [all.filter(inEdge), all.filter((m) => !inEdge(m))].filter((g) => g.length > 0).map(deepest);
  const over = groups.filter((m) => m.mortise.depth > limit + SAME);
  return (over.length > 0 ? over : groups.length > 0 ? [deepest(groups)] : []).map((m) => mortiseDepth(context, m));
}

const inEdge = ({ part }: PlacedMortise): boolean => part.kind === 'strip';

const deepest = (all: readonly PlacedMortise[]): PlacedMortise =>
  all.reduce((a, b) => (b.mortise.depth > a.mortise.depth ? b : a));

function mortiseDepth(context: CheckContext, placed: PlacedMortise): Finding {
  const { part, mortise } = placed;
  const limit = context.shop.machines.mortiseDepth;
  const good = mortise.depth <= limit + SAME;
  return {
    check: 'mortise depth',
    verdict: good ? 'ok' : 'change it',
    part: part.id,
    where: mortise.id,
    value: mortise.depth,
    limit,
    unit: 'mm',
    because: `${good ? 'the deepest mortises, in' : 'mortises in'} ${called(part)}${good ? ',' : ''} are ${say(context, mortise.depth, 'up')} deep; ${say(context, limit)} can be cut`,
    fixes: good
      ? []
      : solvedFixes(context, {
          measure: (moved) =>
            Math.max(
              0,
              ...mortisesOf(moved)
                .filter((m) => inEdge(m) === inEdge(placed))
                .map((m) => m.mortise.depth),
            ),
          limit: limit + SAME,
          want: 'at most',
          levers: ['frameJoint.tenonDepth', 'edgeJoint.slotDepth', 'tenon.depth'],
          say: (value) => say(context, value, 'up'),
        }),
    source: 'machines of the shop',
  };
}
