/** What may concern the user: what is not counted, what is new, where a package decides. */
import { goesPastWithIt } from '../../../engine/index.ts';
import type { Adaptation } from '../../../engine/model.ts';
import { Icon } from '../controls/icon.tsx';
import { promiseWord } from '../goals/page-promises.tsx';
import { allergenWord } from '../words/allergen-words.ts';
import { foodWord } from '../words/food-words.ts';
import { PageNames } from '../words/page-names.tsx';
import { say, sayCount, sayList } from '../words/say.ts';
import { ToldSentence } from '../words/told-sentence.tsx';

interface MissingProps {
  adaptation: Adaptation;
  /** Opens the line where it can be put right; without it there is no button. */
  onSay?: ((key: string) => void) | undefined;
}

/** The names of lines as their page has them. */
export const nameOf = ({ ingredients }: Adaptation, key: string, text: string): string =>
  ingredients.find((one) => one.key === key)?.item.name || text;

/** Lines that are in no figure, those that the verdict lacks first. */
export function uncountedLines({ before, after, verdict }: Adaptation) {
  const lines = new Map([...before.uncounted, ...after.uncounted].map((one) => [one.key, one]));
  const lacked = new Set('missing' in verdict ? verdict.missing.map(({ key }) => key) : []);
  const all = [...lines.values()];
  const weighty = all.filter(({ key }) => lacked.has(key));
  return { weighty, all: [...weighty, ...all.filter(({ key }) => !lacked.has(key))] };
}

/**
 * Lines that are in no figure, always beside the figures; a sprig of a herb, which changes no verdict, is
 * told more quietly than a crust.
 */
export function NotCounted({ adaptation, onSay }: MissingProps) {
  const { weighty, all: missing } = uncountedLines(adaptation);
  if (missing.length === 0) return null;
  const keys = new Set(adaptation.ingredients.map(({ key }) => key));
  const first = missing.find(({ key }) => keys.has(key));
  const names = missing.slice(0, 3).map(({ key, text }) => nameOf(adaptation, key, text));
  const more = missing.length - names.length;
  return (
    <section class={weighty.length > 0 ? 'missing' : 'missing slight'}>
      <p>
        <b>{say('notCounted')}</b> <PageNames names={names} language={adaptation.recipe.language} />
        {more > 0 && ` ${sayCount('andMore', more)}`}.
        {goesPastWithIt(adaptation.verdict) && ` ${say('aboveWithIt')}`}
      </p>
      {onSay && first && weighty.length > 0 && (
        <button type="button" class="button" onClick={() => onSay(first.key)}>
          {say('sayWhich')}
        </button>
      )}
    </section>
  );
}

/** Figures that look wrong are asked about before they are believed. */
export function Questions({ adaptation, onSay }: MissingProps) {
  return (
    <>
      {adaptation.questions.map(({ code, text, key }) => (
        <section key={code + text} class="missing" role="alert">
          <p>
            <b>{say('pleaseCheck')}</b> <ToldSentence text={text} />
          </p>
          {key !== null && onSay && (
            <button type="button" class="button" onClick={() => onSay(key)}>
              {say('lookAtLine')}
            </button>
          )}
        </section>
      ))}
    </>
  );
}

/** Letters of names that one line of the popup holds. Own choice. */
const ONE_LINE = 30;

/** As many names as one line holds, the shortest where none fits; how many more there are. */
function inOneLine(names: readonly string[]): string {
  let letters = 0;
  const fitting = names.filter((name) => {
    if (letters + name.length > ONE_LINE) return false;
    letters += name.length;
    return true;
  });
  const shortest = [...names].sort((a, b) => a.length - b.length).slice(0, 1);
  const shown = fitting.length > 0 ? fitting : shortest;
  const more = names.length - shown.length;
  return more > 0 ? `${shown.join(', ')} ${sayCount('andMoreFoods', more)}` : sayList(shown);
}

interface ConcernsProps {
  adaptation: Adaptation;
  /** One line each, where something graver needs the room. */
  brief?: boolean;
}

/** Allergens that came in, and foods that are seldom in shops. */
export function Concerns({ adaptation, brief = false }: ConcernsProps) {
  const { allergensAdded, plan } = adaptation;
  const kept = plan.promises.filter(({ lifted }) => !lifted);
  const rare = plan.shopping.filter(({ availability }) => availability === 'speciality');
  const rareNames = rare.map(({ foodId, food }) => foodWord(foodId, food));
  if (allergensAdded.length + rare.length + kept.length === 0) return null;
  return (
    <ul class="concerns">
      {allergensAdded.length > 0 && (
        <li>
          <Icon name="warning" />
          <span>{say('nowContains', sayList(allergensAdded.map(allergenWord)))}</span>
        </li>
      )}
      {kept.length > 0 && (
        <li>
          <Icon name="tick" />
          <span>{say('staysAsPromised', sayList(kept.map(promiseWord)))}</span>
        </li>
      )}
      {rare.length > 0 && (
        <li>
          <Icon name="buy" />
          <span>{say('seldomSold', brief ? inOneLine(rareNames) : sayList(rareNames))}</span>
        </li>
      )}
    </ul>
  );
}
