/** A step that boils rice with spices in its own liquid, where nothing of the rice is left: what flavours it boils down first. */
import type { FoodTable } from '../../foods/index.ts';
import type { Mention } from '../naming/mention.ts';
import { listOf } from '../naming/method-names.ts';
import type { LateGrain } from './late-grains.ts';
import { isNamedIn, namePattern } from './name-patterns.ts';
import { sentencesOf } from './sentences.ts';

const FLAVOURS: ReadonlySet<string> = new Set([
  'spices and dried herbs',
  'stocks and broths',
  'fats and oils',
  'baking supplies',
]);

/** 'with the cardamom, turmeric and stock, bring ...' */
const LISTED =
  /\b(?:with|add|in) (?:the )?([^.;]*?\b(?:stock|broth|bouillon|water)\b[^.;,]*?)(?=,|\.|;| and (?:bring|cook|boil|cover|simmer)\b)/i;

const LIQUID = /\b(?:stock|broth|bouillon|water)\b/i;

/** Ends the handling of the rice: what comes behind is put on top or served. */
const GOES_ON = /^(?:serve|spoon|divide|garnish|scatter|sprinkle|top|warm the|meanwhile)\b/i;

const groupOf = ({ ingredient }: Mention, foods: FoodTable): string =>
  foods.byId(ingredient.match?.foodId ?? '')?.group ?? '';

/** The step with what flavoured the grains boiled down, or without their boiling; null where more than flavour is in the pot. */
export function boiledDown(
  text: string,
  { mention, early }: LateGrain,
  mentions: readonly Mention[],
  foods: FoodTable,
): string | null {
  if (early.items.length > 0) return null;
  const sentences = sentencesOf(text);
  const from = sentences.findIndex((sentence) => isNamedIn(sentence, mention));
  if (from < 0) return null;
  const behind = sentences.findIndex((sentence, at) => at > from && GOES_ON.test(sentence));
  const end = behind < 0 ? sentences.length : behind;
  const pot = sentences.slice(from, end).join(' ');
  const key = mention.ingredient.key;
  const others = mentions.filter(
    (one) => one.ingredient.key !== key && isNamedIn(pot.replace(namePattern(mention), ''), one),
  );
  if (others.length === 0 || !others.every((one) => FLAVOURS.has(groupOf(one, foods)))) return null;
  const said = others
    .flatMap((one) => {
      const found = namePattern(one).exec(pot);
      return found === null ? [] : [{ at: found.index, name: found[0] }];
    })
    .toSorted((a, b) => a.at - b.at)
    .map(({ name }) => name.toLowerCase());
  const [, page] = LISTED.exec(pot) ?? [];
  const whole = said.every((name) => page?.toLowerCase().includes(name)) ? page : undefined;
  const list = whole ?? listOf([...new Set(said)]);
  const first = LIQUID.test(list)
    ? `Bring the ${list} to the boil and boil down until hardly any liquid is left.`
    : `Warm the ${list} in the pan for a minute.`;
  return [...sentences.slice(0, from), first, ...sentences.slice(end)].join(' ');
}
