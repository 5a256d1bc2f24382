import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { waitingPage } from './waiting-page.ts';

/** A page and what tells it from another one. */
export interface LivePage {
  readonly html: string;
  readonly version: string;
}

/** Serves one page to this machine alone, and tells those who look at it when there is another one. */
export interface PageServer {
  /** `http://127.0.0.1:51234/` */
  readonly address: string;
  show(page: LivePage): void;
  /** The page stays as it is, and says why. */
  broken(why: string): void;
  close(): void;
}

/** Where the page hears of changes. */
export const EVENTS = '/events';

const HOST = '127.0.0.1';

/** @throws the error of the system when the port cannot be had. Port 0 takes any that is free. */
export async function servePage(port: number): Promise<PageServer> {
  const listeners = new Set<ServerResponse>();
  let page: LivePage | undefined;
  let why: string | undefined;
  const server = createServer((request, response) => {
    const status = refusal(request, (server.address() as AddressInfo).port);
    if (status) refuse(response, status);
    else if (request.url === EVENTS) listen(response);
    else send(response, 200, 'text/html; charset=utf-8', page?.html ?? waitingPage(EVENTS));
  });
  const news = (): string =>
    [
      ...(page ? [`event: page\ndata: ${page.version}\n\n`] : []),
      ...(why === undefined ? [] : [`event: broken\ndata: ${JSON.stringify(why)}\n\n`]),
    ].join('');
  const listen = (response: ServerResponse): void => {
    response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' });
    response.write(`retry: 1000\n\n${news()}`);
    listeners.add(response);
    response.on('close', () => listeners.delete(response));
  };
  const tell = (): void => {
    for (const listener of listeners) listener.write(news());
  };
  await new Promise<void>((done, failed) => {
    server.once('error', failed);
    server.listen(port, HOST, done);
  });
  return {
    address: `http://${HOST}:${(server.address() as AddressInfo).port}/`,
    show(next) {
      page = next;
      why = undefined;
      tell();
    },
    broken(reason) {
      why = reason;
      tell();
    },
    close() {
      server.close();
      server.closeAllConnections();
    },
  };
}

/** Only pages of this very address are read, and nothing can be changed: a page from elsewhere cannot ask in its name. */
function refusal({ method, url, headers }: IncomingMessage, port: number): 403 | 404 | 405 | undefined {
  if (headers.host !== `${HOST}:${port}` && headers.host !== `localhost:${port}`) return 403;
  if (url !== '/' && url !== EVENTS) return 404;
  return method === 'GET' ? undefined : 405;
}

const REFUSALS = { 403: 'not from here', 404: 'there is nothing here', 405: 'this can only be read' } as const;

function refuse(response: ServerResponse, status: keyof typeof REFUSALS): void {
  if (status === 405) response.setHeader('allow', 'GET');
  send(response, status, 'text/plain; charset=utf-8', `${REFUSALS[status]}\n`);
}

function send(response: ServerResponse, status: number, type: string, text: string): void {
  const headers = { 'content-type': type, 'cache-control': 'no-store', 'x-content-type-options': 'nosniff' };
  response.writeHead(status, headers);
  response.end(text);
}
