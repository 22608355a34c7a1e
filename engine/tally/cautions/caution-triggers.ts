/** When each caution applies, the gravest first: only the first ones are shown. */
import { hasTag } from '../../foods/tags.ts';
import { type Food, isDough } from '../../model.ts';
import { plainWords } from '../../plain-words.ts';
import pageWords from '../data/page-words.json' with { type: 'json' };
import { isOfAnyMake } from '../verdict/allergen-change.ts';
import type { CautionFacts } from './caution-facts.ts';

/** Fall of net carbs a serving that is told, and from which on it is told more strongly, g. Own choice. */
const FALL_G = 15;
const FALL_SHARE = 0.3;
const LARGE_FALL_G = 30;
/** A serving with hardly any carbohydrate, g. Own choice. */
const NEARLY_NONE_G = 5;
/** Allulose of a serving that a stomach may feel, g. Own choice. */
const MUCH_ALLULOSE_G = 10;
/** Protein more in a serving that those with a kidney disease are told of, g: more than rounding. Own choice. */
const ANY_PROTEIN_G = 1;
/** Most sodium of a serving before it is called salty, mg; three quarters of the WHO's limit for a day. */
const SALTY_MG = 1500;

export const fallOf = ({ change }: CautionFacts): number => Math.max(0, -change('netCarbsG'));

function cutsCarbs(facts: CautionFacts): boolean {
  const start = facts.before.perServing.netCarbsG?.best ?? 0;
  const fall = fallOf(facts);
  return fall >= FALL_G || (start > 0 && fall / start >= FALL_SHARE);
}

const polyolsMatter = ({ after, now }: CautionFacts): boolean => {
  const per100 = after.per100gCooked?.polyolsG?.best ?? 0;
  return now('polyolsG') > 10 || per100 > 10;
};

const hasPolyol =
  (...kinds: readonly string[]) =>
  ({ per100g }: Food): boolean =>
    kinds.some((kind) => (per100g.polyolsG?.[kind] ?? 0) > 0);

const hasAllulose = ({ per100g }: Food): boolean => (per100g.alluloseG ?? 0) > 0;

const hasGluten = (food: Food): boolean => food.allergens.includes('gluten');

/** The original had it too, so the reader is warned later in the order. */
const hadGluten = ({ served, plan, foods }: CautionFacts): boolean => {
  const replaced = plan.swaps.map(({ from }) => (from === null ? null : foods.byId(from.foodId)));
  const kept = served.filter(({ added }) => !added).map(({ food }) => food);
  return [...replaced, ...kept].some(
    (food) => food !== null && hasGluten(food) && isOfAnyMake(food),
  );
};

/** Powders that swell; konjac noodles and rice have swollen already. */
const isSwellingPowder = (food: Food): boolean =>
  hasTag(food, 'psyllium') || food.id === 'konjac-glucomannan';

const isMeatOrFish = ({ group, state }: Food): boolean =>
  state === 'raw' && (group === 'meat and poultry' || group === 'fish and seafood');

/** Pages do not always say their language, so the words of all are looked for. */
const PAGE_WORDS = Object.fromEntries(
  Object.entries(pageWords).map(([subject, words]) => [subject, Object.values(words).flat()]),
) as Record<keyof typeof pageWords, string[]>;

/** Whether title or method has such a word; a space in the data marks where one begins or ends. */
const speaksOf = (subject: keyof typeof pageWords, { words }: CautionFacts): boolean =>
  PAGE_WORDS[subject].some((word) => plainWords(words).includes(word));

/** Egg that no packet says is cooked or dried. */
const isFreshEgg = ({ id }: Food): boolean => /^egg(?:-white|-yolk)?$/.test(id);

/** A method without heat, or a dish whose eggs stay raw unless it says how they are warmed. */
const staysRaw = (f: CautionFacts): boolean =>
  !speaksOf('onHeat', f) || (speaksOf('rawEggDish', f) && !speaksOf('eggsHeated', f));

/** In other languages no word of heat is known, and a method without any proves nothing. */
const HEAT_KNOWN: ReadonlySet<string> = new Set([...Object.keys(pageWords.onHeat), 'no', 'nn']);
const saysHeat = ({ language }: CautionFacts): boolean =>
  HEAT_KNOWN.has((language ?? 'en').slice(0, 2).toLowerCase());

/** Without a method nothing is known of the eggs. */
const MANY_WORDS = 20;
const hasRawEggs = (f: CautionFacts): boolean =>
  saysHeat(f) && f.words.split(/\s+/).length >= MANY_WORDS && f.eats(isFreshEgg) && staysRaw(f);

const ofTheKidneys = ({ person }: CautionFacts): boolean => person?.kidneyDisease === true;

const changesFood = ({ plan }: CautionFacts): boolean => plan.swaps.length > 0;

type Trigger = readonly [code: string, applies: (facts: CautionFacts) => boolean];

/** Thresholds are common practice, no source, unless the caution's own source gives the number. */
export const TRIGGERS: readonly Trigger[] = [
  ['BITTER_KERNELS', (f) => speaksOf('bitterKernels', f)],
  ['MUCH_FEWER_CARBS_HYPO', (f) => fallOf(f) >= LARGE_FALL_G],
  ['FEWER_CARBS_HYPO', (f) => cutsCarbs(f) && fallOf(f) < LARGE_FALL_G],
  [
    'SGLT2_KETOACIDOSIS',
    (f) => f.person?.sglt2 === true && cutsCarbs(f) && f.now('netCarbsG') < NEARLY_NONE_G,
  ],
  ['NOT_WITHOUT_CARE_TEAM', (f) => f.person?.needsCarePlan === true || speaksOf('carePlan', f)],
  ['KIDNEYS', (f) => speaksOf('kidneys', f) || (ofTheKidneys(f) && changesFood(f))],
  ['XYLITOL_DOGS', ({ eats }) => eats(hasPolyol('xylitol'))],
  ['MORE_PROTEIN', (f) => f.change('proteinG') > (ofTheKidneys(f) ? ANY_PROTEIN_G : 15)],
  ['GLUTEN', (f) => f.adds(hasGluten) && !hadGluten(f)],
  ['SWELLING_FIBRE', ({ adds }) => adds(isSwellingPowder)],
  ['POTASSIUM', ({ adds }) => adds(({ per100g }) => (per100g.potassiumMg ?? 0) > 5000)],
  [
    'DRY_BEANS',
    (f) =>
      f.eats(({ name, state }) => state === 'dry' && /\b(?:kidney|white) bean/.test(name)) &&
      speaksOf('slowCooker', f),
  ],
  ['RAW_EGGS', hasRawEggs],
  ['SALTY', ({ now }) => now('sodiumMg') >= SALTY_MG],
  ['READY_BREAD', ({ adds }) => adds((food) => hasTag(food, 'ready-bread'))],
  ['ALLULOSE', (f) => f.now('alluloseG') > MUCH_ALLULOSE_G || f.adds(hasAllulose)],
  ['POLYOLS', polyolsMatter],
  ['MORE_FIBRE', ({ change }) => change('fiberG') >= 8],
  [
    'CHECK_WITH_METER',
    ({ adds }) =>
      adds((food) => hasTag(food, 'label-fibre') || hasPolyol('maltitol', 'isomalt')(food)),
  ],
  ['CENTRE_TEMPERATURE', ({ eats }) => eats(isMeatOrFish)],
  [
    'ALCOHOL',
    ({ served }) =>
      served.some((s) => ((s.food.per100g.alcoholG ?? 0) * s.gramsPerServing) / 100 > 1),
  ],
  [
    'ACRYLAMIDE',
    (f) => f.family === 'breaded-food' || (f.family === 'potato-dish' && speaksOf('browning', f)),
  ],
  ['LABEL_CARBS', ({ adds }) => adds(({ name }) => /\bblend\b|sugar-free/i.test(name))],
  ['GLUTEN', (f) => f.adds(hasGluten) && hadGluten(f)],
  ['XANTHAN_INFANTS', ({ adds }) => adds(({ id }) => id === 'xanthan-gum')],
  ['RAW_DOUGH', ({ family }) => isDough(family)],
];
