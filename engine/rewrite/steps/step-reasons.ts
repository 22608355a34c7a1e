/** Why a step reads otherwise than before. */
import type { Mention } from '../naming/mention.ts';
import { capital, listOf, shortName } from '../naming/method-names.ts';

const sentence = (text: string): string => `${capital(text)}.`;

/** 'vital wheat gluten for part of the flour', 'berry spread instead of jam'. */
function swapped({ ingredient, newName, items }: Mention): string {
  const old = ingredient.item.name;
  const own = ingredient.match?.foodId;
  const others = items.filter(({ foodId }) => foodId !== own);
  const names = listOf([...new Set(others.map(({ foodName }) => shortName(foodName)))]);
  return others.length < items.length
    ? `${names} for part of the ${old}`
    : `${newName === 'flours' ? names : newName} instead of ${old}`;
}

/** Less, more or none of an ingredient that stays what it is. */
function amountChange({ ingredient, items }: Mention): 'less' | 'more' | 'no' {
  const now = items.reduce((sum, { grams }) => sum + grams, 0);
  if (now === 0) return 'no';
  return now < (ingredient.weight?.grams.best ?? now) ? 'less' : 'more';
}

/** Sentences on the changed ingredients that a step names: what stands for what, then less and more. */
export function whyChanged(named: readonly Mention[]): string[] {
  const changed = named.filter((mention) => mention.changed);
  const swaps = changed.filter(({ newName }) => newName !== null).map(swapped);
  const amounts = (['no', 'less', 'more'] as const).flatMap((word) => {
    const names = changed
      .filter((mention) => mention.newName === null && amountChange(mention) === word)
      .map(({ ingredient }) => ingredient.item.name);
    return names.length === 0 ? [] : [`${word} ${listOf([...new Set(names)])}`];
  });
  return [[...new Set(swaps)].join('; '), amounts.join('; ')]
    .filter((text) => text !== '')
    .map(sentence);
}
