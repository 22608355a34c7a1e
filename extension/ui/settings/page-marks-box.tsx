/** Switches the marking of pages on and off. */

import { useEffect, useId, useState } from 'preact/hooks';
import { browser } from 'wxt/browser';
import { FailureLine } from '../controls/failure-line.tsx';
import { type MessageKey, say } from '../words/say.ts';
import { ALL_PAGES } from './all-pages.ts';

/** The permission is the switch, so both requests are made in the click itself. */
export function PageMarks() {
  const id = useId();
  const [on, setOn] = useState<boolean | null>(null);
  const [why, setWhy] = useState<MessageKey | null>(null);
  useEffect(() => {
    void browser.permissions.contains(ALL_PAGES).then(setOn, () => setOn(false));
  }, []);
  const change = async (wanted: boolean) => {
    const asked = wanted
      ? browser.permissions.request(ALL_PAGES)
      : browser.permissions.remove(ALL_PAGES);
    const done = await asked.catch(() => false);
    setOn(done ? wanted : !wanted);
    setWhy(done ? null : wanted ? 'leaveNotGiven' : 'leaveNotTaken');
  };
  if (on === null) return null;
  return (
    <fieldset class="boxes">
      <legend>{say('markingPages')}</legend>
      <label for={id} class="tick">
        <input
          id={id}
          type="checkbox"
          checked={on}
          aria-describedby={`${id}-hint`}
          onChange={({ currentTarget }) => void change(currentTarget.checked)}
        />
        <span>{say('putADot')}</span>
      </label>
      <p id={`${id}-hint`} class="soft">
        {say('putADotHow')}
      </p>
      <FailureLine text={why && say(why)} />
    </fieldset>
  );
}
