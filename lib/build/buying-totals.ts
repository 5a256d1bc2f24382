import { marksText } from '../derive/cut-list/building-order.ts';
import type { BuyingList } from '../derive/lumber/buying-list.ts';
import type { Shop } from '../shop/shop.ts';
import { formatNumber } from '../units/format-length.ts';
import { cellsOf, feet, money } from './buying-cells.ts';

/** The rows under the classes: the sum of what stands there, made-up visits, and the top alone. */
export function buyingTotals(list: BuyingList, shop: Shop): string[][] {
  const { classes, total, top } = list;
  const { enough } = total;
  const visits = enough && {
    row: 'visits',
    feet: feet(enough.in80),
    remarks: `of all classes together, in whole boards; ${feet(enough.in50)} in 50, ${feet(enough.in95)} in 95`,
  };
  return [
    cellsOf({
      row: 'total',
      feet: feet(...classes.map((need) => need.boardFeet)),
      yield: feet(...classes.map((need) => need.toBuyByYield)),
      addOn: feet(...classes.map((need) => need.toBuyByAddOn)),
      price: money(...classes.map((need) => need.price)),
      remarks: totalRemarks(list, shop),
    }),
    ...(visits ? [cellsOf(visits)] : []),
    ...(top.boardFeet > 0
      ? [
          cellsOf({
            row: 'top alone',
            feet: feet(top.boardFeet),
            yield: feet((top.boardFeet * total.toBuyByYield) / total.boardFeet),
            addOn: feet((top.boardFeet * total.toBuyByAddOn) / total.boardFeet),
            remarks: topRemark(list),
          }),
        ]
      : []),
  ];
}

/** What a total does not tell by itself: parts that are not in it, and what its price is for. */
function totalRemarks({ rows, total }: BuyingList, shop: Shop): string {
  const { basis, yield: share, addOn } = shop.lumber;
  const out = rows.filter(({ lumber }) => !lumber).map(({ name, marks }) => `${name} ${marksText(marks)}`);
  const [priced, how] =
    basis === 'yield'
      ? [total.toBuyByYield, `${formatNumber(share, 1)} % yield`]
      : [total.toBuyByAddOn, `${formatNumber(addOn, 1)} % added`];
  const { enough } = total;
  return [
    ...(out.length > 0 ? [`without ${out.join(', ')}: nothing that the yard has is thick enough`] : []),
    ...(enough && enough.in80 > priced
      ? [`the price is for what is to buy at ${how}; made-up visits needed more: ${feet(enough.in80)} in 80 of 100`]
      : []),
    'the two sums differ: a loss of 30 % asks for 42.9 % more, not for 30 %',
  ].join('; ');
}

function topRemark({ top }: BuyingList): string {
  const { boardFeet, allThickest } = top;
  if (allThickest === undefined) return 'both boards of a strip counted';
  const said = `${feet(allThickest)} all in its thickest class`;
  const saved = (1 - boardFeet / allThickest) * 100;
  return saved < 0.05 ? said : `${said}: the zones save ${formatNumber(saved, 1)} %`;
}
