/** @module Imports run one way: from the list of layers, over every source. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { codeFiles, fixture, isTest, root } from './files.ts';
import { readImports } from './import-rules.ts';
import { layers, pureFolders, reachable } from './layers.ts';

const json = (file: string): unknown => JSON.parse(readFileSync(join(root, file), 'utf8'));

describe('the layers', () => {
  it('are kept by every import, imports of types included', async () => {
    const { modules, broken } = await readImports(root);
    const sources = codeFiles()
      .map((file) => file.path)
      .filter((path) => path.startsWith('src/') && !isTest(path));
    expect(sources.length).toBeGreaterThan(0);
    expect(
      sources.filter((source) => !modules.includes(source)),
      'sources that were not read',
    ).toEqual([]);
    expect(broken).toEqual([]);
  });

  it('are the folders of src, no more and no fewer', () => {
    const folders = readdirSync(join(root, 'src')).toSorted();
    expect(folders).toEqual(layers.map((layer) => layer.folder).toSorted());
  });

  it('let the browser app reach neither the store nor the server', () => {
    expect(reachable('web')).toEqual([...pureFolders, 'solver', 'spreadsheet', 'web']);
  });

  it('that are pure are compiled without Node and browser types, and linted as such', () => {
    const core = json('tsconfig.core.json') as {
      include: string[];
      compilerOptions: { lib: string[]; types: string[] };
    };
    expect(core.include).toEqual(pureFolders.map((folder) => `src/${folder}`));
    expect(core.compilerOptions).toMatchObject({ lib: ['ES2024'], types: [] });
    const biome = json('biome.json') as {
      overrides: { includes: string[]; linter: { rules: { style: object } } }[];
    };
    const strict = biome.overrides.find((override) => 'noRestrictedGlobals' in override.linter.rules.style);
    expect(strict?.includes).toEqual([...pureFolders.map((folder) => `src/${folder}/**`), '!**/*.test.ts']);
  });

  it.each([
    ['quantity imports only from the folders above it: src/quantity/upward.ts -> src/measure/size.ts'],
    ['measure imports only from the folders above it: src/measure/upward-type.ts -> src/job/event.ts'],
    ['web imports only from the folders above it: src/web/reaches-store.ts -> src/store/journal.ts'],
    ['the pure folders know no Node: src/measure/size.ts -> fs'],
    ['the sources import only sources: src/job/event.ts -> test/outside.ts'],
    ['the commands import only sources and the demo workshop: src/terminal/main.ts -> test/outside.ts'],
    ['every source lies in a layer: src/utils/drawer.ts -> src/quantity/upward.ts'],
    ['every import is found: src/utils/drawer.ts -> ./nowhere.ts'],
  ])('are seen to be broken: %s', async (breach) => {
    expect((await readImports(fixture('layers'))).broken).toContain(breach);
  });

  it('are seen to be broken by a package that the pure folders may not use', async () => {
    const { broken } = await readImports(fixture('layers'));
    const breach = /^the pure folders use only .*: src\/plan\/uses-react\.ts -> .*\/react\//;
    expect(broken.filter((text) => breach.test(text))).toHaveLength(1);
  });

  it('are seen to be broken by a circle, even of types', async () => {
    const { broken } = await readImports(fixture('layers'));
    expect(broken.filter((breach) => breach.startsWith('no import goes in a circle'))).not.toEqual([]);
  });
});
