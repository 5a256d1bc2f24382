import type { Check, CheckContext } from '../../lib/derive/checks/check.ts';
import type { Finding } from '../../lib/model/finding.ts';
import { parseLength } from '../../lib/units/parse-length.ts';

export interface AppliedFix {
  readonly fix: string;
  /** "5.9 mm (15/64 in)". */
  readonly brings: string;
  /** What the check says once the parameter is moved as the fix tells. */
  readonly after: Finding;
  /** The same one step short of it; absent when that is the piece as it stands. */
  readonly short?: Finding;
}

const FIX = /^(\S+) (.+) brings (.+)$/;

/** Every fix of a finding that moves a parameter, carried out; and all but its last step. */
export function applied(check: Check, context: CheckContext, finding: Finding): AppliedFix[] {
  const tune = context.tune!;
  const again = (path: string, value: number): Finding => {
    const moved = tune.moved(path, value);
    if (!moved) throw new Error(`${path} ${value} is refused`);
    const alike = check.run(moved).filter((f) => isSame(f, finding));
    const same = alike.length === 1 ? alike : alike.filter((f) => f.load === finding.load);
    if (same.length !== 1) throw new Error(`${finding.check} is found ${same.length} times at ${path} ${value}`);
    return same[0]!;
  };
  return finding.fixes.flatMap((fix) => {
    const [, path, text, brings] = FIX.exec(fix) ?? [];
    if (path === undefined || text === undefined || brings === undefined) return [];
    const [now, step] = [tune.value(path)!, tune.step(path)];
    const value = /^\d+$/.test(text) ? Number(text) : parseLength(text);
    const less = value > now ? value - step : value + step;
    const stands = value > now ? less <= now : less >= now;
    return [{ fix, brings, after: again(path, value), ...(stands ? {} : { short: again(path, less) }) }];
  });
}

/** The same question of the same place; of a joint or a bearer, which may be another one alike after a move. */
const isSame = (a: Finding, b: Finding): boolean =>
  a.check === b.check && (a.where === b.where || (a.where === undefined && a.part === b.part));
