import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Assets } from '../../lib/build/assets.ts';

const file = (weight: 400 | 700): Uint8Array =>
  readFileSync(fileURLToPath(import.meta.resolve(`@fontsource/noto-sans/files/noto-sans-latin-${weight}-normal.woff`)));

/** Noto Sans (SIL Open Font License) from its package: what PDF sheets are lettered in. */
export const readFonts = (): Assets['fonts'] => ({ regular: file(400), bold: file(700) });
