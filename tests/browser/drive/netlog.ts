/** Reads Chromium's network log: who asked for which address, over every page and worker. */
import { readFileSync } from 'node:fs';

interface NetLog {
  constants: { logEventTypes: Record<string, number> };
  events: { type: number; params?: { url?: string; initiator?: string } }[];
}

export interface Asked {
  url: string;
  /** Origin of the page or worker that asked. */
  initiator: string;
}

/** Requests that a page, frame or worker made; the browser's own errands have no origin. */
export function requestsIn(file: string): Asked[] {
  const { constants, events } = JSON.parse(readFileSync(file, 'utf8')) as NetLog;
  const started = constants.logEventTypes.URL_REQUEST_START_JOB;
  return events.flatMap(({ type, params }) => {
    if (type !== started || !params?.url || !params.initiator) return [];
    return params.initiator === 'not an origin'
      ? []
      : [{ url: params.url, initiator: params.initiator }];
  });
}
