/** @module The rules on imports, made from the list of layers, and the cruise over the sources that applies them. */
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import { layers, pureFolders, purePackages, reachable } from './layers.ts';

type Forbidden = NonNullable<
  NonNullable<NonNullable<Parameters<typeof cruise>[1]>['ruleSet']>['forbidden']
>[number];

const anyOf = (names: readonly string[]): string => `(${names.join('|')})`;
const pureSource = `^src/${anyOf(pureFolders)}/`;

const onlyFromAbove = layers.map(
  ({ folder }): Forbidden => ({
    name: `${folder} imports only from the folders above it`,
    severity: 'error',
    from: { path: `^src/${folder}/` },
    to: { path: '^src/', pathNot: `^src/${anyOf(reachable(folder))}/` },
  }),
);

const forbidden: readonly Forbidden[] = [
  ...onlyFromAbove,
  { name: 'no import goes in a circle', severity: 'error', from: {}, to: { circular: true } },
  {
    name: 'the pure folders know no Node',
    severity: 'error',
    from: { path: pureSource },
    to: { dependencyTypes: ['core'] },
  },
  {
    name: 'the pure folders use only the packages listed for them',
    severity: 'error',
    from: { path: pureSource },
    to: { path: 'node_modules/', pathNot: `node_modules/${anyOf(purePackages)}/` },
  },
  {
    name: 'the sources import only sources',
    severity: 'error',
    from: { path: '^src/(?!terminal/)' },
    to: { pathNot: '^src/|node_modules/', dependencyTypesNot: ['core'] },
  },
  {
    name: 'the commands import only sources and the demo workshop',
    severity: 'error',
    from: { path: '^src/terminal/' },
    to: { pathNot: '^src/|^demo/|node_modules/', dependencyTypesNot: ['core'] },
  },
  {
    name: 'every source lies in a layer',
    severity: 'error',
    from: { path: `^src/(?!${anyOf(layers.map((layer) => layer.folder))}/)` },
    to: {},
  },
  { name: 'every import is found', severity: 'error', from: {}, to: { couldNotResolve: true } },
];

export interface ImportReport {
  /** Source files read. */
  readonly modules: readonly string[];
  /** `rule: from -> to` for each import that breaks a rule. */
  readonly broken: readonly string[];
}

/** Reads every import below `src` in a folder, imports of types included. */
export const readImports = async (baseDir: string): Promise<ImportReport> => {
  const { output } = await cruise(
    ['src'],
    {
      baseDir,
      ruleSet: { forbidden: [...forbidden] },
      validate: true,
      tsPreCompilationDeps: true,
      doNotFollow: { path: 'node_modules' },
      exclude: { path: '\\.test\\.tsx?$' },
    },
    {
      extensions: ['.ts', '.tsx', '.js', '.mjs', '.json', '.css'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'browser', 'node', 'default'],
    },
  );
  const { modules, summary } = output as ICruiseResult;
  return {
    modules: modules.map((module) => module.source).filter((source) => source.startsWith('src/')),
    broken: summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`),
  };
};
