/** What the browser could not store holds while the page is open only: that is told until it is stored. */
import { useRef, useState } from 'preact/hooks';
import { storageMessage } from '../../store/failure.ts';
import { type Area, type Preferences, storePreferences } from '../../store/prefs.ts';
import { FailureLine } from '../../ui/controls/failure-line.tsx';
import { say } from '../../ui/words/say.ts';

/** Why it could not be stored, in plain words; null while all is well. */
interface NotStored {
  work: string | null;
  settings: string | null;
}

/** Writes and remembers what failed; a setting that failed goes along with the next one. */
export function useWriting(area: Area) {
  const [notStored, setNotStored] = useState<NotStored>({ work: null, settings: null });
  const left = useRef<Partial<Preferences>>({});
  const tell = (what: keyof NotStored, why: string | null) =>
    setNotStored((now) => (now[what] === why ? now : { ...now, [what]: why }));
  const watch = (what: keyof NotStored, writing: Promise<unknown>) =>
    writing.then(
      () => tell(what, null),
      (error) => tell(what, storageMessage(error)),
    );
  return {
    notStored,
    watchWork: (writing: Promise<unknown>) => void watch('work', writing),
    storeSettings: (change: Partial<Preferences>) => {
      const all = { ...left.current, ...change };
      left.current = all;
      const written = storePreferences(area, all).then(() => {
        // What was asked for meanwhile is under way by itself.
        if (left.current === all) left.current = {};
      });
      return watch('settings', written);
    },
  };
}

export function NotStoredLines({ work, settings }: NotStored) {
  if (work === null && settings === null) return null;
  return (
    <div class="not-stored">
      <FailureLine text={work !== null && `${say('changeNotHeld')} ${work}`} />
      <FailureLine text={settings !== null && `${say('settingNotHeld')} ${settings}`} />
    </div>
  );
}
