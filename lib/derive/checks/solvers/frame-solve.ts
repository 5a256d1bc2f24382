import { type AssembledFrame, assembleFrame } from './frame-assemble.ts';
import { endForces, namedEnds, nodeLoads, reactions } from './frame-forces.ts';
import { drives, nameLoose } from './frame-loose.ts';
import type { LoadCase, SpaceFrame } from './frame-model.ts';
import { movesOf } from './frame-moves.ts';
import type { CaseResult, FrameResult } from './frame-result.ts';
import { type Factored, factor } from './frame-skyline.ts';

/**
 * Movements, joint moments and reactions of a frame under some load cases, the stiffness factored once; or, when
 * something moves though nothing bends, what it is.
 *
 * Nodes that turn on the spot (all their joints are hinges) do no harm unless a load turns them.
 *
 * @throws RangeError when a name is missing or used twice, or a member cannot be built.
 */
export function solveFrame(frame: SpaceFrame, cases: readonly LoadCase[]): FrameResult {
  const assembled = assembleFrame(frame);
  const factored = factor(assembled.stiffness);
  const modes = factored.loose.map((mode) => nameLoose(frame.nodes, assembled.unknown, mode));
  const loads = cases.map((load) => nodeLoads(frame, assembled, load));
  const onUnknowns = loads.map((load) => freeLoads(assembled, load));
  const runaway = modes.filter((m) => !m.spin || onUnknowns.some((load) => drives(load, m)));
  if (runaway.length > 0) return { kind: 'mechanism', loose: runaway.map((m) => m.loose) };
  return {
    kind: 'solved',
    cases: cases.map(({ name }, k) => solveCase(frame, assembled, factored, name, loads[k]!, onUnknowns[k]!)),
    spins: modes.map((m) => m.loose),
  };
}

function solveCase(
  frame: SpaceFrame,
  assembled: AssembledFrame,
  factored: Factored,
  name: string,
  loads: Float64Array,
  x: Float64Array,
): CaseResult {
  factored.solve(x);
  const forces = endForces(assembled, x);
  return {
    name,
    moves: movesOf(frame.nodes, assembled.unknown, x),
    ends: namedEnds(frame, forces),
    reactions: reactions(frame, assembled, forces, loads),
  };
}

/** The loads on the unknowns; those on held ways go straight to what holds them. */
function freeLoads({ unknown, stiffness }: AssembledFrame, loads: Float64Array): Float64Array {
  const x = new Float64Array(stiffness.size);
  unknown.forEach((u, at) => {
    if (u >= 0) x[u] = loads[at]!;
  });
  return x;
}
