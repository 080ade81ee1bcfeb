/**
 * @module The papers of a sum: what an exported function of the reckonings must say in its doc comment.
 *
 * A step of a sum that lies in a file of its own is marked `@internal`; it needs no papers, and nothing
 * outside the reckonings may call it.
 */
import { dirname, join } from 'node:path/posix';
import ts from 'typescript';
import type { TextFile } from './files.ts';
import { at, parse } from './syntax.ts';

interface Sum {
  readonly name: string;
  readonly where: string;
  readonly statement: ts.Statement;
  readonly parameters: readonly string[];
}

const isExported = (statement: ts.Statement): boolean =>
  ts.canHaveModifiers(statement) &&
  (ts.getModifiers(statement) ?? []).some((modifier) => modifier.kind === ts.SyntaxKind.ExportKeyword);

const isFunction = (node: ts.Node | undefined): node is ts.ArrowFunction | ts.FunctionExpression =>
  node !== undefined && (ts.isArrowFunction(node) || ts.isFunctionExpression(node));

const parameterNames = (parameters: ts.NodeArray<ts.ParameterDeclaration>): readonly string[] =>
  parameters.map(({ name }) => (ts.isIdentifier(name) ? name.text : ''));

const sumsOf = (source: ts.SourceFile, statement: ts.Statement): readonly Sum[] => {
  const sum = (name: string, parameters: ts.NodeArray<ts.ParameterDeclaration>): Sum => ({
    name,
    where: at(source, statement),
    statement,
    parameters: parameterNames(parameters),
  });
  if (ts.isFunctionDeclaration(statement))
    return [sum(statement.name?.text ?? 'default', statement.parameters)];
  if (!ts.isVariableStatement(statement)) return [];
  return statement.declarationList.declarations.flatMap(({ name, initializer }) =>
    isFunction(initializer) ? [sum(name.getText(source), initializer.parameters)] : [],
  );
};

const tagText = (tag: ts.JSDocTag): string => (ts.getTextOfJSDocComment(tag.comment) ?? '').trim();

const missing = ({ statement, parameters }: Sum): readonly string[] => {
  const tags = ts.getJSDocTags(statement);
  const has = (name: string): boolean => tags.some((tag) => tag.tagName.text === name && tagText(tag) !== '');
  const described = tags.filter(ts.isJSDocParameterTag).filter((tag) => tagText(tag) !== '');
  const undescribed = parameters.filter((name, index) =>
    name === '' ? described.length <= index : !described.some((tag) => tag.name.getText() === name),
  );
  return [
    ...undescribed.map((name) => `@param ${name}`.trim()),
    ...['returns', 'source', 'example'].filter((name) => !has(name)).map((name) => `@${name}`),
  ];
};

const isInternal = ({ statement }: Sum): boolean =>
  ts.getJSDocTags(statement).some((tag) => tag.tagName.text === 'internal');

const exportedSums = (file: TextFile): readonly Sum[] => {
  const source = parse(file);
  return source.statements.filter(isExported).flatMap((statement) => sumsOf(source, statement));
};

/** `path:line name lacks …` for each sum of a file whose papers are not complete. */
export const missingPapers = (file: TextFile): readonly string[] =>
  exportedSums(file)
    .filter((sum) => !isInternal(sum))
    .flatMap((sum) => {
      const lacks = missing(sum);
      return lacks.length === 0 ? [] : [`${sum.where} ${sum.name} lacks ${lacks.join(', ')}`];
    });

/** `path#name` for everything that a file imports by name from the project. */
const imported = (file: TextFile): readonly string[] =>
  parse(file).statements.flatMap((statement) => {
    if (!ts.isImportDeclaration(statement) || !ts.isStringLiteral(statement.moduleSpecifier)) return [];
    const target = join(dirname(file.path), statement.moduleSpecifier.text);
    const names = statement.importClause?.namedBindings;
    return names && ts.isNamedImports(names)
      ? names.elements.map((element) => `${target}#${(element.propertyName ?? element.name).text}`)
      : [`${target}#*`];
  });

/** `path imports name` for each step of a sum that something outside the reckonings calls. */
export const internalsCalled = (
  reckonings: readonly TextFile[],
  others: readonly TextFile[],
): readonly string[] => {
  const internals = new Set(
    reckonings.flatMap((file) =>
      exportedSums(file)
        .filter(isInternal)
        .map(({ name }) => `${file.path}#${name}`),
    ),
  );
  return others.flatMap((file) =>
    imported(file)
      .filter((name) => internals.has(name))
      .map((name) => `${file.path} imports ${name.split('#')[1]}, which is internal to its sum`),
  );
};
