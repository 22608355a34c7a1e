import { useEffect, useId, useState } from 'preact/hooks';
import { browser } from 'wxt/browser';
import { ALL_PAGES } from '../../store/sites.ts';

const NOT_GIVEN = 'It stays off: the browser was not given leave to look at pages.';
const NOT_TAKEN = 'The browser keeps this permission. Take it away in the browser’s own settings.';

/**
 * Switches the marking of pages on and off. The permission is the switch, so both requests are made in
 * the click itself.
 */
export function Detection() {
  const id = useId();
  const [on, setOn] = useState<boolean | null>(null);
  const [why, setWhy] = useState<string | null>(null);
  useEffect(() => {
    void browser.permissions.contains(ALL_PAGES).then(setOn, () => setOn(false));
  }, []);
  const change = async (wanted: boolean) => {
    const asked = wanted
      ? browser.permissions.request(ALL_PAGES)
      : browser.permissions.remove(ALL_PAGES);
    const done = await asked.catch(() => false);
    setOn(done ? wanted : !wanted);
    setWhy(done ? null : wanted ? NOT_GIVEN : NOT_TAKEN);
  };
  if (on === null) return null;
  return (
    <fieldset class="boxes">
      <legend>Marking pages</legend>
      <label for={id}>
        <input
          id={id}
          type="checkbox"
          checked={on}
          aria-describedby={`${id}-hint`}
          onChange={({ currentTarget }) => void change(currentTarget.checked)}
        />{' '}
        Put a dot on the toolbar button where a page may hold a recipe
      </label>
      <p id={`${id}-hint`} class="hint">
        Off at first. To do this the browser lets Crumbshift see every page you open; it looks at
        headings and recipe markup only, and nothing leaves your browser.
      </p>
      {why && (
        <p role="alert" class="failure">
          {why}
        </p>
      )}
    </fieldset>
  );
}
