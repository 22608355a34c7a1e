import { h } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import { NotStoredLines, useWriting } from '../../../extension/entrypoints/bench/not-stored.tsx';
import type { Area } from '../../../extension/store/prefs.ts';
import { loadPreferences } from '../../../extension/store/prefs.ts';
import { type Drawn, drawn } from '../../ui/screen.ts';

let screen: Drawn | null = null;
afterEach(() => screen?.clear());

/** Storage that can be filled up. */
function filling(): Area & { full: boolean } {
  let stored: Record<string, unknown> = {};
  return {
    full: false,
    get: async () => stored,
    async set(values) {
      if (this.full) throw new DOMException('no room', 'QuotaExceededError');
      stored = { ...stored, ...values };
    },
  };
}

function writer(area: Area) {
  let writing: ReturnType<typeof useWriting> | null = null;
  const Page = () => {
    writing = useWriting(area);
    return h(NotStoredLines, writing.notStored);
  };
  screen = drawn(h(Page, {}));
  return () => writing as unknown as ReturnType<typeof useWriting>;
}

const told = (): string => screen?.root.textContent ?? '';

const FLOUR = { foodId: 'bread-flour', foodName: 'bread flour' };
const SUGAR = { foodId: 'sugar', foodName: 'sugar' };

describe('what the browser cannot store', () => {
  it('is told when it is a setting, and stored with the next one', async () => {
    const area = filling();
    const writing = writer(area);
    area.full = true;
    await act(() => writing().storeSettings({ never: [FLOUR] }));
    expect(told()).toMatch(/This setting is not kept\. .*no room/);
    expect(screen?.root.querySelector('[role=alert]')).not.toBeNull();
    await act(() => writing().storeSettings({ budgetG: 9 }));
    expect(told()).toContain('This setting is not kept.');
    area.full = false;
    await act(() => writing().storeSettings({ never: [FLOUR, SUGAR] }));
    expect(told()).toBe('');
    const kept = await loadPreferences(area);
    expect(kept).toMatchObject({ never: [FLOUR, SUGAR], budgetG: 9 });
  });

  it('is told when it is the work on the screen, until it can be', async () => {
    const writing = writer(filling());
    await act(async () =>
      writing().watchWork(Promise.reject(new DOMException('', 'QuotaExceededError'))),
    );
    expect(told()).toMatch(/Your last change is not held\. .*no room/);
    await act(async () => writing().watchWork(Promise.resolve()));
    expect(told()).toBe('');
  });
});
