import { inRange } from './in-range.ts';

/**
 * What is lost between the yard and the parts. `yield`: the percent of the bought wood that ends in parts. `addOn`: the
 * percent added to the net. They are not the same: 30 % lost asks for 42.9 % more, not for 30 %.
 */
export interface Waste {
  readonly basis: 'yield' | 'addOn';
  readonly percent: number;
}

/** Board feet to buy for a net quantity. */
export function boardFeetToBuy(netBoardFeet: number, waste: Waste): number {
  if (!(netBoardFeet >= 0 && netBoardFeet < Infinity)) {
    throw new RangeError(`net quantity is ${netBoardFeet} board feet; it must be 0 or more`);
  }
  if (waste.basis === 'addOn') return netBoardFeet * (1 + inRange('add-on', waste.percent, 0, 1000, ' %') / 100);
  return (netBoardFeet * 100) / inRange('yield', waste.percent, 1, 100, ' %');
}

/** The same loss on the other basis: a yield of 70 % is an add-on of 42.9 %. */
export function otherBasis(waste: Waste): Waste {
  const factor = boardFeetToBuy(1, waste);
  return waste.basis === 'addOn'
    ? { basis: 'yield', percent: 100 / factor }
    : { basis: 'addOn', percent: (factor - 1) * 100 };
}
