/** Steps of other languages that boil what is no longer there. */
import { keptFor } from '../../kept-results.ts';
import { keyed, type MethodWords } from '../languages/method-words.ts';
import { ENDINGS, formsOf } from '../naming/foreign-forms.ts';
import type { Mention } from '../naming/mention.ts';
import { capital } from '../naming/method-names.ts';
import { boiledOf } from '../steps/boils-as.ts';
import { END, literal, START } from './name-patterns.ts';
import { sentencesOf } from './sentences.ts';

/** What goes into the pot with it: foods by their ids. */
const POT = /water|salt|oil/;
const SERVES =
  /(?<!\p{L})(?:s[ei]rv\p{L}*|anricht\p{L}*|opdien\p{L}*|dien \p{L}*|mezcl\p{L}*|m[ée]lang\p{L}*|mescol\p{L}*|condi\p{L}*|mistur\p{L}*|misch\p{L}*|vermeng\p{L}*|schwenk\p{L}*|meng\p{L}*|bland\p{L}*|vend\p{L}*|rør\p{L}*|rör\p{L}*)/iu;
const DRAINS =
  /(?<!\p{L})(?:escurr\p{L}*|abgieß\p{L}*|abtropf\p{L}*|égoutt\p{L}*|giet \p{L}*|afgiet\p{L}*|uitlek\p{L}*|scol(?:a|are|ate|atela|atele)(?!\p{L})|escorr\p{L}*|häll av|låt rinna av|hæld \p{L}+ fra|hell av)/iu;
/** What else goes on, or is looked at, while it boils. */
const MEANWHILE =
  /(?<!\p{L})(?:mientras|hasta que|während|inzwischen|bis (?:die|der|das)|pendant|jusqu\p{L}*|terwijl|ondertussen|totdat|mentre|finché|enquanto|até|medan|tills|under tiden|mens|indtil|til de)(?!\p{L})/iu;

const called = keptFor(
  ({ names, ingredient }: Mention) =>
    new RegExp(
      `${START}(?:${[...formsOf([...names, ingredient.item.name]).keys()].map(literal).join('|')})${ENDINGS}${END}`,
      'iu',
    ),
);

const isGone = (mention: Mention): boolean => mention.changed && boiledOf(mention)?.length === 0;

/** What a sentence says from its serving on; empty when it only boils and drains. */
function servedPart(sentence: string, { and }: MethodWords): string {
  const clauses = sentence.split(new RegExp(`,\\s+|\\s+${literal(and)}\\s+`, 'u'));
  const at = clauses.findIndex((clause) => SERVES.test(clause));
  if (at < 0) return '';
  return capital(sentence.slice(sentence.indexOf(clauses[at] ?? '')));
}

export interface GoneBoiling {
  text: string;
  /** Ingredients whose boiling fell away here. */
  dropped: Mention[];
  /** Whether nothing else is left of the step. */
  alone: boolean;
}

/**
 * The step without the sentences that only boil, drain or heat the water for what is not boiled now. A
 * step that is nothing else says that the food is left out.
 */
export function withoutGoneBoiling(
  text: string,
  mentions: readonly Mention[],
  words: MethodWords,
): GoneBoiling {
  const gone = mentions.filter(isGone);
  if (gone.length === 0 || !/\bboil\b/.test(keyed(text, words)))
    return { text, dropped: [], alone: false };
  const namesOther = (sentence: string, own: readonly Mention[]): boolean =>
    mentions.some(
      (one) =>
        !own.some(({ ingredient }) => ingredient.key === one.ingredient.key) &&
        !POT.test(one.ingredient.match?.foodId ?? '') &&
        called(one).test(sentence),
    );
  const sentences = sentencesOf(text);
  const drains = sentences.some((sentence) => DRAINS.test(sentence));
  const dropped = new Set<Mention>();
  const boilsGone = (sentence: string): Mention | undefined =>
    MEANWHILE.test(sentence)
      ? undefined
      : gone.find((one) => called(one).test(sentence) && !namesOther(sentence, gone));
  const kept = sentences.flatMap((sentence, at): string[] => {
    const own = boilsGone(sentence);
    const next = boilsGone(sentences[at + 1] ?? '');
    if (own !== undefined && (dropped.size === 0 || !SERVES.test(sentence))) dropped.add(own);
    else if (dropped.size > 0 && DRAINS.test(sentence) && !namesOther(sentence, [])) {
      // Draining, told of what has just been boiled.
    } else if (
      drains &&
      next !== undefined &&
      /\bboil\b/.test(keyed(sentence, words)) &&
      !namesOther(sentence, [])
    ) {
      return [];
    } else return [sentence];
    const served = servedPart(sentence, words);
    return served === '' ? [] : [served];
  });
  if (dropped.size === 0) return { text, dropped: [], alone: false };
  const names = [...dropped].map(({ ingredient }) => ingredient.item.name);
  return {
    text: kept.length === 0 ? `${capital(names.join(', '))}: ${words.leaveOut}.` : kept.join(' '),
    dropped: [...dropped],
    alone: kept.length === 0,
  };
}
