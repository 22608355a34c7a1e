import { useId } from 'preact/hooks';
import { FAMILIES, type Goals, type Plan } from '../../../engine/model.ts';

interface Props {
  goals: Goals;
  plan: Pick<Plan, 'family' | 'parts'>;
  onGoals(goals: Partial<Goals>): void;
}

const words = (id: string): string => id.replaceAll('-', ' ');

/** Below this the kind of dish is called a guess: own choice. */
const SURE = 0.75;

/** What the dish is taken for, why, and of what parts; the user's word wins. */
export function DishKind({ goals, plan, onGoals }: Props) {
  const id = useId();
  const { family, parts } = plan;
  const guessed = goals.family === null && family.confidence < SURE;
  return (
    <div class="field">
      <label for={`${id}-family`}>Kind of dish</label>
      <select
        id={`${id}-family`}
        value={goals.family ?? ''}
        aria-describedby={`${id}-why`}
        onChange={({ currentTarget }) =>
          onGoals({ family: FAMILIES.find((one) => one === currentTarget.value) ?? null })
        }
      >
        <option value="">
          {goals.family === null ? `as recognised: ${words(family.id)}` : 'as recognised'}
        </option>
        {FAMILIES.map((one) => (
          <option key={one} value={one}>
            {words(one)}
          </option>
        ))}
      </select>
      <span class="field-note" id={`${id}-why`}>
        {guessed && 'A guess, please check: '}
        {family.why}
      </span>
      {parts.length > 1 && (
        <>
          <p>Made of parts, each planned for what it is:</p>
          <ul class="limits">
            {parts.map((part) => (
              <li key={`${part.title}.${part.family}`}>
                {part.title?.replace(/\s*:$/, '') ?? 'The dish itself'}: {words(part.family)} (
                {part.why})
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
