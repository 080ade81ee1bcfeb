/** @module A drawing as a tree of plain data, and the tree as text for a page or a file. */

export interface SvgNode {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string | number>>;
  readonly children: readonly (SvgNode | string)[];
}

export const svg = (
  tag: string,
  attributes: SvgNode['attributes'] = {},
  ...children: readonly (SvgNode | string)[]
): SvgNode => ({ tag, attributes, children });

/** XML 1.0 has no place for control characters, not even escaped. */
const legal = (text: string): string =>
  [...text]
    .filter((sign) => {
      const code = sign.codePointAt(0) ?? 0;
      return code >= 0x20
        ? code < 0xd800 || (code > 0xdfff && code < 0xfffe) || code > 0xffff
        : code === 9 || code === 10;
    })
    .join('');

const escaped = (text: string): string =>
  legal(text)
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');

/** The tree as SVG text, to be set into a page or (with its namespace, which the root carries) kept as a file. */
export const svgText = (node: SvgNode | string): string => {
  if (typeof node === 'string') return escaped(node);
  const attributes = Object.entries(node.attributes)
    .map(([name, value]) => ` ${name}="${escaped(String(value))}"`)
    .join('');
  return `<${node.tag}${attributes}>${node.children.map(svgText).join('')}</${node.tag}>`;
};

/** The root of a drawing: named and described for a reader who does not see it. */
export const sheetOf = (
  size: { readonly width: number; readonly height: number },
  words: { readonly title: string; readonly description: string },
  ...children: readonly (SvgNode | string)[]
): SvgNode =>
  svg(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${round(size.width)} ${round(size.height)}`,
      role: 'img',
      'aria-label': words.title,
      'font-family': "'Atkinson Hyperlegible Next Variable', 'Atkinson Hyperlegible Next', sans-serif",
    },
    svg('desc', {}, words.description),
    ...children,
  );

/** Hundredths are finer than any screen or plotter shows; longer figures only swell the page. */
export const round = (value: number): number => Math.round(value * 100) / 100;
