import type { PanelBody } from '../../model/body.ts';
import type { Part } from '../../model/part.ts';
import type { CheckContext } from './check.ts';

export type MeasuredTop = NonNullable<CheckContext['measured']>;

/** The top as designed. */
export const topIn = ({ nominal }: MeasuredTop): Part & { readonly body: PanelBody } =>
  nominal.parts.find((part): part is Part & { body: PanelBody } => part.kind === 'top' && part.body.kind === 'panel')!;
