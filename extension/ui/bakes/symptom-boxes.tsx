/** Boxes for what was not right, folded in four groups. */
import { bakeSymptoms } from '../../../engine/index.ts';
import type { Family } from '../../../engine/model.ts';
import { Fold } from '../controls/fold.tsx';
import { say } from '../words/say.ts';
import { GROUP_WORDS, GROUPS, type Group, groupOf, symptomWord } from './symptom-words.ts';

interface Props {
  family: Family;
  chosen: readonly string[];
  onChosen(symptoms: string[]): void;
}

function GroupBoxes({ family, chosen, onChosen, group }: Props & { group: Group }) {
  const symptoms = bakeSymptoms(family).filter(({ id }) => groupOf(id) === group);
  if (symptoms.length === 0) return null;
  const ticked = symptoms.filter(({ id }) => chosen.includes(id)).length;
  return (
    <Fold
      title={say(GROUP_WORDS[group])}
      name={`faults-${group}`}
      {...(ticked > 0 ? { aside: String(ticked) } : {})}
    >
      {() => (
        <div class="boxes">
          {symptoms.map(({ id }) => (
            <label key={id}>
              <input
                type="checkbox"
                checked={chosen.includes(id)}
                onChange={({ currentTarget }) => {
                  const others = chosen.filter((one) => one !== id);
                  onChosen(currentTarget.checked ? [...others, id] : others);
                }}
              />{' '}
              {symptomWord(id, family)}
            </label>
          ))}
        </div>
      )}
    </Fold>
  );
}

export function SymptomBoxes(props: Props) {
  return (
    <fieldset class="faults">
      <legend>{say('whatWasNotRight')}</legend>
      {GROUPS.map((group) => (
        <GroupBoxes key={group} group={group} {...props} />
      ))}
    </fieldset>
  );
}
