import type { Frame } from '../../lib/geometry/frame.ts';
import type { Assembly } from '../../lib/model/assembly.ts';
import { composition } from '../../lib/model/composition.ts';
import type { Feature } from '../../lib/model/feature.ts';
import { board } from '../../lib/parts/board.ts';

/** Lying flat, grain along x: the corner of a board at a place. */
export const flat = (x: number, y: number, z: number): Frame => ({ origin: [x, y, z], x: [1, 0, 0], y: [0, 1, 0] });

export interface Trial {
  readonly id: string;
  readonly at: Frame;
  /** mm; default 200 x 100 x 30. */
  readonly size?: readonly [length: number, width: number, thickness: number];
  readonly features?: readonly Feature[];
}

/** Boards where they are put, marked X1, X2 …, and nothing that joins them. */
export function boards(...trials: readonly Trial[]): Assembly {
  const c = composition('Trial piece');
  trials.forEach(({ id, at, size = [200, 100, 30], features = [] }, k) => {
    const [length, width, thickness] = size;
    c.place(
      board({ kind: 'side', name: 'board', id, mark: `X${k + 1}`, wood: 'cherry', length, width, thickness, features }),
      at,
    );
  });
  return c.done();
}
