/** `840 bytes`, `12 kB`, `1.2 MB` */
export function bytesText(bytes: number): string {
  if (bytes < 1000) return `${bytes} ${bytes === 1 ? 'byte' : 'bytes'}`;
  return bytes < 1e6 ? `${Math.round(bytes / 1e3)} kB` : `${(bytes / 1e6).toFixed(1)} MB`;
}

/** `0.09 s` */
export const secondsText = (seconds: number): string => `${seconds.toFixed(seconds < 1 ? 2 : 1)} s`;

/** `1 file`, `31 files` */
export const counted = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? '' : 's'}`;
