/** @module Words into HTML: whatever a person typed stays words. */

const written: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

// A page may not hold control characters; a lone half of a pair would not survive being written as UTF-8.
const unwritable = /[\p{Cc}\p{Cs}]/gu;

export const escaped = (text: string): string =>
  text.replace(unwritable, '\ufffd').replace(/[&<>"']/g, (sign) => written[sign] ?? sign);

/** Words typed by people may be written from right to left: `bdi` keeps them from turning round what stands beside. */
export const words = (text: string): string => `<bdi>${escaped(text)}</bdi>`;

/** JSON that stands inside a script element without being able to end it. */
export const scriptJson = (value: unknown): string =>
  JSON.stringify(value)
    .replaceAll('<', '\\u003c')
    .replaceAll('>', '\\u003e')
    .replaceAll('\u2028', '\\u2028')
    .replaceAll('\u2029', '\\u2029');
