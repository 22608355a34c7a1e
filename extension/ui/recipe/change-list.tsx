/** What you do: the few changes that matter, grouped by the original ingredient. */
import { Fragment } from 'preact';
import { useState } from 'preact/hooks';
import type { Adaptation } from '../../../engine/model.ts';
import { Icon } from '../controls/icon.tsx';
import { gramsOnScale } from '../figures/sources/source-words.ts';
import { foodWord } from '../words/food-words.ts';
import { say, sayCount } from '../words/say.ts';
import { ToldSentence } from '../words/told-sentence.tsx';
import { type Change, changesOf, type NewFood, partedChanges } from './changes.ts';

const word = ({ foodId, food }: NewFood): string => foodWord(foodId, food);
const grams = (value: number): string => `${gramsOnScale(value)} g`;

/** Less than this of a companion (g) goes without saying here: the list of ingredients has it. Own choice. */
const WORTH_SAYING_G = 1;

/** An amount to weigh, and what of. */
interface DoWords {
  amount: string;
  text: string;
}

const inFull = (food: NewFood): DoWords => ({ amount: grams(food.grams), text: word(food) });

/** One change in lines of one amount each: first what stands in its place, then what comes beside it. */
export function changeWords({ from, keptG, to: all }: Change): DoWords[] {
  const to = all.filter(({ grams: each }, at) => at === 0 || each >= WORTH_SAYING_G);
  const [first, ...others] = to;
  if (!from)
    return first ? [{ amount: grams(first.grams), text: say('doAdded', word(first)) }] : [];
  const was = gramsOnScale(from.grams);
  if (keptG > 0)
    return [{ amount: grams(keptG), text: say('doLess', word(from), was) }, ...to.map(inFull)];
  if (!first) return [{ amount: '', text: say('doLeaveOut', word(from), was) }];
  const instead = say('doInstead', word(first), word(from), was);
  return [{ amount: grams(first.grams), text: instead }, ...others.map(inFull)];
}

/** As many changes as have room, but always the first; the others are folded with the small ones. */
export function roomFor(main: readonly Change[], small: readonly Change[], mostLines: number) {
  let lines = 0;
  const shown = main.filter((change, at) => {
    lines += changeWords(change).length;
    return at === 0 || lines <= mostLines;
  });
  return { shown, folded: [...main.filter((one) => !shown.includes(one)), ...small] };
}

function Lines({ changes }: { changes: readonly Change[] }) {
  return (
    <ul class="do">
      {changes.map((change) => (
        <li key={change.key}>
          {changeWords(change).map(({ amount, text }, at) => (
            <Fragment key={text}>
              <span class={at === 0 ? 'new' : 'new beside'}>{amount}</span>
              <span>{text}</span>
            </Fragment>
          ))}
        </li>
      ))}
    </ul>
  );
}

/** Said where no food changes: that none has to, or that no change is worth making though it is too much. */
export const nothingChanged = ({ verdict }: Adaptation): string =>
  say(verdict.state === 'tooMuch' ? 'nothingWorthChanging' : 'nothingToChange');

interface Props {
  adaptation: Adaptation;
  /** Amounts to be seen at once. */
  mostLines: number;
}

export function ChangeList({ adaptation, mostLines }: Props) {
  const [open, setOpen] = useState(false);
  const { main, small } = partedChanges(changesOf(adaptation));
  const { notReworked } = adaptation.plan;
  if (notReworked !== null)
    return (
      <p class="not-reworked">
        <ToldSentence text={notReworked} />
      </p>
    );
  if (main.length === 0) return <p>{nothingChanged(adaptation)}</p>;
  const { shown, folded } = roomFor(main, small, mostLines);
  return (
    <div class={folded.length > 0 ? 'do-lines with-more' : 'do-lines'}>
      <Lines changes={shown} />
      {folded.length > 0 && (
        <button
          type="button"
          class="more-lines"
          aria-expanded={open}
          onClick={() => setOpen(!open)}
        >
          {sayCount('smallChanges', folded.length)}
          <Icon name={open ? 'down' : 'right'} />
        </button>
      )}
      {open && <Lines changes={folded} />}
    </div>
  );
}
