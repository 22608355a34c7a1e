/** What only the food that stays is done to: nobody peels or quarters the cauliflower beside the potatoes. */
import { hasTag } from '../../foods/tags.ts';
import type { MethodWords } from '../languages/method-words.ts';
import { isSaidIn } from '../naming/foreign-forms.ts';
import type { Mention } from '../naming/mention.ts';

const PEELS =
  /(?<!\p{L})(?:peel(?:ed|ing)?|scrub\w*|quarter(?:s|ed)?|lengthwise|schäl\p{L}*|épluch\p{L}*|pel(?:er|ez|e|are|ate|ar|a|e|adas?|ados?)|schil\p{L}*|sbucci\p{L}*|descasc\p{L}*|skala\p{L}*|skræl\p{L}*|skrell\p{L}*)(?!\p{L})/iu;
const BOILS =
  /(?<!\p{L})(?:pot|pan|saucepan|boil\w*|cook\w*|simmer\w*|water|koch\p{L}*|topf|wasser|cui\p{L}*|eau|casserole|coc\p{L}*|agua|olla|cuoc\p{L}*|lessa\p{L}*|acqua|coz\p{L}*|água|panela|kook\p{L}*|pan|kok\p{L}*|vand|vatten|vann)(?!\p{L})/iu;

/** The ingredient without what is not peeled, in a sentence that peels it and does no more, where later ones name it again; null elsewhere. */
export function peeledAlone(
  mention: Mention,
  sentence: string,
  later: readonly string[],
  words: MethodWords | null,
): Mention | null {
  if (!mention.changed || !PEELS.test(sentence) || BOILS.test(sentence)) return null;
  const id = mention.ingredient.match?.foodId;
  const kept = mention.items.filter(
    (item) => item.foodId === id || !hasTag(item.foodId, 'unpeeled'),
  );
  if (!kept.some(({ foodId }) => foodId === id) || kept.length === mention.items.length)
    return null;
  const says = (text: string): boolean => isSaidIn(text, mention, words);
  if (!says(sentence) || !later.some(says)) return null;
  return kept.length > 1 ? null : { ...mention, items: kept, newName: null, goesInWith: [] };
}
