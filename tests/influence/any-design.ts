import type { Design } from '../../lib/build/design.ts';
import type { Fields, ValuesOf } from '../../lib/params/spec.ts';

// biome-ignore lint/suspicious/noExplicitAny: designs of any parameters are treated alike
export type AnyDesign = Design<any>;
export type AnyValues = ValuesOf<Fields>;
