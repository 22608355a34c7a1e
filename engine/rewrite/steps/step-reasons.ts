/** Why a step reads otherwise than before. */
import type { RewrittenStep } from '../../model.ts';
import { joinedWith, localFoodName, type MethodWords, withOf } from '../languages/method-words.ts';
import type { Mention } from '../naming/mention.ts';
import { capital, listOf, shortName } from '../naming/method-names.ts';

const sentence = (text: string): string => `${capital(text)}.`;

/** How changes are put in a language. */
const ENGLISH = {
  instead: '{new} instead of {old}',
  partly: '{new} for part of the {old}',
  less: 'less {old}',
  more: 'more {old}',
  none: 'no {old}',
};

function filled(text: string, now: string, old: string, words: MethodWords | null): string {
  // 'Au lieu de {old}' takes the word that the language has before this name.
  const whole = words === null ? text : text.replace(/\bde \{old\}/, () => withOf(old, words));
  return whole.replace('{new}', now).replace('{old}', old);
}

const listIn = (list: readonly string[], words: MethodWords | null): string =>
  words === null ? listOf(list) : joinedWith(list, words.and);

/** 'vital wheat gluten for part of the flour', 'berry spread instead of jam'. */
function swapped({ ingredient, newName, items }: Mention, words: MethodWords | null): string {
  const says = words?.changes ?? ENGLISH;
  const own = ingredient.match?.foodId;
  const others = items.filter(({ foodId }) => foodId !== own);
  const names = others.map(
    ({ foodId, foodName }) =>
      (words === null ? null : localFoodName(foodId, words)) ?? shortName(foodName),
  );
  const list = listIn([...new Set(names)], words);
  if (others.length < items.length) return filled(says.partly, list, ingredient.item.name, words);
  const called = words === null && newName !== null && newName !== 'flours' ? newName : list;
  return filled(says.instead, called, ingredient.item.name, words);
}

/** Less, more or none of an ingredient that stays what it is. */
function amountChange({ ingredient, items }: Mention): 'less' | 'more' | 'none' {
  const now = items.reduce((sum, { grams }) => sum + grams, 0);
  if (now === 0) return 'none';
  return now < (ingredient.weight?.grams.best ?? now) ? 'less' : 'more';
}

/**
 * Sentences on the changed ingredients that a step names, in the recipe's language: what stands for
 * what, then less and more.
 */
export function whyChanged(named: readonly Mention[], words: MethodWords | null): string[] {
  const says = words?.changes ?? ENGLISH;
  const changed = named.filter((mention) => mention.changed);
  const swaps = changed
    .filter(({ newName }) => newName !== null)
    .map((mention) => swapped(mention, words));
  const amounts = (['none', 'less', 'more'] as const).flatMap((word) => {
    const names = changed
      .filter((mention) => mention.newName === null && amountChange(mention) === word)
      .map(({ ingredient }) => ingredient.item.name);
    const list = listIn([...new Set(names)], words);
    return names.length === 0 ? [] : [filled(says[word], '', list, words)];
  });
  return [[...new Set(swaps)].join('; '), amounts.join('; ')]
    .filter((text) => text !== '')
    .map(sentence);
}

/** The step with other words, and why. */
export const withReason = (step: RewrittenStep, after: string, why: string): RewrittenStep => ({
  ...step,
  after,
  change: 'changed',
  why: step.why === null || step.why.includes(why) ? (step.why ?? why) : `${step.why} ${why}`,
});
