import { partOf } from '../../model/assembly.ts';
import type { PartId, PartKind } from '../../model/part.ts';
import type { BaseFrame } from './base-frame.ts';
import type { CheckContext } from './check.ts';
import { pushedBase, type Way } from './pushed-base.ts';
import type { FrameMember } from './solvers/frame-model.ts';
import { GLUED_GRIP } from './solvers/joint-stiffness.ts';

/** A piece made this much stiffer no longer gives: what is left tells how much it gave. */
const RIGID = 1e4;

const NAMES: Partial<{ readonly [K in PartKind]: string }> = {
  post: 'the posts',
  panelLeg: 'the panel legs',
  rail: 'the rails',
  bearer: 'the bearers',
  stretcher: 'the stretchers',
  foot: 'the feet',
};

/** What gives most under a push, in words: the joints, or one kind of piece, found by making each rigid in turn. */
export function mostFrom(context: CheckContext, value: number, way: Way): string {
  const { assembly, loads } = context;
  const without = (change: (base: BaseFrame) => BaseFrame): number => {
    const pushed = pushedBase(assembly, loads.push, GLUED_GRIP.value.low, change);
    return pushed.kind === 'solved' ? value - pushed.sway[way] : 0;
  };
  const shares = [
    { words: 'the joints', share: without(rigidJoints) },
    ...Object.entries(NAMES).map(([kind, words]) => ({
      words,
      share: without((base) => stiffened(base, (id) => partOf(assembly, id).kind === kind)),
    })),
  ];
  return shares.reduce((a, b) => (b.share > a.share ? b : a)).words;
}

const rigidJoints = (base: BaseFrame): BaseFrame => changed(base, () => ({ springs: { from: {}, to: {} } }));

const stiffened = (base: BaseFrame, which: (part: PartId) => boolean): BaseFrame =>
  changed(base, ({ section }, part) => {
    if (!which(part)) return {};
    const { area, iy, iz, j } = section;
    return { section: { area: area * RIGID, iy: iy * RIGID, iz: iz * RIGID, j: j * RIGID } };
  });

/** The same base with the members of its pieces changed; links to floor and top stay. */
const changed = (base: BaseFrame, change: (member: FrameMember, part: PartId) => Partial<FrameMember>): BaseFrame => ({
  ...base,
  frame: {
    ...base.frame,
    members: base.frame.members.map((m) => {
      const part = base.pieces.get(m.name);
      return part === undefined ? m : { ...m, ...change(m, part) };
    }),
  },
});
