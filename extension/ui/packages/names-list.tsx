import { useRef } from 'preact/hooks';
import type { Names } from '../hooks/use-names.ts';

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
        Your names for foods
      </h2>
      <p>
        When you put a line right you can have its name remembered. Every recipe then takes the name
        for that food.
      </p>
      {names.failure && (
        <p role="alert" class="failure">
          {names.failure}
        </p>
      )}
      {names.aliases.length === 0 && <p class="quiet">None remembered.</p>}
      <ul class="saved">
        {names.aliases.map(({ name, foodName }) => (
          <li key={name}>
            <span>
              “{name}” means {foodName}
            </span>
            <button type="button" onClick={() => forget(name)}>
              Forget<span class="hidden"> what {name} means</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
