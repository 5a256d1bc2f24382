const DAY = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Days of the months in a year that is no leap year. */
const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Whether a text is a day of the calendar, YYYY-MM-DD. */
export function isDay(text: string): boolean {
  const [, year, month, day] = (DAY.exec(text) ?? []).map(Number);
  if (year === undefined || month === undefined || day === undefined) return false;
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const last = (DAYS[month - 1] ?? 0) + (leap && month === 2 ? 1 : 0);
  return day >= 1 && day <= last;
}
