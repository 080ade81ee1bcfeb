/** @module Reading a source as a tree, for the rules that text alone cannot settle. */
import ts from 'typescript';
import type { TextFile } from './files.ts';

export const parse = ({ path, text }: TextFile): ts.SourceFile =>
  ts.createSourceFile(
    path,
    text,
    ts.ScriptTarget.Latest,
    true,
    path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS,
  );

/** Every node of the tree, parents first. */
export function* walk(node: ts.Node): Generator<ts.Node> {
  yield node;
  for (const child of node.getChildren()) if (!ts.isJSDoc(child)) yield* walk(child);
}

/** `path:line` of a node, for a message. */
export const at = (source: ts.SourceFile, node: ts.Node): string =>
  `${source.fileName}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1}`;
