/** @module The browser app's files; an address that is none of them is a place in the app. */
import { readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { extname, join, sep } from 'node:path';
import { Hono } from 'hono';

const kinds: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.txt': 'text/plain; charset=utf-8',
};

/** Every file by its address: what is not listed here cannot be asked for, by whatever path. */
const listed = (folder: string): ReadonlyMap<string, string> => {
  try {
    const entries = readdirSync(folder, { recursive: true, withFileTypes: true });
    const paths = entries
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name));
    return new Map(paths.map((path) => [path.slice(folder.length).replaceAll(sep, '/'), path]));
  } catch {
    return new Map();
  }
};

const notBuilt = `<!doctype html><html lang="en"><meta charset="utf-8"><title>Endfloat</title>
<p>The browser app is not built yet. Run <code>npm start</code>, or <code>npm run build:web</code> and start again.</p></html>`;

/** Names with a hash of their content in them never change. */
const lasting = (address: string): boolean => address.startsWith('/assets/');

export const webFiles = (folder: string): Hono => {
  let files = listed(folder);
  const routes = new Hono();
  /** The app may be built anew while it is served: what is not known is looked for once more. */
  const find = (address: string): string | undefined => {
    if (!files.has(address)) files = listed(folder);
    return files.get(address);
  };
  routes.get('*', async (context) => {
    const own = find(context.req.path === '/' ? '/index.html' : context.req.path);
    // A missing picture or script is missing; only places in the app fall back to its page.
    if (own === undefined && extname(context.req.path) !== '')
      return context.text('there is no such file', 404);
    const asked = own === undefined || context.req.path === '/' ? '/index.html' : context.req.path;
    const path = own ?? find(asked);
    if (path === undefined) return context.html(notBuilt, 503);
    context.header('content-type', kinds[extname(path)] ?? 'application/octet-stream');
    context.header('cache-control', lasting(asked) ? 'public, max-age=31536000, immutable' : 'no-cache');
    return context.body(await readFile(path));
  });
  return routes;
};
