/** What you do: the few changes that matter, grouped by the original ingredient. */
import { useState } from 'preact/hooks';
import type { Adaptation } from '../../../engine/model.ts';
import { Icon } from '../controls/icon.tsx';
import { gramsOnScale } from '../figures/sources/source-words.ts';
import { engineLang } from '../words/engine-language.ts';
import { foodWord } from '../words/food-words.ts';
import { say, sayCount, sayList } from '../words/say.ts';
import { type Change, changesOf, type NewFood, partedChanges } from './changes.ts';

const word = ({ foodId, food }: NewFood): string => foodWord(foodId, food);
const grams = (value: number): string => `${gramsOnScale(value)} g`;

/** Less than this of a companion (g) goes without saying here: the list of ingredients has it. Own choice. */
const WORTH_SAYING_G = 1;

/** The amount that stands out, and the rest of the line. */
export function changeWords({ from, keptG, to: all }: Change): { amount: string; text: string } {
  const to = all.filter(({ grams: each }, at) => at === 0 || each >= WORTH_SAYING_G);
  const [first, ...others] = to;
  const joined = (foods: typeof to) =>
    sayList(foods.map((one) => `${grams(one.grams)} ${word(one)}`));
  if (!from)
    return {
      amount: first ? grams(first.grams) : '',
      text: say('doAdded', first ? word(first) : ''),
    };
  const was = gramsOnScale(from.grams);
  if (keptG > 0) {
    return {
      amount: grams(keptG),
      text:
        to.length === 0
          ? say('doLess', word(from), was)
          : say('doLessWith', word(from), was, joined(to)),
    };
  }
  if (!first) return { amount: '', text: say('doLeaveOut', word(from), was) };
  return {
    amount: grams(first.grams),
    text:
      others.length === 0
        ? say('doInstead', word(first), word(from), was)
        : say('doInsteadWith', word(first), word(from), was, joined(others)),
  };
}

function Lines({ changes }: { changes: readonly Change[] }) {
  return (
    <ul class="do">
      {changes.map((change) => {
        const { amount, text } = changeWords(change);
        return (
          <li key={change.key}>
            <span class="new">{amount}</span>
            <span>{text}</span>
          </li>
        );
      })}
    </ul>
  );
}

export function ChangeList({ adaptation }: { adaptation: Adaptation }) {
  const [open, setOpen] = useState(false);
  const { main, small } = partedChanges(changesOf(adaptation));
  const { notReworked } = adaptation.plan;
  if (notReworked !== null)
    return (
      <p class="not-reworked" lang={engineLang()}>
        {notReworked}
      </p>
    );
  if (main.length === 0) return <p>{say('nothingToChange')}</p>;
  return (
    <>
      <Lines changes={main} />
      {small.length > 0 && (
        <button
          type="button"
          class="more-lines"
          aria-expanded={open}
          onClick={() => setOpen(!open)}
        >
          <Icon name={open ? 'down' : 'right'} />
          {sayCount('smallChanges', small.length)}
        </button>
      )}
      {open && <Lines changes={small} />}
    </>
  );
}
