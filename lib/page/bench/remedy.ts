import { readParam } from '../../params/read-param.ts';
import type { Spec } from '../../params/spec.ts';
import type { Remedy } from './findings-panel.ts';

/** `frame.inset 13 7/8 in brings 165 kg` */
const FIX = /^([a-z][a-zA-Z0-9.]*) (.+?) brings /;

/** What a fix would change, when it names a parameter and a value of it. */
export function remedyOf(spec: Spec, fix: string): Remedy | undefined {
  const [, path = '', text = ''] = FIX.exec(fix) ?? [];
  const param = spec.table.get(path);
  return param && !readParam(param, text).faults ? { path, text } : undefined;
}
