import type { Assembly } from '../../model/assembly.ts';
import type { PartId } from '../../model/part.ts';
import { type BaseFrame, baseFrame } from './base-frame.ts';
import type { CaseResult, Loose } from './solvers/frame-result.ts';
import { solveFrame } from './solvers/frame-solve.ts';
import { type TableModel, tableModel } from './table-model.ts';

/** Ways in which a table is pushed level at its top. */
export const WAYS = ['along', 'across'] as const;
export type Way = (typeof WAYS)[number];

/** A base under a level push at the height of the show face, shared by its frames. */
export type PushedBase =
  | {
      readonly kind: 'solved';
      readonly model: TableModel;
      readonly base: BaseFrame;
      readonly cases: { readonly [W in Way]: CaseResult };
      /** mm, the greatest movement of the top in the direction of the push. */
      readonly sway: { readonly [W in Way]: number };
    }
  | {
      readonly kind: 'mechanism';
      readonly model: TableModel;
      /** The piece that moves most. */
      readonly part: PartId;
      /** Whether the top goes along the table with it. */
      readonly lengthwise: boolean;
    }
  | { readonly kind: 'unknown'; readonly needs: string };

/** Part of a loose movement that is more than rounding. */
const SEEN = 1e-3;

/**
 * The movements and joint moments of a base under a level push.
 *
 * @param push N, on the whole table.
 * @param grip stiffness of its joints, as share of E_T b d².
 * @param change what else to try on the frame: stiffer joints, stiffer pieces.
 */
export function pushedBase(
  assembly: Assembly,
  push: number,
  grip: number,
  change: (base: BaseFrame) => BaseFrame = (base) => base,
): PushedBase {
  const model = tableModel(assembly);
  if (!model) return { kind: 'unknown', needs: 'a top of one panel on a base' };
  const made = baseFrame(assembly, model, grip);
  if (!made.base) return { kind: 'unknown', needs: made.missing };
  const base = change(made.base);
  if (base.pushed.length === 0) return { kind: 'unknown', needs: 'screws between base and top' };
  const share = push / base.pushed.length;
  const result = solveFrame(base.frame, [
    { name: 'along', loads: base.pushed.map((node) => ({ node, force: [share, 0, 0] })) },
    { name: 'across', loads: base.pushed.map((node) => ({ node, force: [0, share, 0] })) },
  ]);
  if (result.kind === 'mechanism') {
    const carriesTop = ({ moves }: Loose): boolean =>
      base.pushed.some((node) => Math.abs(moves.get(node)!.shift[0]) > SEEN);
    const lengthwise = result.loose.find(carriesTop);
    const { node } = lengthwise ?? result.loose[0]!;
    return { kind: 'mechanism', model, part: base.owners.get(node)!, lengthwise: lengthwise !== undefined };
  }
  const [along, across] = [result.cases[0]!, result.cases[1]!];
  const most = (of: CaseResult, axis: 0 | 1): number =>
    Math.max(...base.pushed.map((node) => Math.abs(of.moves.get(node)!.shift[axis])));
  return {
    kind: 'solved',
    model,
    base,
    cases: { along, across },
    sway: { along: most(along, 0), across: most(across, 1) },
  };
}
