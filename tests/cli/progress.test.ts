/** Progress is for a person at a terminal, on one line that goes away. */
import type { WriteStream } from 'node:tty';
import { describe, expect, it } from 'vitest';
import { showProgress } from '../../engine/cli/progress.ts';

function recorded(isTTY: boolean) {
  const written: string[] = [];
  const stream = { isTTY, write: (text: string) => written.push(text) } as unknown as WriteStream;
  return { written, stream };
}

describe('progress', () => {
  it('is shown on a terminal and cleared at the end', () => {
    const { written, stream } = recorded(true);
    const progress = showProgress(stream, 3);
    progress.step(0);
    progress.end();
    expect(written[0]).toMatch(/1 of 3 pages, \d+ a second$/);
    expect(written.at(-1)).toBe('\r\u001b[K');
  });

  it('tells of failures', () => {
    const { written, stream } = recorded(true);
    showProgress(stream, 3).step(1);
    expect(written.join('')).toContain('1 failed');
  });

  it('writes nothing into a file or for a single page', () => {
    for (const [isTTY, total] of [
      [false, 9],
      [true, 1],
    ] as const) {
      const { written, stream } = recorded(isTTY);
      const progress = showProgress(stream, total);
      progress.step(0);
      progress.end();
      expect(written).toEqual([]);
    }
  });
});
