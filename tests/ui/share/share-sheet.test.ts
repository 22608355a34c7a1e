/** The system's share sheet, with a stub in its place: what it is handed, and what comes of its answers. */
import { afterEach, describe, expect, it, vi } from 'vitest';
import { canShare, shareOut } from '../../../extension/ui/share/share-sheet.ts';

const PICTURE = new File(['png'], 'loaf.png', { type: 'image/png' });

/** A browser with this sheet; `takes` says whether it takes pictures. */
function withSheet(share: (data: ShareData) => Promise<void>, takes: boolean | null) {
  const sheet = vi.fn(share);
  vi.stubGlobal('navigator', {
    share: sheet,
    ...(takes === null ? {} : { canShare: () => takes }),
  });
  return sheet;
}

afterEach(() => vi.unstubAllGlobals());

describe('the share sheet', () => {
  it('is offered only where the system has one', () => {
    vi.stubGlobal('navigator', {});
    expect(canShare()).toBe(false);
    withSheet(async () => {}, true);
    expect(canShare()).toBe(true);
  });

  it('is handed title, text and picture', async () => {
    const sheet = withSheet(async () => {}, true);
    expect(await shareOut('Loaf', '500 g flour', PICTURE)).toBe(true);
    expect(sheet.mock.calls).toEqual([[{ title: 'Loaf', text: '500 g flour', files: [PICTURE] }]]);
  });

  it.each([false, null])('gets no picture where it takes none (%s)', async (takes) => {
    const sheet = withSheet(async () => {}, takes);
    await shareOut('Loaf', '500 g flour', PICTURE);
    expect(sheet.mock.calls).toEqual([[{ title: 'Loaf', text: '500 g flour' }]]);
  });

  it('may be closed again, which is no failure; anything else is one', async () => {
    withSheet(async () => {
      throw new DOMException('closed', 'AbortError');
    }, true);
    expect(await shareOut('Loaf', 'text', null)).toBe(false);
    withSheet(async () => {
      throw new DOMException('not now', 'NotAllowedError');
    }, true);
    await expect(shareOut('Loaf', 'text', null)).rejects.toThrow('not now');
  });
});
