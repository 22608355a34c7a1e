/** What the care team would want to be thought of, to be ticked by those who like to. */
import type { Person } from '../../../engine/model.ts';
import { Icon } from '../controls/icon.tsx';
import { type MessageKey, say } from '../words/say.ts';

const BOXES = [
  ['sglt2', 'personSglt2'],
  ['kidneyDisease', 'personKidneys'],
  ['needsCarePlan', 'personCarePlan'],
] as const satisfies readonly (readonly [keyof Person, MessageKey])[];

interface Props {
  person: Person;
  onPerson(person: Person): void;
}

export function PersonBoxes({ person, onPerson }: Props) {
  return (
    <>
      <fieldset class="pegs">
        <legend>{say('personTitle')}</legend>
        {BOXES.map(([key, word]) => (
          <label key={key} class="peg">
            <input
              type="checkbox"
              checked={person[key]}
              onChange={({ currentTarget }) =>
                onPerson({ ...person, [key]: currentTarget.checked })
              }
            />
            <Icon name="tick" />
            {say(word)}
          </label>
        ))}
      </fieldset>
      <p class="soft">{say('personHow')}</p>
    </>
  );
}
