/** What the dish is taken for, why, and of what parts; the user's word wins. */
import { useId } from 'preact/hooks';
import { FAMILIES, type Goals, type Plan } from '../../../engine/model.ts';
import { familyWord } from '../words/family-words.ts';
import { say, sayWith } from '../words/say.ts';
import { ToldSentence } from '../words/told-sentence.tsx';

interface Props {
  goals: Goals;
  plan: Pick<Plan, 'family' | 'parts'>;
  onGoals(goals: Partial<Goals>): void;
}

/** Below this the kind of dish is called a guess: own choice. */
const SURE = 0.75;

export function DishKind({ goals, plan, onGoals }: Props) {
  const id = useId();
  const { family, parts } = plan;
  const guessed = goals.family === null && family.confidence < SURE;
  return (
    <div class="field">
      <label for={`${id}-family`}>{say('kindOfDish')}</label>
      <select
        id={`${id}-family`}
        value={goals.family ?? ''}
        aria-describedby={`${id}-why`}
        onChange={({ currentTarget }) =>
          onGoals({ family: FAMILIES.find((one) => one === currentTarget.value) ?? null })
        }
      >
        <option value="">
          {goals.family === null
            ? say('asRecognised', familyWord(family.id))
            : say('asRecognisedBare')}
        </option>
        {FAMILIES.map((one) => (
          <option key={one} value={one}>
            {familyWord(one)}
          </option>
        ))}
      </select>
      <span class="field-note" id={`${id}-why`}>
        {guessed && say('aGuess')}
        {sayWith('seenBy', <ToldSentence text={family.why} />)}
      </span>
      {parts.length > 1 && (
        <>
          <p>{say('madeOfParts')}</p>
          <ul class="notes">
            {parts.map((part) => (
              <li key={`${part.title}.${part.family}`}>
                {part.title?.replace(/\s*:$/, '') ?? say('dishItself')}: {familyWord(part.family)} (
                <ToldSentence text={part.why} />)
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
