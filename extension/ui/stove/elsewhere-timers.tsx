/** Timers that run while the cook looks at something else: at another place of the page, or another recipe's step. */
import { useEffect, useState } from 'preact/hooks';
import type { Area } from '../../store/prefs.ts';
import { dropTimer, loadTimers, type TimerOf } from '../../store/working/stove.ts';
import { chime } from './chime.ts';
import { RunningTimers } from './running-timers.tsx';
import { justEnded, secondsLeft } from './timers.ts';
import { useNow } from './use-now.ts';

/** One that rang this long ago, in ms, tells nothing any more: a day. Own choice. */
const FORGOTTEN_MS = 24 * 60 * 60 * 1000;

interface Props {
  area: Area;
  /** Recipe whose timers the stove shows itself; null anywhere else. */
  atStove: string | null;
}

export function ElsewhereTimers({ area, atStove }: Props) {
  const [all, setAll] = useState<readonly TimerOf[]>([]);
  const timers = all.filter(({ recipe }) => recipe !== atStove).map(({ timer }) => timer);
  const now = useNow((before, next) => {
    if (justEnded(timers, before, next).length > 0) chime();
  });
  useEffect(() => {
    loadTimers(area).then(
      (found) => {
        const opened = Date.now();
        const told = found.filter(({ timer }) => timer.endsAt > opened - FORGOTTEN_MS);
        setAll(told);
        // What ended while no page was open rings now.
        const rung = told.some(
          ({ recipe, timer }) => recipe !== atStove && secondsLeft(timer, opened) === 0,
        );
        if (rung) chime();
      },
      () => setAll([]),
    );
  }, [atStove]);
  if (timers.length === 0) return null;
  const stop = (id: string) => {
    const one = all.find(({ timer }) => timer.id === id);
    if (!one) return;
    setAll(all.filter((other) => other !== one));
    // Not kept is not lost: it is gone from this page, and rings once more in the next.
    dropTimer(area, one).catch(() => {});
  };
  return (
    <div class="timers-elsewhere">
      <RunningTimers timers={timers} now={now} onStop={stop} />
    </div>
  );
}
