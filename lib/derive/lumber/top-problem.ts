import { heightAt } from '../../geometry/surface.ts';
import type { Assembly } from '../../model/assembly.ts';
import type { SliceBody } from '../../model/body.ts';
import type { Part } from '../../model/part.ts';
import type { Board } from '../../model/records.ts';
import type { LumberWishes } from '../../shop/lumber-wishes.ts';
import type { Shop } from '../../shop/shop.ts';
import { isRipped } from './ripped.ts';
import type { StripPin, StripProblem } from './strip-plan/strip-problem.ts';
import { STRIP_ORDER, STRIP_SETTINGS } from './strip-plan/strip-settings.ts';

/** Lengths that differ by less are the same, mm (our convention). */
const SAME = 1e-6;

type Strip = Part & { readonly body: SliceBody };

/** The strip problem of a top as designed; undefined without a top of strips. */
export function topProblem(
  nominal: Assembly,
  boards: readonly Board[],
  shop: Shop,
  wishes: LumberWishes,
  pins: readonly StripPin[],
): StripProblem | undefined {
  const slices = nominal.parts.filter((part): part is Strip => part.body.kind === 'slice');
  const shows = slices.filter(({ body }) => body.top === 0);
  const panel = shows[0]?.body.of;
  if (!panel) return undefined;
  const { kerf, jointing, edgeTrim } = shop.lumber;
  const { length, width, underside } = panel;
  // Boards shorter than the rough strips could not be trimmed at both ends; one that is pinned is taken all the same.
  const rough = Math.max(...shows.map((part) => part.rough.length));
  const pinned = new Set(pins.map(({ mark }) => mark));
  const long = boards.filter((board) => board.length >= rough - SAME || pinned.has(board.mark));
  return {
    width,
    length,
    centerThickness: heightAt(underside, length / 2, 0),
    edgeThickness: heightAt(underside, length / 2, width / 2),
    boards: long,
    settings: {
      ...STRIP_SETTINGS,
      strips: stripCount(nominal, wishes),
      layers: wishes.layers,
      kerf,
      jointing,
      edgeTrim,
      cleanUp: Math.max(...slices.map(({ rough, finished }) => rough.thickness - finished.thickness)),
      leastWidth: wishes.leastWidth,
      leastHalf: wishes.leastWidth,
      seamOnCenterLine: !shows.some(isRipped),
      rings: wishes.rings,
      preference:
        wishes.preference === 'ordered'
          ? { mode: 'ordered', order: STRIP_ORDER }
          : { mode: 'weighted', weights: wishes.weights },
    },
    ...(pins.length > 0 ? { pins } : {}),
  };
}

/** Strips side by side that are planned: as many as are wished for, or drawn; one over the center line is drawn as its two halves. */
export function stripCount({ parts }: Assembly, { strips }: Pick<LumberWishes, 'strips'>): number {
  const shows = parts.filter(({ body }) => body.kind === 'slice' && body.top === 0);
  return strips || shows.length - shows.filter(isRipped).length / 2;
}
