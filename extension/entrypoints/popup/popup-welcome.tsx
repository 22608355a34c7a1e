/** The first questions as the popup offers them: one line, until they are opened or put off. */
import { useEffect, useState } from 'preact/hooks';
import { browser } from 'wxt/browser';
import type { Goals } from '../../../engine/model.ts';
import { storageMessage } from '../../store/failure.ts';
import { loadPreferences, type Preferences, storePreferences } from '../../store/prefs.ts';
import { FailureLine } from '../../ui/controls/failure-line.tsx';
import { FirstRun } from '../../ui/settings/first-run.tsx';
import { say } from '../../ui/words/say.ts';

/** What a changed preference means for the recipe that is open. */
function goalsIn({ budgetG, avoid, rule }: Partial<Preferences>): Partial<Goals> {
  return {
    ...(budgetG === undefined ? {} : { budgetG }),
    ...(avoid ? { avoid } : {}),
    ...(rule ? { rule } : {}),
  };
}

interface Props {
  start: Preferences;
  /** Asked for already: the questions stand open. */
  asked?: boolean;
  /** An answer reaches the open recipe too. */
  onAnswer?(preferences: Preferences, goals: Partial<Goals>): void;
}

export function PopupWelcome({ start, asked = false, onAnswer }: Props) {
  const [preferences, setPreferences] = useState(start);
  const [open, setOpen] = useState(asked);
  const [failure, setFailure] = useState<string | null>(null);
  const change = (part: Partial<Preferences>) => {
    const next = { ...preferences, ...part };
    setPreferences(next);
    onAnswer?.(next, goalsIn(part));
    storePreferences(browser.storage.local, next).then(
      () => setFailure(null),
      (error) => setFailure(`${say('settingNotHeld')} ${storageMessage(error)}`),
    );
  };
  const done = () => change({ welcomed: true });
  if (preferences.welcomed) return <FailureLine text={failure} />;
  if (open) {
    return (
      <>
        <FailureLine text={failure} />
        <FirstRun preferences={preferences} asked onChange={change} onDone={done} />
      </>
    );
  }
  return (
    <section class="offer" aria-label={say('firstQuestions')}>
      <button type="button" class="button" onClick={() => setOpen(true)}>
        {say('threeQuestions')}
      </button>
      <button type="button" class="button bare" onClick={done}>
        {say('skipQuestions')}
      </button>
    </section>
  );
}

/** The same where no recipe is open and nothing was read from disk yet. */
export function WelcomeAlone() {
  const [start, setStart] = useState<Preferences | null>(null);
  useEffect(() => void loadPreferences(browser.storage.local).then(setStart, () => {}), []);
  return start && <PopupWelcome start={start} />;
}
