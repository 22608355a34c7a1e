import { useMemo, useRef, useState } from 'preact/hooks';
import type { FoodTable, WalkOptions } from '../../../engine/index.ts';
import type { Adaptation } from '../../../engine/model.ts';
import { amount } from '../figures/format.ts';
import type { Names } from '../hooks/use-names.ts';
import { type Correction, CorrectLine } from './correct-line.tsx';
import { type Doubt, doubtsOf, variedFoods } from './doubtful-lines.ts';
import { tiesOf } from './tied-foods.ts';

interface Props {
  adaptation: Adaptation;
  table: FoodTable;
  options: WalkOptions;
  names: Names;
  onCorrect(key: string, correction: Correction | null): void;
}

/** Keeps the first order while a line is being put right, so that it does not jump under the hand. */
function useSettledOrder(doubts: Doubt[]): Doubt[] {
  const order = useRef<string[]>([]);
  for (const { ingredient } of doubts) {
    if (!order.current.includes(ingredient.key)) order.current.push(ingredient.key);
  }
  const place = ({ ingredient }: Doubt) => order.current.indexOf(ingredient.key);
  return [...doubts].sort((a, b) => place(a) - place(b));
}

function shareText({ share }: Doubt): string {
  if (share === null) return 'not counted';
  if (share < 0.01) return 'under 1% of the carbs';
  return `${Math.round(share * 100)}% of the carbs`;
}

interface DoubtProps extends Props {
  doubt: Doubt;
}

/** One uncertain line; what else it may be is reckoned only once it is opened. */
function DoubtItem({ doubt, adaptation, table, options, names, onCorrect }: DoubtProps) {
  const [open, setOpen] = useState(false);
  const { ingredient, reasons } = doubt;
  const correction = adaptation.corrections[ingredient.key];
  const ties = useMemo(
    () => (open ? tiesOf(adaptation, ingredient, options, table) : []),
    [open, adaptation],
  );
  const meant = names.meant(ingredient.item.name);
  return (
    <li>
      <details onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>
          <span class="doubt-line">{ingredient.line.text}</span>
          <span class="doubt-share" lang="en">
            {correction ? 'corrected by you' : shareText(doubt)}
          </span>
        </summary>
        <div lang="en">
          <p>{reasons.join(' ')}</p>
          {meant && !correction && (
            <p>
              By your word, “{meant.name}” means {meant.foodName}.
            </p>
          )}
          <CorrectLine
            ingredient={ingredient}
            correction={correction}
            table={table}
            ties={ties}
            names={names}
            onCorrect={(next) => onCorrect(ingredient.key, next)}
          />
        </div>
      </details>
    </li>
  );
}

/** The lines the result rests on least surely, each with a quick correction. */
export function UncertainLines(props: Props) {
  const { adaptation, names } = props;
  const doubts = useSettledOrder(doubtsOf(adaptation));
  const varied = variedFoods(adaptation);
  return (
    <section class="least-certain" aria-labelledby="doubts-title">
      <h2 id="doubts-title">Least certain</h2>
      <ul class="limits">
        {varied.map(({ key, name, low, high }) => (
          <li key={key}>
            New in the recipe, and it differs between makers: {name} brings {amount(low)} to{' '}
            {amount(high)} g net carbs a serving. Compare your package's label.
          </li>
        ))}
      </ul>
      {doubts.length === 0 && (
        <p>Every line of the original that matters was read with confidence.</p>
      )}
      {names.failure && (
        <p role="alert" class="failure">
          {names.failure}
        </p>
      )}
      <ul class="doubts" lang={adaptation.recipe.language ?? undefined}>
        {doubts.map((doubt) => (
          <DoubtItem key={doubt.ingredient.key} {...props} doubt={doubt} />
        ))}
      </ul>
    </section>
  );
}
