/** Names of foods as the user uses them. */

import { useRef } from 'preact/hooks';
import { FailureLine } from '../controls/failure-line.tsx';
import type { Names } from '../hooks/use-names.ts';
import { foodWord } from '../words/food-words.ts';
import { say } from '../words/say.ts';

/** What the user said names mean; each can be forgotten. */
export function NamesList({ names }: { names: Names }) {
  const heading = useRef<HTMLHeadingElement>(null);
  const forget = (name: string) => {
    names.forget(name);
    // The pressed button is gone then; focus goes to the head of the list.
    heading.current?.focus();
  };
  return (
    <section id="names" class="no-print" aria-labelledby="names-title">
      <h2 id="names-title" ref={heading} tabIndex={-1}>
        {say('yourNames')}
      </h2>
      <p class="soft">{say('yourNamesHow')}</p>
      <FailureLine text={names.failure} />
      {names.aliases.length === 0 && <p>{say('noNames')}</p>}
      <ul class="saved">
        {names.aliases.map(({ name, foodId, foodName }) => (
          <li key={name}>
            <span>{say('nameMeans', name, foodWord(foodId, foodName))}</span>
            <button type="button" class="button bare" onClick={() => forget(name)}>
              {say('forget')}
              <span class="hidden">{say('ofFood', name)}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
