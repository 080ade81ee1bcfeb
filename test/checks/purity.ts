/**
 * @module What would make the core give another answer on another machine or day, beyond what the compiler
 * (no Node, no browser) and the linter (no clock, no globals) already refuse there.
 */
import ts from 'typescript';
import type { TextFile } from './files.ts';
import { at, parse, walk } from './syntax.ts';

const localeReaders = /^(localeCompare|toLocale\w+)$/;

const breach = (node: ts.Node): string | undefined => {
  if (ts.isPropertyAccessExpression(node)) {
    if (node.expression.getText() === 'Math' && node.name.text === 'random')
      return 'Math.random: take the number in';
    if (localeReaders.test(node.name.text))
      return `${node.name.text} reads the machine's locale: compare or write out by code`;
  }
  if (ts.isElementAccessExpression(node) && node.expression.getText() === 'Math')
    return 'Math[…] hides what is called';
  if (ts.isMetaProperty(node)) return 'import.meta: the core does not know where it lies';
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
    return 'import(): import at the top';
  if (
    ts.isIdentifier(node) &&
    (node.text === 'eval' || node.text === 'Function') &&
    !ts.isTypeReferenceNode(node.parent)
  ) {
    return `${node.text}: text is not run as code`;
  }
  return undefined;
};

/** `path:line: what` for each breach. */
export const impurities = (file: TextFile): readonly string[] => {
  const source = parse(file);
  return [...walk(source)].flatMap((node) => {
    const what = breach(node);
    return what === undefined ? [] : [`${at(source, node)}: ${what}`];
  });
};
