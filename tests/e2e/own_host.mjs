// A host of one's own: its folder can be changed while pages are open, and its files damaged.

import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';

const types = {
  '.css': 'text/css',
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

/** Serves `folder` until it is closed. */
export async function host(folder) {
  const it = {
    folder,
    /** What stands at an address in place of the file: text, or a status where there is none. */
    instead: new Map(),
    /** The addresses that were asked for. */
    asked: [],
  };
  const server = createServer(async ({ url }, answer) => {
    const { pathname } = new URL(url, 'http://host');
    const path = pathname === '/' ? '/index.html' : pathname;
    it.asked.push(path);
    const instead = it.instead.get(path);
    const content =
      typeof instead === 'string' ? instead : await readFile(join(it.folder, path)).catch(() => null);
    const status = typeof instead === 'number' ? instead : content === null ? 404 : 200;
    answer.writeHead(status, {
      'content-type': types[extname(path)] ?? 'text/plain',
      'cache-control': 'no-cache',
    });
    answer.end(status === 200 ? content : '');
  });
  await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
  it.url = `http://localhost:${server.address().port}/`;
  it.close = () => {
    server.closeAllConnections();
    return new Promise((closed) => server.close(closed));
  };
  return it;
}
