/** The lines and foods the figures rest on least surely; pressing one opens it in the list. */
import type { Adaptation } from '../../../engine/model.ts';
import { doubtsOf, variedFoods } from '../recipe/lines/doubtful-lines.ts';
import { ReasonWords } from '../recipe/lines/reason-words.tsx';
import { say } from '../words/say.ts';
import { amount } from './format.ts';

interface Props {
  adaptation: Adaptation;
  onLine(key: string): void;
}

export function LeastCertain({ adaptation, onLine }: Props) {
  const doubts = doubtsOf(adaptation);
  const language = adaptation.recipe.language ?? undefined;
  return (
    <section class="least-certain">
      <h3>{say('leastCertain')}</h3>
      <ul class="notes">
        {variedFoods(adaptation).map(({ key, name, low, high }) => (
          <li key={key}>{say('differsBetweenMakers', name, amount(low), amount(high))}</li>
        ))}
      </ul>
      {doubts.length === 0 && <p>{say('everyLineSure')}</p>}
      <ul class="doubts">
        {doubts.map(({ ingredient, reasons }) => (
          <li key={ingredient.key}>
            <button type="button" class="choice" onClick={() => onLine(ingredient.key)}>
              <b lang={language} dir="auto">
                {ingredient.line.text}
              </b>
              <ReasonWords reasons={reasons} />
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
