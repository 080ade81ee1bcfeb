/** @module The layers, in the one order in which data flows: a folder imports only from those above it. */

export interface Layer {
  /** The folder under src. */
  readonly folder: string;
  /** Pure: no clock, randomness, input or output, Node or browser. */
  readonly pure: boolean;
}

const pure = (folder: string): Layer => ({ folder, pure: true });
const edge = (folder: string): Layer => ({ folder, pure: false });

export const layers: readonly Layer[] = [
  pure('quantity'),
  pure('engine'),
  pure('measure'),
  pure('reckon'),
  pure('plan'),
  pure('work'),
  pure('journal'),
  pure('picture'),
  pure('register'),
  pure('job'),
  pure('drawing'),
  pure('record'),
  edge('solver'),
  edge('spreadsheet'),
  edge('store'),
  edge('server'),
  edge('terminal'),
  edge('web'),
];

/** The app in the browser reaches the store and the server over HTTP only. */
const notForWeb = ['store', 'server', 'terminal'];

/** What the pure folders may use from others: plain computation, the same everywhere. */
export const purePackages: readonly string[] = ['zod', 'yaml', 'canonicalize', '@noble/hashes', 'uuid', 'qr'];

export const pureFolders: readonly string[] = layers
  .filter((layer) => layer.pure)
  .map((layer) => layer.folder);

/** The folders that a layer may import from: those above it, and itself. */
export const reachable = (folder: string): readonly string[] => {
  const above = layers.slice(0, layers.findIndex((layer) => layer.folder === folder) + 1);
  return above.map((layer) => layer.folder).filter((name) => folder !== 'web' || !notForWeb.includes(name));
};
