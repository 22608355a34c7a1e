/** A recipe from pasted text. */
import { useEffect, useId, useState } from 'preact/hooks';
import { browser } from 'wxt/browser';
import { readText } from '../../../engine/index.ts';
import type { Recipe } from '../../../engine/model.ts';
import { takeUnread } from '../../store/working/unread.ts';
import { say } from '../words/say.ts';

export function PasteBox({ onRecipe }: { onRecipe(recipe: Recipe): void }) {
  const id = useId();
  const [text, setText] = useState('');
  const [why, setWhy] = useState<string | null>(null);
  // A selection in a page that could not be read waits here to be put right.
  useEffect(() => {
    void takeUnread(browser.storage.session).then((unread) => {
      if (!unread) return;
      setText(unread.text);
      setWhy(unread.why);
    });
  }, []);
  const read = () => {
    const result = readText(text);
    const recipe = result.ok ? result.recipes[0] : undefined;
    if (recipe) onRecipe(recipe);
    else setWhy(say('noLinesFound'));
  };
  return (
    <div class="paste">
      <label for={`${id}-text`}>{say('pasteHow')}</label>
      <textarea
        id={`${id}-text`}
        rows={12}
        value={text}
        aria-describedby={why ? `${id}-why` : undefined}
        aria-invalid={why !== null}
        onInput={(event) => {
          setText(event.currentTarget.value);
          setWhy(null);
        }}
      />
      {why && (
        <p id={`${id}-why`} role="alert" class="failure">
          {why}
        </p>
      )}
      <button type="button" class="button first" disabled={text.trim() === ''} onClick={read}>
        {say('reworkThis')}
      </button>
    </div>
  );
}
