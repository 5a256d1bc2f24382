const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** What XML 1.0 cannot hold in any spelling: control characters but tab and line ends, lone surrogates, U+FFFE, U+FFFF. */
const FORBIDDEN = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/u;

/** @throws RangeError naming a character that XML cannot hold. */
export function escapeXml(text: string): string {
  const bad = FORBIDDEN.exec(text);
  if (bad) {
    const number = bad[0].codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0');
    throw new RangeError(`U+${number} cannot be written in XML: ${JSON.stringify(text)}`);
  }
  return text.replace(/[&<>"']/g, (char) => ENTITIES[char]!);
}
