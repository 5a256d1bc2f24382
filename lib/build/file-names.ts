import type { Part } from '../model/part.ts';

/** `<mark>-<part id with "/" as "-">`, lower case: "b1-frame-a-bearer". */
export const pieceFileName = (part: Part): string => `${part.mark}-${part.id.replaceAll('/', '-')}`.toLowerCase();
