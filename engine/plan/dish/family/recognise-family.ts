/** Guesses the family of one part of a dish from baker's ratios first, then from title and method words. */
import type { FoodTable } from '../../../foods/index.ts';
import { isSaltySauce } from '../../../foods/savoury.ts';
import type { Family, Ingredient } from '../../../model.ts';
import { usualRole } from '../roles.ts';
import { titledKind } from './titled-kind.ts';

export interface FamilyGuess {
  id: Family;
  confidence: number;
  why: string;
}

/** Masses per gram of flour base; `flour` is grams, `flourShare` its part of the whole mass. */
interface Ratios {
  flour: number;
  flourShare: number;
  liquid: number;
  sugar: number;
  fat: number;
  egg: number;
  cocoa: number;
  yeast: boolean;
  leavening: boolean;
  /** Seasoned with soy sauce or its like. */
  salty: boolean;
  /** Share of the dish's mass that is meat, poultry, fish or seafood. */
  flesh: number;
  /** Share of the dish's mass by class. */
  share: Map<string, number>;
}

const FLESH: ReadonlySet<string> = new Set(['meat and poultry', 'fish and seafood']);

const DOUGH_STARCH = new Set(['wheat-flours', 'other-flours', 'low-carb-flours', 'cornmeals']);

function measure(ingredients: readonly Ingredient[], foods: FoodTable): Ratios {
  const sum = {
    flour: 0,
    liquid: 0,
    sugar: 0,
    fat: 0,
    egg: 0,
    cocoa: 0,
    total: 0,
    starch: 0,
    flesh: 0,
  };
  let yeast = false;
  let leavening = false;
  let salty = false;
  const share = new Map<string, number>();
  for (const { match, weight } of ingredients) {
    const food = match ? foods.byId(match.foodId) : null;
    if (!food || !weight) continue;
    const g = weight.grams.best * weight.eaten.best;
    const { class: cls, role } = usualRole(food);
    sum.total += g;
    share.set(cls, (share.get(cls) ?? 0) + g);
    if (FLESH.has(food.group)) sum.flesh += g;
    if (food.id === 'sourdough-starter') {
      // Half flour, half water, as starters are mostly kept (common practice, no source).
      yeast = true;
      sum.flour += g / 2;
      sum.liquid += g / 2;
    } else if (DOUGH_STARCH.has(cls)) sum.flour += g;
    else if (cls === 'starches') sum.starch += g;
    else if (role === 'egg') sum.egg += g;
    else if (role === 'liquid') sum.liquid += (g * (food.per100g.waterG ?? 90)) / 100;
    else if (role === 'sweetness') sum.sugar += g;
    if (role === 'fat') sum.fat += (g * (food.per100g.fatG ?? 80)) / 100;
    if (cls === 'cocoa' || cls === 'chocolates') sum.cocoa += g;
    if (role === 'yeast') yeast = true;
    if (isSaltySauce(food.id)) salty = true;
    if (cls === 'leaveners' || food.id === 'self-raising-flour') leavening = true;
  }
  // Loose starch beside flour lightens it; alone it only thickens.
  const base = sum.flour + (sum.flour > sum.starch ? sum.starch : 0);
  const per = (g: number): number => (base > 0 ? g / base : 0);
  for (const [cls, g] of share) share.set(cls, sum.total > 0 ? g / sum.total : 0);
  return {
    flour: base,
    flourShare: sum.total > 0 ? base / sum.total : 0,
    liquid: per(sum.liquid),
    sugar: per(sum.sugar),
    fat: per(sum.fat),
    egg: per(sum.egg),
    cocoa: per(sum.cocoa),
    yeast,
    leavening,
    salty,
    flesh: sum.total > 0 ? sum.flesh / sum.total : 0,
    share,
  };
}

const guess = (id: Family, confidence: number, why: string): FamilyGuess => ({
  id,
  confidence,
  why,
});

function yeasted(r: Ratios, title: string, method: string): FamilyGuess {
  const flat = /pizza|naan|pita|focaccia|flatbread|calzone|stromboli|lavash/;
  if (flat.test(title)) return guess('flatbread', 0.95, 'yeast and a flatbread title');
  if (r.fat + r.sugar < 0.1) {
    if (flat.test(method)) return guess('flatbread', 0.7, 'lean yeast dough shaped flat');
    return guess('lean-yeast-bread', 0.95, 'yeast with little fat and sugar');
  }
  return guess('enriched-yeast-bread', 0.9, 'yeast with fat and sugar above a tenth of the flour');
}

const TITLE_DOUGHS: readonly (readonly [RegExp, Family, (r: Ratios) => boolean])[] = [
  [/choux|eclair|éclair|cream puff|profiterole|gougère|churro/, 'choux', (r) => r.liquid > 0.8],
  [/empanad|samosa|\bpast(?:y|ies)\b|turnover|\bhand pies?\b/, 'pie-crust', (r) => r.fat > 0.1],
  [/flatbread|\bnaan|chapati|\broti\b/, 'flatbread', (r) => r.liquid > 0.3 && r.egg < 0.1],
  [/flammk|tarte flamb|lahmacun|\bpide\b|\bcoca de\b/, 'flatbread', (r) => r.liquid > 0.3],
  [/strudel|\bbörek\b|\bburek\b/, 'pie-crust', (r) => r.flourShare >= 0.06],
  [/tortilla|\bwraps?\b|\brotis?\b|chapati/, 'tortilla', (r) => r.fat < 0.4 && r.sugar < 0.1],
  [
    /pancake|waffle|crepe|crêpe|popover|yorkshire|dutch baby|pfannkuchen|waffel|gaufre|pannenkoek|wafel|pannkak|pannekak|pandekag/,
    'pancake',
    (r) => r.liquid + r.egg > 0.6,
  ],
  [/brownie|blondie/, 'brownie', (r) => r.sugar > 0.9],
  [/cracker|crispbread|oat ?cakes?\b/, 'cracker', (r) => r.sugar < 0.2],
  [
    /cookie|plätzchen|lebkuchen|\bkekse?\b|\bsablés?\b|koekjes|galletas|biscotti|snickerdoodle|shortbread|gingersnap|gingerbread (?:men|man|house|hearts)|macaroon/,
    'cookie',
    (r) => r.liquid < 0.4,
  ],
  [
    /muffin|quick bread|banana bread|pumpkin bread|zucchini bread|cornbread|loaf|soda bread|\bbread\b/,
    'quick-bread',
    (r) => r.leavening || r.egg > 0.2,
  ],
  // A cobbler's batter is poured; its dough or crumbs are a crust.
  [/cobbler|clafoutis|buckle/, 'quick-bread', (r) => r.leavening && r.liquid > 0.7],
  [/scone|biscuit|dumpling/, 'biscuit', (r) => r.sugar < 0.4],
  [
    /cake|cupcake|sponge|gateau|gâteau|kuchen|torte\b|bizcocho|ciambell|\bbolo\b|\btårta/,
    'cake',
    (r) => r.sugar >= 0.4,
  ],
  [
    /\bpies?\b|\btarts?\b|quiche|galette|\bpastry\b|cobbler|crumble|\bcrisp\b|(?:appel|peren|pruimen|kersen|abrikozen|rabarber)taart|vlaai|\btartes?\b|crostata|\p{L}*paj\b|tærte\b|\bterte\b/u,
    'pie-crust',
    (r) => r.fat > 0.25,
  ],
  [/pasta|noodle|ravioli|tagliatelle|fettuccine|lasagn/, 'fresh-pasta', (r) => r.flourShare > 0.5],
];

function dough(r: Ratios, title: string, method: string): FamilyGuess {
  const named = TITLE_DOUGHS.find(([words, , fits]) => words.test(title) && fits(r));
  if (named) return guess(named[1], 0.9, 'title words, and the ratios agree');
  if (r.egg >= 0.6 && r.liquid > 1 && r.fat > 0.35 && !r.leavening && /boil/.test(method)) {
    return guess('choux', 0.8, 'flour cooked in boiling liquid with much egg');
  }
  if (r.egg >= 0.45 && r.egg <= 0.7 && r.fat < 0.08 && r.sugar < 0.02 && !r.leavening) {
    return guess('fresh-pasta', 0.8, 'flour and egg with no fat, sugar or leavening');
  }
  if (
    r.liquid >= 0.25 &&
    r.liquid <= 0.65 &&
    r.fat < 0.08 &&
    r.sugar < 0.02 &&
    !r.leavening &&
    /noodle|pasta|wrapper|ravioli/.test(method) &&
    /boil|simmer|steam/.test(method)
  ) {
    return guess('fresh-pasta', 0.7, 'flour and water rolled out and boiled or steamed');
  }
  const griddle = /griddle|skillet|frying pan|waffle iron/.test(method);
  if (r.liquid >= 0.4 && r.liquid <= 0.65 && r.fat < 0.15 && griddle && r.sugar < 0.02) {
    return guess('tortilla', 0.7, 'stiff dough cooked on a griddle');
  }
  const baked = /\bbak(?:e|ed|ing)\b|\boven\b/.test(method);
  if (r.liquid > 1.1 && (griddle || (r.egg > 0.2 && !baked)))
    return guess('pancake', 0.75, 'thin batter');
  if (r.cocoa >= 0.3 && r.sugar >= 1.4 && r.egg >= 0.6) {
    return guess('brownie', 0.85, 'much cocoa, sugar and egg for the flour');
  }
  if (r.liquid < 0.36 && r.fat >= 0.4 && r.sugar < 0.1 && !r.leavening) {
    return guess('pie-crust', 0.8, 'fat near half the flour, little water, no sugar');
  }
  if (r.liquid < 0.25 && r.sugar >= 0.25 && r.sugar <= 1.3 && r.fat >= 0.2 && r.egg < 0.45) {
    return guess('cookie', 0.8, 'sugar and fat with almost no liquid');
  }
  if (r.sugar >= 0.85) return guess('cake', 0.75, 'about as much sugar as flour');
  if (r.leavening && r.liquid <= 0.8 && r.sugar < 0.35 && r.egg < 0.3) {
    return guess('biscuit', 0.65, 'leavened, stiff and hardly sweet');
  }
  if (r.leavening) return guess('quick-bread', 0.65, 'batter with chemical leavening');
  if (r.liquid < 0.45 && r.sugar < 0.1) return guess('cracker', 0.5, 'stiff, unleavened dough');
  if (!r.leavening && r.egg < 0.1 && r.sugar < 0.05 && r.liquid <= 0.8)
    return guess('flatbread', 0.5, 'soft dough without egg, sugar or leavening');
  return guess('quick-bread', 0.4, 'flour-based, nothing else fits');
}

const DISHES: readonly (readonly [readonly string[], Family, string])[] = [
  [['pasta-dry', 'pasta-cooked'], 'pasta-dish', 'pasta'],
  [['rice-dry', 'rice-cooked', 'grains-dry', 'grains-cooked'], 'rice-dish', 'rice or grain'],
  [['potatoes', 'sweet-potatoes'], 'potato-dish', 'potato'],
];

/** A bowl or whisk that waits in the freezer freezes nothing. */
const CHILLED_TOOLS = /\b(?:bowl|beaters?|whisk|blades?)\b[^.\n]*\bfreezer\b/g;

const FROZEN =
  /ice cream|sorbet|gelato|popsicle|semifreddo|\bice (?:pops?|loll(?:y|ies))\b|granita|frozen yog|no-churn|sherbet/;

/** Bakes that hold together without flour, by title: nuts, egg or chocolate do. */
const FLOURLESS: readonly (readonly [RegExp, Family])[] = [
  [/brownie|blondie/, 'brownie'],
  [/cookie|macaroon|amaretti|shortbread/, 'cookie'],
  [/muffin/, 'quick-bread'],
  [/(?<!rice |fish |crab |potato |cheese|ice cream )\b(?:cup)?cakes?\b|\btorte?\b/, 'cake'],
];

function flourless(r: Ratios, title: string): FamilyGuess | null {
  const has = (cls: string): number => r.share.get(cls) ?? 0;
  const sweet = has('dry-sugars') + has('syrups') + has('sweeteners') + has('bananas');
  const holds = has('nuts') + has('eggs') + has('chocolates') + has('cocoa') + has('oats');
  if (sweet < 0.08 || holds < 0.1) return null;
  const named = FLOURLESS.find(([words]) => words.test(title));
  return named
    ? guess(named[1], 0.65, 'title words; nuts, egg or chocolate stand for flour')
    : null;
}

/** A batter that holds vegetables or meat together in the pan, rather than a coat round them. */
const holding = (r: Ratios, method: string): boolean =>
  /\bbatter\b/.test(method) &&
  /griddle|skillet|frying pan|\bpan\b/.test(method) &&
  !/\bdip|\bcoat|deep[- ]fr/.test(method) &&
  r.liquid + r.egg > 0.6;

/** Classes of a savoury dish; '' is meat, fish and other food without a class. */
const SAVOURY = ['', 'vegetables', 'roots-sweet', 'legumes', 'legumes-dry', 'corn'];

/** Bakes and cookies without a flour base of their own, which are no sauce. */
const BAKED_TITLE =
  /\bpies?\b|\btarts?\b|\bbars?\b|brownie|crumble|\bcrisp\b|cobbler|cookie|granola|\bcakes?\b|bread|trifle|strudel/;

/** What a sweet glaze or sauce goes over: then it is a part of a savoury dish, whatever it weighs. */
const GLAZED_TITLE =
  /chicken|turkey|\bduck\b|pork|\bribs?\b|\bham\b|beef|steak|lamb|meatball|wings|salmon|shrimp|prawns?\b|tofu|tempeh|brussels/;

function dish(r: Ratios, title: string, method: string): FamilyGuess {
  const has = (cls: string): number => r.share.get(cls) ?? 0;
  const starchOf = (classes: readonly string[]): number =>
    classes.reduce((total, cls) => total + has(cls), 0);
  // Crumbs strewn over a pasta or rice bake do not make it a breaded food.
  const bulk = Math.max(...DISHES.slice(0, 2).map(([classes]) => starchOf(classes)));
  if (
    has('breadcrumbs') > Math.max(0.02, bulk / 2) &&
    /bread|crumb|coat|crisp|fried|schnitzel|cutlet|nugget/.test(`${title} ${method}`)
  ) {
    return guess('breaded-food', 0.8, 'breadcrumbs as a coating or binder');
  }
  if (has('breadcrumbs') > 0.02 && has('eggs') > 0 && r.flour > 0 && bulk < 0.02) {
    return guess('breaded-food', 0.6, 'flour, egg and breadcrumbs, as for a coating');
  }
  if (FROZEN.test(title)) return guess('frozen-dessert', 0.85, 'title names a frozen dessert');
  const sweet = has('dry-sugars') + has('syrups') + has('condensed-milks');
  const sweetish = sweet + has('bananas') + has('sweet-fruit') >= 0.08;
  const cooked = /\bbak(?:e|ed|ing)\b|\boven\b|\bfr(?:y|ied)\b|simmer/.test(method);
  if (sweetish && !cooked && /\bchurn|\bfreez(?:e|er)\b/.test(method.replace(CHILLED_TOOLS, ''))) {
    return guess('frozen-dessert', 0.7, 'sweet, and frozen by the method');
  }
  const main = DISHES.map(([classes, id, word]) => ({
    id,
    word,
    share: starchOf(classes),
  })).sort((a, b) => b.share - a.share)[0];
  if (main && main.share >= 0.08) {
    return guess(main.id, Math.min(0.95, 0.6 + main.share), `${main.word} is the main starch`);
  }
  if (has('oats') >= 0.25 && has('oats') > sweet)
    return guess('other', 0.6, 'oats, sweetened but not held by a dough');
  // Meat, fish, vegetables and pulses make it a dish, sweet as its glaze may be.
  const glazes = r.salty || GLAZED_TITLE.test(title);
  if (sweet >= 0.08 && shareOf(r, SAVOURY) <= 0.3 && !BAKED_TITLE.test(title) && !glazes)
    return guess('sweet-sauce', 0.65, 'sugar without a flour base');
  if (
    r.flour > 0 &&
    /fried|fry|dredge|coat|schnitzel|crispy/.test(`${title} ${method}`) &&
    r.liquid < 6
  ) {
    return guess('breaded-food', 0.6, 'flour as a coating');
  }
  const held = flourless(r, title);
  if (held) return held;
  if (r.flour > 0 || has('starches') > 0) {
    return guess('thickened-sauce', 0.7, 'flour or starch only thickens');
  }
  return guess('other', 0.5, 'no flour base, starch or sugar stands out');
}

/** Doughs and batters that powder or soda raises, whatever else is in them. */
const POWDER_TITLE =
  /scone|muffin|pancake|waffle|\bcakes?\b|cupcake|biscuit|cookie|brownie|banana bread|quick bread|cracker|cr[eê]pe/;

/** Classes that a dough holds little of; '' is meat, fish and other food without a class. */
const NOT_DOUGH = ['', 'vegetables', 'roots-sweet', 'legumes', 'corn'];

/** Flour that is dredged or crumbed onto something, not worked into a dough. */
const COATS = /dredg|\bcoat|crumb|\bbreading|\bfried\b|\bdip\b/;
const IS_DOUGH = /\bdough|pastry|\bbatter cake|crust/;

/** Less than this of what binds, for a gram of flour, leaves it dry. Own choice. */
const DRY = 0.1;

/** Whether flour lies round meat or fish that outweighs it, or is a dry mix that coats. */
function isCoating(r: Ratios, words: string): boolean {
  if (!COATS.test(words) || IS_DOUGH.test(words)) return false;
  return r.flesh > r.flourShare || r.liquid + r.egg + r.fat < DRY;
}

const shareOf = (r: Ratios, classes: readonly string[]): number =>
  classes.reduce((sum, cls) => sum + (r.share.get(cls) ?? 0), 0);

/**
 * The family of one part of a dish with a confidence (0..1) and the reason, from ratios by mass (flour base = 1;
 * thresholds: common practice, no source). Never throws.
 */
export function guessFamily(
  ingredients: readonly Ingredient[],
  recipe: { title: string; steps: readonly string[] },
  foods: FoodTable,
): FamilyGuess {
  const title = recipe.title.toLowerCase();
  const method = recipe.steps.join(' ').toLowerCase();
  const r = measure(ingredients, foods);
  const titled = titledKind(title, method, r);
  if (titled)
    return guess(titled.family, 0.9, `the title names a ${titled.kind}, and its parts agree`);
  if (r.flour === 0) return flourless(r, title) ?? dish(r, title, method);
  // A starter beside powder or soda is there for its taste.
  const raisedByPowder = r.leavening && POWDER_TITLE.test(title);
  if (r.yeast && r.flourShare >= 0.2 && !raisedByPowder) return yeasted(r, title, method);
  const starchy = DISHES.flatMap(([classes]) => classes).reduce(
    (t, c) => t + (r.share.get(c) ?? 0),
    0,
  );
  const baked = TITLE_DOUGHS.some(([words, , fits]) => words.test(title) && fits(r));
  if (!(baked && r.flourShare >= 0.06) && (r.flourShare < 0.08 || starchy > r.flourShare)) {
    return dish(r, title, method);
  }
  if (!baked && r.flourShare >= 0.1 && holding(r, method))
    return guess('pancake', 0.6, 'a batter cooked in a pan');
  if (!baked && r.liquid > 2 && r.egg < 0.3) return dish(r, title, method);
  // Meat, fish and other food outside the classes outweighs the flour: the flour only coats or thickens.
  if (!baked && shareOf(r, NOT_DOUGH) > 0.4 && r.flourShare < 0.2) return dish(r, title, method);
  if (!baked && (r.share.get('breadcrumbs') ?? 0) > r.flourShare / 2) return dish(r, title, method);
  if (!baked && isCoating(r, `${title} ${method}`)) return dish(r, title, method);
  return dough(r, title, method);
}
