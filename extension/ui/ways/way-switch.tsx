/** The ways to make the dish: within the budget, lighter, or a smaller piece of it. */
import type { Adaptation, Goals, WayOutcome } from '../../../engine/model.ts';
import { gramsWords } from '../figures/format.ts';
import { portionNoun } from '../words/portion.ts';
import { type MessageKey, say, sayCount } from '../words/say.ts';

type Way = WayOutcome['plan']['way'];

const WORDS: Record<Way, MessageKey> = {
  within: 'wayWithin',
  lighter: 'wayLighter',
  smaller: 'waySmaller',
};

const MEANINGS: Record<Way, MessageKey> = {
  within: 'wayWithinMeans',
  lighter: 'wayLighterMeans',
  smaller: 'waySmallerMeans',
};

/** Its name; 'within' would be no true word for what is above the budget even with every change that helps. */
const wayWord = ({ plan, verdict }: WayOutcome): string =>
  say(plan.way === 'within' && verdict.state === 'tooMuch' ? 'wayThorough' : WORDS[plan.way]);

interface Props {
  adaptation: Adaptation;
  onGoals(goals: Partial<Goals>): void;
}

/** One switch for all of them, each with its figure; nothing where there is one way only. */
export function WaySwitch({ adaptation, onGoals }: Props) {
  const { ways, plan } = adaptation;
  if (ways.length < 2) return null;
  return (
    <fieldset class="ways">
      <legend class="hidden">{say('ways')}</legend>
      {ways.map((outcome) => {
        const { way } = outcome.plan;
        const { netCarbsG } = outcome.verdict;
        return (
          <button
            key={way}
            type="button"
            aria-pressed={way === plan.way}
            title={say(MEANINGS[way])}
            onClick={() => onGoals({ way })}
          >
            {wayWord(outcome)}
            {netCarbsG && <span class="way-figure"> {gramsWords(netCarbsG.best)}</span>}
          </button>
        );
      })}
    </fieldset>
  );
}

/** What the chosen way means, in few words; '' where there is no choice. */
export const wayMeaning = ({ ways, plan }: Pick<Adaptation, 'ways' | 'plan'>): string =>
  ways.length < 2 ? '' : say(MEANINGS[plan.way]);

function wayOutWords(outcome: WayOutcome, adaptation: Adaptation): { head: string; text: string } {
  const { plan } = outcome;
  if (plan.way === 'smaller') {
    const noun = portionNoun(adaptation, plan.servings);
    return { head: say('cutInto', plan.servings, noun), text: say('sameDishSmaller') };
  }
  const changes = sayCount('changesIn', plan.swaps.length);
  return { head: wayWord(outcome), text: changes };
}

/** The other ways that bring a serving down where it is too much. */
export function betterWays({ verdict, ways, plan: taken }: Adaptation): WayOutcome[] {
  const now = verdict.netCarbsG?.best;
  if (verdict.state !== 'tooMuch' || now === undefined) return [];
  return ways.filter(
    (one) =>
      one.plan.way !== taken.way &&
      one.verdict.netCarbsG !== null &&
      one.verdict.netCarbsG.best < now,
  );
}

/** Where a serving is too much: the other ways that bring it down, with their figures. */
export function WaysOut({ adaptation, onGoals }: Props) {
  const better = betterWays(adaptation);
  if (better.length === 0) return null;
  return (
    <section class="ways-out" aria-labelledby="ways-out-title">
      <h2 id="ways-out-title">{say('bringItDown')}</h2>
      <ul class="choices">
        {better.map((rework) => {
          const { head, text } = wayOutWords(rework, adaptation);
          return (
            <li key={rework.plan.way}>
              <button
                type="button"
                class="choice"
                onClick={() => onGoals({ way: rework.plan.way })}
              >
                <b>{head}</b>
                <span>{text}</span>
                <i>{gramsWords(rework.verdict.netCarbsG?.best ?? 0)}</i>
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
