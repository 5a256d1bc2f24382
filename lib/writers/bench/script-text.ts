/** Data as it may stand inside a script element: no character of it can end the element. */
export const scriptJson = (data: object): string => JSON.stringify(data).replaceAll('<', '\\u003c');

/**
 * A script as it may stand inside a script element.
 *
 * @throws RangeError when it holds what would end the element or hide its end; a bundler writes such text with escapes.
 */
export function scriptText(script: string): string {
  const bad = /<\/script|<!--/i.exec(script);
  if (bad) throw new RangeError(`a script cannot hold ${JSON.stringify(bad[0])} (at character ${bad.index})`);
  return script;
}
