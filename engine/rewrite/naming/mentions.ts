/** The ingredients as the method speaks of them, and what became of each. */
import type { Ingredient, Plan, PlannedItem } from '../../model.ts';
import { isSame, itemsFor } from '../lines/line-items.ts';
import { isAddition, partOfItem, partOfKey } from '../parts/part-of.ts';
import { withAdditions, withEggsTogether } from './addition-hosts.ts';
import { companionsOf } from './companions.ts';
import { crumbNames, isCrumbs, pressedOf } from './crumb-names.ts';
import { type Mention, mergedByFood } from './mention.ts';
import { madeName, newNameOf, singular } from './method-names.ts';
import { markedElsewhere, sharedHeadOf, sharedMentions } from './shared-names.ts';

/** Words a method uses for a food besides the line's own, by food id. */
const CALLED: Record<string, string[]> = {
  'pasta-dry': ['pasta', 'spaghetti', 'noodles', 'nudeln', 'pâtes'],
  'egg-noodles-dry': ['noodles', 'pasta', 'nudeln', 'pâtes'],
  'rice-white-dry': ['rice', 'reis', 'riz'],
  'breadcrumbs-dry': ['breadcrumbs', 'crumbs', 'bread crumbs'],
  panko: ['panko', 'breadcrumbs', 'crumbs'],
  'potato-hash-browns': ['hash browns', 'hash brown potatoes'],
  'potato-fries': ['frozen fries', 'french fries', 'fries'],
  brioche: ['bread'],
  'bread-french': ['bread'],
  'rice-paper': ['rice paper', 'rice papers', 'rice wrappers'],
  'corn-kernels': ['sweet corn', 'sweetcorn', 'corn'],
  'chocolate-semisweet': ['chocolate chips', 'chocolate'],
  'chocolate-dark-70': ['chocolate'],
  'powdered-sugar': [
    'powdered sugar',
    'icing sugar',
    'confectioners sugar',
    "confectioners' sugar",
    'confectioners’ sugar',
    "confectioner's sugar",
    'confectioner’s sugar',
  ],
};

/** Rice, sugar, flour and potatoes in languages that put the kind behind: 'arroz agulha', 'sucre en poudre', and varieties: 'aardappelen Bintje'. */
const KIND_BEHIND: ReadonlySet<string> = new Set(
  'cioccolato chocolat chocolate fromage queso formaggio queijo pâtes pasta patata patate pommes patatas batata batatas aardappelen aardappels kartoffeln potatis poteter kartofler lait leche latte leite pain pan pane pão papas patatine batatinhas riz arroz riso sucre azúcar açúcar zucchero farine harina farinha farina semoule sémola sêmola semola sfoglie placas láminas feuilles'.split(
    ' ',
  ),
);

/** Ends of compounds by which a method calls the whole: 'Mehl' of 'Weizenmehl', 'socker' of 'strösocker'. */
const COMPOUND_ENDS =
  /^\p{L}{2,}(mehl|zucker|nudeln|reis|ris|rijst|noedels|kartoffeln|schokolade|milch|käse|brot|brösel|flocken|suiker|meel|bloem|melk|aardappelen|socker|mjöl|mjölk|sukker|melis|mel|melk|mælk|poteter|kartofler|potatis)$/u;

/** Sugar that a method calls sugar, though icing sugar is on the list too. */
const PLAIN_SUGAR = /^(?:strösocker|strøsukker|kristallzucker|haushaltszucker|kristalsuiker)$/u;

/** The end of a compound, unless another line's name ends so too. */
function compoundEnd(own: string, others: ReadonlySet<string>): string[] {
  const last = own.split(/[\s-]+/).at(-1) ?? own;
  const end = COMPOUND_ENDS.exec(last)?.[1];
  if (end !== undefined && PLAIN_SUGAR.test(own)) return others.has(end) ? [] : [end];
  return end === undefined || [...others].some((name) => name.endsWith(end)) ? [] : [end];
}

/** Additions that a swap of this ingredient brings and that are spoken of together with it. */
function standIns(plan: Plan, ingredient: Ingredient): PlannedItem[] {
  const foods = plan.swaps
    .filter((swap) => swap.key === ingredient.key)
    .flatMap((swap) => swap.to.map(({ foodId }) => foodId));
  return plan.items.filter(
    (item) =>
      isAddition(item) &&
      item.grams > 0 &&
      foods.includes(item.foodId) &&
      item.role !== 'binder' &&
      partOfItem(plan, item) === partOfKey(plan, ingredient.key),
  );
}

/** 'semisweet chocolate chips' -> itself, 'chocolate chips', 'chips'; 'brown sugar' of 'light-brown sugar' too. */
function endings(name: string): string[] {
  const words = name.replace(/^(light|dark)-(?=\p{L})/u, '$1 ').split(/\s+/);
  return words.map((_, at) => words.slice(at).join(' '));
}

/** Kinds that are called by more than one word: 'pommes' alone would be apples. */
const KINDS_OF_WORDS = /^(?:pommes? de terre|patates? douces?|batatas? doces?)(?!\p{L})/u;

/** 'arroz' of 'arroz agulha', unless another line's name begins with it too. */
function firstWord(own: string, others: ReadonlySet<string>): string[] {
  const several = KINDS_OF_WORDS.exec(own)?.[0];
  if (several !== undefined) return [several];
  const beginning = (name: string): string => name.split(/\s+/)[0] ?? '';
  const word = beginning(own);
  const shared = [...others].some((name) => beginning(name) === word);
  return KIND_BEHIND.has(word) && !shared ? [word] : [];
}

/** 'acini de pepe' of 'acini de pepe pasta', 'agave' of 'agave syrup'. */
const withoutKind = (own: string): string[] => {
  const sap = /^(?:pure |light |dark )?(agave|maple) (?:syrup|nectar)$/.exec(own)?.[1];
  if (sap !== undefined) return [sap];
  const bare = /^(.{4,}) (?:pasta|noodles|rice|tortillas|sheets)$/.exec(own)?.[1];
  return bare === undefined ||
    /^(?:white|brown|dry|dried|fresh|cooked|egg|rice|flour|corn|whole[ -]?wheat|long[ -]grain)$/.test(
      bare,
    )
    ? []
    : [bare];
};

/** Shapes by which a method calls pasta, whatever stands behind: 'manicotti' of 'manicotti pasta tubes'. */
const SHAPE =
  /(?<!\p{L})(?:manicotti|cannelloni|penne|rigatoni|fusilli|macaroni|linguine|fettuccine|tagliatelle|spaghetti|bucatini|farfalle|ziti|rotini|cavatappi|orecchiette|orzo|conchiglie|ramen|udon|soba|vermicelli|ravioli|tortellini)(?!\p{L})/gu;

/** 'manicotti' and 'manicotti tubes' of 'manicotti pasta tubes'. */
const shapesIn = (own: string): string[] =>
  [...own.matchAll(SHAPE)].flatMap(([shape]) => {
    const last = own.split(/\s+/).at(-1) ?? '';
    return [shape, `${shape} ${last}`, `${shape} ${singular(last)}`];
  });

/** Names written as one word or two: 'corn meal' of 'cornmeal'. */
const ONE_OR_TWO: readonly (readonly [RegExp, string])[] = [
  [/\bcornmeal\b/g, 'corn meal'],
  [/\bcorn meal\b/g, 'cornmeal'],
  [/\bcornflour\b/g, 'corn flour'],
  [/\boatmeal\b/g, 'oat meal'],
  [/\bwheatgerm\b/g, 'wheat germ'],
];

const writtenApart = (names: readonly string[]): string[] =>
  names.flatMap((name) =>
    ONE_OR_TWO.flatMap(([one, other]) => {
      const apart = name.replace(one, other);
      return apart === name ? [] : [apart];
    }),
  );

/** Names of the other lines. */
const namesElsewhere = ({ item }: Ingredient, all: readonly Ingredient[]): Set<string> =>
  new Set(
    all
      .map((one) => one.item.name.toLowerCase().trim())
      .filter((name) => name !== item.name.toLowerCase().trim()),
  );

function namesOf(ingredient: Ingredient, all: readonly Ingredient[]): string[] {
  const own = ingredient.item.name.toLowerCase().trim();
  // A second line of the very same name is told apart by the words around it.
  const others = new Set(
    all
      .filter(({ item }) => item.name.toLowerCase().trim() !== own)
      .flatMap(({ item }) => endings(item.name.toLowerCase().trim()).map(singular)),
  );
  const unshared = endings(own).filter((name) => name === own || !others.has(singular(name)));
  const elsewhere = namesElsewhere(ingredient, all);
  const more = [
    ...(CALLED[ingredient.match?.foodId ?? ''] ?? []),
    ...ingredient.item.alternatives.map(({ name }) => name.toLowerCase().trim()),
  ].filter((name) => !elsewhere.has(name));
  return [
    ...new Set([
      ...unshared,
      ...firstWord(own, elsewhere),
      ...compoundEnd(own, elsewhere),
      ...writtenApart([own, ...unshared]).filter((name) => !elsewhere.has(name)),
      ...withoutKind(own),
      ...shapesIn(own).filter((shape) => ![...elsewhere].some((name) => name.includes(shape))),
      ...more,
    ]),
  ]
    .filter((word) => word.length > 2)
    .sort((a, b) => b.length - a.length);
}

/** Every ingredient with its names in the method and what became of it. */
export function mentionsOf(ingredients: readonly Ingredient[], plan: Plan): Mention[] {
  const own = ingredients
    .filter(({ match, line }) => match !== null && line.kind === 'ingredient')
    .map((ingredient) => mentionOf(ingredient, ingredients, plan));
  const single = withEggsTogether(withAdditions(markedElsewhere(own), plan));
  const pressed = pressedOf(single);
  const parts = plan.parts.length < 2 ? [] : plan.parts.map((_, at) => at);
  const ofParts = parts.flatMap((at) => sharedMentions(single.filter(({ part }) => part === at)));
  return [
    ...single,
    ...pressed,
    ...ofParts,
    ...sharedMentions(single).map(ofNoPart(parts.length > 0)),
  ];
}

/** Names that ingredients of several parts share mean none of the parts. */
const ofNoPart =
  (several: boolean) =>
  (mention: Mention): Mention =>
    several ? { ...mention, part: null } : mention;

/** The items that the page's steps take as they took the ingredient: not the egg or cheese that its swap brings besides. */
function withoutCompanions(
  items: PlannedItem[],
  { key, match }: Ingredient,
  { swaps }: Plan,
): PlannedItem[] {
  const aside = new Set(
    swaps.filter((swap) => swap.key === key).flatMap((s) => [...companionsOf(s)]),
  );
  return items.filter(({ foodId }) => foodId === match?.foodId || !aside.has(foodId));
}

function mentionOf(ingredient: Ingredient, all: readonly Ingredient[], plan: Plan): Mention {
  const whole = mergedByFood([...itemsFor(plan, ingredient), ...standIns(plan, ingredient)]);
  const made = madeName(ingredient, whole, plan);
  const items = made === null ? withoutCompanions(whole, ingredient, plan) : whole;
  const [only] = items;
  const touched =
    items.length > 0 || plan.swaps.some((s) => s.key === ingredient.key && s.keptGrams <= 0);
  const same = items.length === 1 && only !== undefined && isSame(only, ingredient);
  const newName = made ?? newNameOf(ingredient, items);
  const names = namesOf(ingredient, all);
  const changed = touched && !same;
  return {
    ingredient,
    items,
    names: isCrumbs({ newName, changed })
      ? crumbNames(names, namesElsewhere(ingredient, all))
      : names,
    sharedHead: sharedHeadOf(ingredient, all),
    newName,
    changed,
    role: plan.roles[ingredient.key]?.[0] ?? null,
    part: partOfKey(plan, ingredient.key),
    goesInWith: [],
    alsoElsewhere: new Set(),
  };
}
