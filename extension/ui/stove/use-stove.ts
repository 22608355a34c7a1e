/** Where the cook is in the recipe, what is at hand, and the timers; kept as it changes. */
import { useEffect, useState } from 'preact/hooks';
import type { Area } from '../../store/prefs.ts';
import {
  FIRST_PAGE,
  loadStove,
  type StovePage,
  type StoveTimer,
  storeStove,
} from '../../store/working/stove.ts';
import { chime } from './chime.ts';
import { justEnded, withoutTimer, withTimer } from './timers.ts';
import { useNow } from './use-now.ts';

export interface Stove extends StovePage {
  /** Milliseconds since 1970 UTC, a second fresh. */
  now: number;
  goTo(at: number): void;
  tick(key: string, ticked: boolean): void;
  /** False when no more timers can run. */
  start(name: string, seconds: number): boolean;
  stop(id: string): void;
}

/** `steps` is how many there are: a shorter method than last time starts no later than its end. */
export function useStove(area: Area, recipe: string, steps: number): Stove | null {
  const [page, setPage] = useState<StovePage | null>(null);
  const now = useNow((before, next) => {
    if (justEnded(page?.timers ?? [], before, next).length > 0) chime();
  });
  useEffect(() => {
    loadStove(area, recipe).then(setPage, () => setPage(FIRST_PAGE));
  }, [recipe]);
  if (!page) return null;
  const change = (next: Partial<StovePage>) => {
    const whole = { ...page, ...next };
    setPage(whole);
    // Not kept is not lost: it holds while this page is open.
    storeStove(area, recipe, whole).catch(() => {});
  };
  const last = Math.max(0, steps - 1);
  const at = Math.min(page.at, last);
  return {
    ...page,
    at,
    now,
    goTo: (step) => change({ at: Math.max(0, Math.min(step, last)) }),
    tick: (key, ticked) => {
      const others = page.ticked.filter((one) => one !== key);
      change({ ticked: ticked ? [...others, key] : others });
    },
    start: (name, seconds) => {
      const from = Date.now();
      const timer: StoveTimer = {
        id: `${from}.${page.timers.length}`,
        name: name.slice(0, 200),
        seconds,
        endsAt: from + seconds * 1000,
      };
      const timers = withTimer(page.timers, timer, from);
      if (timers) change({ timers });
      return timers !== null;
    },
    stop: (id) => change({ timers: withoutTimer(page.timers, id) }),
  };
}
