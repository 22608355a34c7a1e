import { h } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Area } from '../../../extension/store/prefs.ts';
import { loadTimers, storeStove } from '../../../extension/store/working/stove.ts';
import { ElsewhereTimers } from '../../../extension/ui/stove/elsewhere-timers.tsx';
import { type Drawn, drawn } from '../screen.ts';

/** Strokes that were sounded. */
let strokes = 0;
const tone = () => ({
  frequency: { value: 0 },
  connect: (next: unknown) => next,
  start: () => void strokes++,
  stop: () => {},
});
const volume = () => ({
  gain: { setValueAtTime: () => {}, exponentialRampToValueAtTime: () => {} },
  connect: (next: unknown) => next,
});
class Sound {
  currentTime = 0;
  destination = {};
  resume = async () => {};
  createOscillator = tone;
  createGain = volume;
}

function area(): Area {
  const kept: Record<string, unknown> = {};
  return {
    get: async (key) => (key in kept ? { [key]: structuredClone(kept[key]) } : {}),
    set: async (values) => void Object.assign(kept, structuredClone(values)),
  };
}

const START = Date.UTC(2026, 2, 1, 12);
const timer = (id: string, name: string, seconds: number) => ({
  id,
  name,
  seconds,
  endsAt: START + seconds * 1000,
});

let disk: Area;
let screen: Drawn;
beforeEach(async () => {
  strokes = 0;
  vi.stubGlobal('AudioContext', Sound);
  vi.useFakeTimers({ now: START });
  disk = area();
  await storeStove(disk, 'rolls', { at: 3, ticked: [], timers: [timer('a', 'Rise', 90)] });
  await storeStove(disk, 'soup', { at: 0, ticked: [], timers: [timer('b', 'Boil', 600)] });
});
afterEach(() => {
  screen.clear();
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

async function show(atStove: string | null): Promise<HTMLElement> {
  screen = drawn(h(ElsewhereTimers, { area: disk, atStove }));
  await act(async () => void (await vi.advanceTimersByTimeAsync(0)));
  return screen.root;
}
const pass = (ms: number) => act(async () => void (await vi.advanceTimersByTimeAsync(ms)));
const shown = (root: HTMLElement) =>
  [...root.querySelectorAll('.timer-words span')].map((one) => one.textContent);

describe('timers at another place', () => {
  it('are in sight, and ring there once: seen, heard, and told to those who hear the page', async () => {
    const root = await show(null);
    expect(shown(root)).toEqual(['Rise', 'Boil']);
    await pass(89_000);
    expect(strokes).toBe(0);
    await pass(2_000);
    expect(strokes).toBe(3);
    expect(root.querySelector('.timer-rings')?.textContent).toContain('Rise');
    expect(root.querySelector('[role=alert]')?.textContent).toContain('Rise');
    await pass(60_000);
    expect(strokes).toBe(3);
  });

  it('leave to the stove what it shows itself', async () => {
    expect(shown(await show('rolls'))).toEqual(['Boil']);
  });

  it('ring when a page is opened after one ended', async () => {
    vi.setSystemTime(START + 100_000);
    const root = await show(null);
    expect(strokes).toBe(3);
    expect(root.querySelector('.timer-rings')?.textContent).toContain('Rise');
  });

  it('are stopped where they are seen', async () => {
    const root = await show(null);
    await act(async () => root.querySelector<HTMLButtonElement>('.timer button')?.click());
    expect(shown(root)).toEqual(['Boil']);
    await pass(0);
    expect((await loadTimers(disk)).map(({ recipe }) => recipe)).toEqual(['soup']);
  });
});
