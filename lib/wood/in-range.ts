/** Refuses a value outside its range, both ends included; `what` names the value and `unit` follows each number. */
export function inRange(what: string, value: number, low: number, high: number, unit: string): number {
  if (!(value >= low && value <= high)) {
    throw new RangeError(`${what} is ${value}${unit}; it must be ${low}${unit} to ${high}${unit}`);
  }
  return value;
}

/** Refuses what is not a positive finite number; `unit` follows the number. */
export function positive(what: string, value: number, unit: string): number {
  if (!(value > 0 && value < Infinity)) throw new RangeError(`${what} is ${value}${unit}; it must be above 0${unit}`);
  return value;
}
