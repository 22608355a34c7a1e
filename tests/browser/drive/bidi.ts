/** A small WebDriver BiDi client: commands by id over one socket (W3C WebDriver BiDi). */
import WebSocket from 'ws';

interface Answer {
  id?: number;
  type: string;
  method?: string;
  params?: unknown;
  result?: unknown;
  error?: string;
  message?: string;
}

export interface Bidi {
  send(method: string, params: object): Promise<Record<string, unknown>>;
  onEvent(method: string, listener: (params: unknown) => void): void;
  close(): void;
}

const TIMEOUT_MS = 60_000;

/** @throws {Error} when the socket cannot be opened. */
export async function connectBidi(url: string): Promise<Bidi> {
  const socket = new WebSocket(url, { perMessageDeflate: false });
  await new Promise<void>((done, failed) => {
    socket.once('open', done);
    socket.once('error', failed);
  });
  const waiting = new Map<number, (answer: Answer) => void>();
  const listeners = new Map<string, (params: unknown) => void>();
  socket.on('message', (data) => {
    const answer = JSON.parse(String(data)) as Answer;
    if (answer.type === 'event') listeners.get(answer.method ?? '')?.(answer.params);
    else waiting.get(answer.id ?? -1)?.(answer);
  });
  let last = 0;
  const send = (method: string, params: object) =>
    new Promise<Record<string, unknown>>((done, failed) => {
      last += 1;
      const id = last;
      const timer = setTimeout(() => failed(new Error(`${method}: no answer`)), TIMEOUT_MS);
      waiting.set(id, (answer) => {
        clearTimeout(timer);
        waiting.delete(id);
        if (answer.error) failed(new Error(`${method}: ${answer.error} ${answer.message ?? ''}`));
        else done((answer.result ?? {}) as Record<string, unknown>);
      });
      socket.send(JSON.stringify({ id, method, params }));
    });
  return {
    send,
    onEvent: (method, listener) => listeners.set(method, listener),
    close: () => socket.close(),
  };
}
