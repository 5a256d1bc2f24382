import { MM2_PER_DM2 } from './prices.ts';
import type { StripModel } from './strip-model.ts';

/** No plan costs more, whatever it looks like: a search that reaches it without a plan has shown that there is none. */
export function worstCost(model: StripModel): number {
  const { prices, strips, problem, boards } = model;
  const { of } = prices;
  let cost = of.reserve * problem.settings.reserveCap + of.rings * strips;
  boards.forEach((board, i) => {
    const shown = Math.max(...[0, 1].map((flip) => model.showCost[2 * i + flip]!).filter(Number.isFinite), 0);
    const area = board.defects.reduce((sum, d) => sum + (d.to - d.from) * (d.far - d.near), 0) / MM2_PER_DM2;
    cost += shown + model.bottomCost[i]! + 2 * of.undersideDefects * area + (of.symmetry * board.width) / 10;
  });
  const tones = [...model.tone];
  const range = tones.length === 0 ? 0 : Math.max(...tones) - Math.min(...tones);
  return cost + of.tone * range * strips + STEPS_OF_ORDER * Object.values(of).reduce((sum, price) => sum + price, 0);
}

/** Room for what rounding to steps adds. */
const STEPS_OF_ORDER = 1;
