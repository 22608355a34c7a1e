/** The browser's own page of settings for the extension: the same as the place in the full page. */

import { useEffect, useState } from 'preact/hooks';
import { browser } from 'wxt/browser';
import { storageMessage } from '../../store/failure.ts';
import {
  DEFAULT_PREFERENCES,
  loadPreferences,
  type Preferences,
  storePreferences,
} from '../../store/prefs.ts';
import { Foot } from '../../ui/about/foot.tsx';
import { FailureLine } from '../../ui/controls/failure-line.tsx';
import { Settings } from '../../ui/settings/settings.tsx';
import { say } from '../../ui/words/say.ts';

export function Options() {
  const [preferences, setPreferences] = useState<Preferences | null>(null);
  const [state, setState] = useState<'idle' | 'kept' | { why: string }>('idle');
  useEffect(() => {
    loadPreferences(browser.storage.local).then(setPreferences, (error) => {
      setPreferences(DEFAULT_PREFERENCES);
      setState({ why: storageMessage(error) });
    });
  }, []);
  if (!preferences) return null;
  const change = (part: Partial<Preferences>) => {
    const next = { ...preferences, ...part };
    setPreferences(next);
    storePreferences(browser.storage.local, part).then(
      () => setState('kept'),
      (error) => setState({ why: storageMessage(error) }),
    );
  };
  return (
    <main class="place">
      <h1>{say('placeSettings')}</h1>
      <Settings preferences={preferences} onChange={change} />
      <p role="status">{state === 'kept' && say('isKept')}</p>
      <FailureLine text={typeof state === 'object' && state.why} />
      <Foot />
    </main>
  );
}
