/**
 * So many values from one end to the other, both included and evenly apart; those between are rounded to what a maker
 * can set, 1/64 in or 0.1 mm. Undefined when two would be the same.
 */
export function rangeSteps(from: number, to: number, count: number, unit: string): readonly number[] | undefined {
  const values = Array.from({ length: count }, (_, k) => {
    if (k === 0) return from;
    return k === count - 1 ? to : onGrid(from + ((to - from) * k) / (count - 1), unit);
  });
  const way = Math.sign(to - from);
  return values.every((value, k) => k === 0 || (value - values[k - 1]!) * way > 0) ? values : undefined;
}

function onGrid(value: number, unit: string): number {
  // 1/64 in is 127/320 mm: multiply first, divide once.
  if (unit === 'in') return (Math.round((value * 320) / 127) * 127) / 320;
  return Number(value.toFixed(unit === 'mm' ? 1 : 6));
}
