// A small server for the built page, on this machine only. Plain Node, no packages.
import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';

const KINDS = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ttf': 'font/ttf',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
};

/** Serves a folder on 127.0.0.1; answers the address and a way to end it. Port 0 takes a free one. */
export function serveFolder(folder, port = 0) {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const wanted = normalize(decodeURIComponent(pathname)).replace(/^[/\\]+/, '');
    const file = join(folder, wanted === '' ? 'index.html' : wanted);
    const isInside = file.startsWith(folder);
    const found = isInside && statSync(file, { throwIfNoEntry: false })?.isFile() === true;
    if (request.method !== 'GET' && request.method !== 'HEAD') return response.writeHead(405).end();
    if (!found) return response.writeHead(404, { 'content-type': 'text/plain' }).end('Not here.');
    response.writeHead(200, {
      'content-type': KINDS[extname(file)] ?? 'application/octet-stream',
      'x-content-type-options': 'nosniff',
      'cache-control': 'no-cache',
    });
    if (request.method === 'HEAD') return response.end();
    return createReadStream(file).pipe(response);
  });
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      resolve({ address: `http://127.0.0.1:${server.address().port}/`, close: () => server.close() });
    });
  });
}
