/** @module Ways round the checks: silenced tools, and tests that are left out without saying why. */
import ts from 'typescript';
import { isTest, type TextFile } from './files.ts';
import { at, parse, walk } from './syntax.ts';

const silencers = [
  '@ts-' + 'ignore',
  '@ts-' + 'nocheck',
  'biome-' + 'ignore',
  'knip-' + 'ignore',
  'v8 ' + 'ignore',
  'c8 ' + 'ignore',
];

/** `path:line: what` for each comment that silences a tool. */
export const silencings = ({ path, text }: TextFile): readonly string[] =>
  text.split('\n').flatMap((line, index) => {
    const found = silencers.find((silencer) => line.includes(silencer));
    return found === undefined ? [] : [`${path}:${index + 1}: ${found}: mend what the tool says`];
  });

const isText = (node: ts.Node | undefined): boolean =>
  node !== undefined &&
  ((ts.isStringLiteralLike(node) && node.text.trim() !== '') || ts.isTemplateExpression(node));

const runners = new Set(['it', 'test', 'describe', 'suite']);

/** The runner at the root of `it.each(…)` or `describe.concurrent`, and so on. */
const runnerOf = (node: ts.Expression): string => {
  if (ts.isIdentifier(node)) return node.text;
  if (ts.isPropertyAccessExpression(node) || ts.isCallExpression(node)) return runnerOf(node.expression);
  return '';
};

const fault = (node: ts.Node): string | undefined => {
  if (
    ts.isIdentifier(node) &&
    !ts.isImportSpecifier(node.parent) &&
    /^(xit|xtest|xdescribe|fit|fdescribe)$/.test(node.text)
  )
    return `${node.text} leaves tests out`;
  if (!ts.isPropertyAccessExpression(node)) return undefined;
  const call = node.parent;
  // A context may be called `test` too: what it skips with is one text, where a test has a body after its title.
  const isReason =
    ts.isCallExpression(call) &&
    call.arguments.length === 1 &&
    isText(call.arguments[0]) &&
    ts.isIdentifier(node.expression);
  if (node.name.text === 'skip' && isReason) return undefined;
  if (!runners.has(runnerOf(node.expression))) {
    const says =
      !ts.isCallExpression(call) ||
      call.expression !== node ||
      call.arguments.length === 2 ||
      call.arguments.some(isText);
    return node.name.text === 'skip' && !says
      ? "skip() without a reason: skip('why'), or skip(condition, 'why')"
      : undefined;
  }
  if (/^(only|todo|fails)$/.test(node.name.text))
    return `.${node.name.text} is for the desk, not for the tree`;
  if (node.name.text === 'skip') return ".skip gives no reason: call context.skip('why') in the test";
  if (!/^(skipIf|runIf)$/.test(node.name.text)) return undefined;
  const titled =
    ts.isCallExpression(call) && ts.isCallExpression(call.parent) ? call.parent.arguments[0] : undefined;
  return titled && /\(needs .+\)/.test(titled.getText())
    ? undefined
    : `.${node.name.text} without '(needs …)' in the title`;
};

/** `path:line: what` for each test that is left out without a reason. */
export const unexplainedSkips = (file: TextFile): readonly string[] => {
  if (!isTest(file.path)) return [];
  const source = parse(file);
  return [...walk(source)].flatMap((node) => {
    const what = fault(node);
    return what === undefined ? [] : [`${at(source, node)}: ${what}`];
  });
};
