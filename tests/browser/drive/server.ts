/** Serves the demo pages on loopback, and a proxy that records what tries to leave the machine. */
import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo, Socket } from 'node:net';
import { basename, join } from 'node:path';
import { DEMO_PAGES } from './places.ts';

export interface Served {
  /** 'http://127.0.0.1:PORT' */
  origin: string;
  /** Path of each request so far. */
  hits: string[];
  close(): Promise<void>;
}

async function listen(server: Server, hits: string[]): Promise<Served> {
  const sockets = new Set<Socket>();
  server.on('connection', (socket) => {
    sockets.add(socket);
    socket.on('close', () => sockets.delete(socket));
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as AddressInfo;
  const close = () =>
    new Promise<void>((done) => {
      for (const socket of sockets) socket.destroy();
      server.close(() => done());
    });
  return { origin: `http://127.0.0.1:${port}`, hits, close };
}

/** The demo pages by name; `extra` adds pages by path. */
export async function serveDemo(extra: Record<string, string> = {}): Promise<Served> {
  const hits: string[] = [];
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://127.0.0.1').pathname;
    hits.push(path);
    const html = extra[path] ?? pageText(basename(path));
    response.writeHead(html === null ? 404 : 200, { 'content-type': 'text/html; charset=utf-8' });
    response.end(html ?? 'not here');
  });
  return listen(server, hits);
}

function pageText(name: string): string | null {
  try {
    return name.endsWith('.html') ? readFileSync(join(DEMO_PAGES, name), 'utf8') : null;
  } catch {
    return null;
  }
}

/** A proxy that lets nothing through; `hits` holds what was asked of it, as 'host:port' or address. */
export async function recordingProxy(): Promise<Served> {
  const hits: string[] = [];
  const server = createServer((request, response) => {
    hits.push(request.url ?? '');
    response.writeHead(502).end();
  });
  server.on('connect', (request, socket) => {
    hits.push(request.url ?? '');
    socket.end('HTTP/1.1 502 Bad Gateway\r\n\r\n');
  });
  return listen(server, hits);
}
