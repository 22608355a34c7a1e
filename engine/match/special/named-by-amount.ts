/** Names whose food hangs on the amount: '2 peppers' are no spice, a spoon of tomato purée is paste. */
import type { Item, Line } from '../../model.ts';
import { tokensOf } from '../normalise.ts';

const SPICE_WORDS = /\b(?:ground|cracked|cayenne|black|white|peppercorns?|mill(?:ed)?)\b/i;
const BARE_PEPPER =
  /^(?:(?:fresh|whole|large|small|medium|mixed|ripe|sweet|mini|baby|raw) )*peppers?$/i;
const CUT = /\b(?:seed|deseed|cored?|slic|dic|chop|halv|quarter|strip|stem|roast|cubed|julienn)/i;
const COUNTED: ReadonlySet<string | null> = new Set([null, 'piece']);
/** A cup of the spice is in no home recipe. */
const VEGETABLE_UNITS: ReadonlySet<string | null> = new Set(['cup', 'punnet', 'package', 'bag']);
const SPOONS: ReadonlySet<string | null> = new Set(['tsp', 'tbsp', 'dessertspoon', 'squeeze']);
/** More than a jar of the ground spice, g. */
const SPICE_JAR = 60;

const isBarePepper = ({ name }: Item): boolean => BARE_PEPPER.test(name.trim());

function isVegetablePepper(item: Item, text: string): boolean {
  const name = item.name.trim();
  if (!isBarePepper(item) || SPICE_WORDS.test(item.preparation ?? '')) return false;
  const [first] = item.amounts;
  const unit = first?.unit ?? null;
  if (SPOONS.has(unit)) return false;
  // 'salt and peppers to taste'
  if (!first && /\bsalt\b/i.test(text)) return false;
  if (/s$/i.test(name)) return true;
  if (!first) return CUT.test(item.preparation ?? '');
  return (
    COUNTED.has(unit) || VEGETABLE_UNITS.has(unit) || (unit === 'g' && first.quantity > SPICE_JAR)
  );
}

/** 'Tomato purée' by the spoon is the concentrate: British usage, and the safer reading. */
const isSpoonedPuree = (item: Item): boolean =>
  SPOONS.has(item.amounts[0]?.unit ?? null) && tokensOf(item.name).join(' ') === 'tomato puree';

const POURED: ReadonlySet<string | null> = new Set(['ml', 'cl', 'fl oz', 'shot', 'jigger', 'dash']);

/** 'Rye' by the shot is a drink. */
const isPouredRye = (item: Item): boolean =>
  /^rye$/i.test(item.name.trim()) && item.amounts.some(({ unit }) => POURED.has(unit));

const BULK: ReadonlySet<string | null> = new Set(['cup', 'g', 'oz', 'lb']);
/** More of a pure extract than anyone can eat, g. */
const EXTRACT_MOST = 20;

/** Half a cup of 'stevia' is a blend that measures like sugar, not the pure extract. */
const isBulkSweetener = ({ name, amounts: [first] }: Item): boolean =>
  /^(?:powdered )?(?:stevia|monk ?fruit)(?: powder)?$/i.test(name.trim()) &&
  first !== undefined &&
  (first.unit === 'cup' || (BULK.has(first.unit) && first.quantity > EXTRACT_MOST));

const DOUGH_UNITS: ReadonlySet<string | null> = new Set(['can', 'tube']);

/** American biscuits in a can are a dough. */
const isCannedBiscuit = ({ name, amounts }: Item): boolean =>
  /^(?:[a-z]+ )?biscuits?$/i.test(name.trim()) && amounts.some(({ unit }) => DOUGH_UNITS.has(unit));

/** Cartons hold the thin drink, cans the thick milk. */
const isCartonMilk = ({ name, amounts }: Item, text: string): boolean =>
  /^(?:unsweetened )?coconut milk$/i.test(name.trim()) &&
  (/\bcarton\b/i.test(text) || amounts.some(({ unit }) => unit === 'carton'));

const VOLUMES: ReadonlySet<string | null> = new Set(['cup', 'ml', 'l', 'dl', 'pint', 'tbsp']);

/** A cup of mashed potatoes is measured mashed; two potatoes are mashed later. */
const isMash = ({ name, preparation, amounts: [first] }: Item): boolean =>
  /^(?:leftover |cooked |cold |warm )?potato(?:es)?$/i.test(name.trim()) &&
  /\bmashed\b/i.test(preparation ?? '') &&
  first !== undefined &&
  VOLUMES.has(first.unit);

/** A British packet of jelly is the dessert mix, a spoonful the preserve. */
const isPacketJelly = ({ name, amounts: [first] }: Item): boolean =>
  /^(?:[a-z]+ )?jelly(?: cubes| crystals)?$/i.test(name.trim()) &&
  (first?.unit === 'packet' || first?.unit === 'sachet' || first?.unit === 'package');

/** A counted coconut is a nut; by the cup or the gram it is the dried flesh. */
const isMeasuredCoconut = ({ name, amounts: [first] }: Item, text: string): boolean =>
  /^coconut$/i.test(name.trim()) &&
  first !== undefined &&
  !COUNTED.has(first.unit) &&
  !/\bfresh/i.test(text);

/** Chips by the cup go into a batter; to nibble or to crush they are of potato or maize. */
const isCupOfChips = ({ name, preparation, amounts: [first] }: Item): boolean =>
  /^chips$/i.test(name.trim()) &&
  (first?.unit === 'cup' || first?.unit === 'tbsp') &&
  !/crush|crumbl|broken/i.test(preparation ?? '');

const CHICKEN =
  /^(?:(?:boneless|skinless|skin[- ]?on|bone[- ]?in|fresh|raw|free-range|and|cooked|shredded|leftover),?\s+)*chickens?(?: meat)?$/i;

const isChicken = ({ name }: Item): boolean => CHICKEN.test(name.trim());

/** 'Chicken' by the cup, or shredded, was cooked before. */
const isCookedChicken = (item: Item, text: string): boolean =>
  isChicken(item) &&
  (item.amounts[0]?.unit === 'cup' || /\b(?:shredded|cooked|leftover|pulled)\b/i.test(text));

/** 'Chicken, boneless and skinless', 'chicken, cut into cubes' is meat without skin, 'breasts' or not. */
const isChickenMeat = (item: Item, text: string): boolean =>
  isChicken(item) &&
  /\b(?:boneless|skinless|breasts?|cubes?|diced|strips|bite-?sized?)\b/i.test(text);

/** Four chickens and more are pieces of it; '6 bone in, skin on chicken' says so around a comma. */
const isChickenPieces = (item: Item, text: string): boolean =>
  (isChicken(item) || CHICKEN.test(text.replace(/^\d+\s+/, '').trim())) &&
  item.amounts[0]?.unit === null &&
  (item.amounts[0]?.quantity ?? 0) >= 4;

const isRackOfLamb = ({ name, amounts: [first] }: Item): boolean =>
  /^lamb$/i.test(name.trim()) && first?.unit === 'rack';

/** Peppermint that is crushed, or counted, is the sweet. */
const isPeppermintSweet = ({ name, preparation, amounts: [first] }: Item): boolean =>
  /^(?:(?:hard|crushed) )*peppermints?$/i.test(name.trim()) &&
  (/crush|broken/i.test(`${name} ${preparation ?? ''}`) ||
    (/s$/i.test(name) && first !== undefined));

/** Coriander by the teaspoon is the ground seed; leaves are chopped, or come by the bunch. */
const isGroundCoriander = ({ name, preparation, amounts: [first] }: Item): boolean =>
  /^coriander$/i.test(name.trim()) &&
  first?.unit === 'tsp' &&
  !/fresh|chop|leaf|leaves|torn|pick/i.test(preparation ?? '');

const MIXED_HERBS = /^(?:(?:chopped|minced|assorted|mixed) )+herbs$/i;
const HERB_JAR: ReadonlySet<string | null> = new Set(['tsp', 'pinch', 'dash']);

/** A cup of 'mixed herbs', or chopped ones, are leaves; a teaspoon comes from a jar. */
const isFreshHerbs = ({ name, amounts: [first] }: Item, text: string): boolean =>
  MIXED_HERBS.test(name.trim()) &&
  !/\bdried\b/i.test(text) &&
  (first?.unit === 'cup' ||
    (/\b(?:chop|leaves|torn|picked)/i.test(text) && !HERB_JAR.has(first?.unit ?? null)));

/** A spoon of both is counted as the salt, which weighs twice as much and matters more. */
const SALT_AND_PEPPER =
  /^(?:[a-z]+ )*(?:salt|salz|sel|zout|sale?) (?:&|and|und|et|en|y|e|och|og) (?:(?:black|ground|white) )*(?:pepper|pfeffer|poivre|peper|pimienta|pimenta|pepe|peppar|peber)$/i;

const isSaltAndPepper = ({ name, amounts }: Item): boolean =>
  amounts.length > 0 && SALT_AND_PEPPER.test(name.trim());

const LEVADURA = /^levadura(?!.*(?:panad|pan\b|seca|fresca|prensada|nutricional|cerveza))/i;
/** Grams of a Spanish sachet of baking powder; one of dry yeast holds 5 to 8. From memory. */
const BAKING_POWDER_SACHET = { from: 14, to: 17 };

/** '1 sobre o 16 g de levadura': by the sachet of that size it raises cakes. */
const isBakingPowder = ({ name, amounts }: Item): boolean =>
  LEVADURA.test(name.trim()) &&
  amounts.some(
    ({ unit, quantity }) =>
      unit === 'g' && quantity >= BAKING_POWDER_SACHET.from && quantity <= BAKING_POWDER_SACHET.to,
  );

const hasUnit = ({ amounts }: Item, units: ReadonlySet<string | null>): boolean =>
  amounts.some(({ unit }) => units.has(unit));

const PACKETS: ReadonlySet<string | null> = new Set(['packet', 'sachet', 'package']);
/** A German packet is the powder, whatever is cooked of it. */
const isPuddingPacket = (item: Item): boolean =>
  /(?:pudding|vanilleso(?:ß|ss)e|vanillesauce)$/i.test(item.name.trim()) && hasUnit(item, PACKETS);

const DRUNK: ReadonlySet<string | null> = new Set(['ml', 'cl', 'dl', 'l']);
const isDrunkCocoa = (item: Item): boolean =>
  /^(?:heißer |kalter )?kakao$/i.test(item.name.trim()) && hasUnit(item, DRUNK);

const PRESERVED: ReadonlySet<string | null> = new Set(['jar', 'tbsp', 'tsp']);
/** By the spoon they come out of a jar, boiled with sugar. */
const isPreservedLingonberry = (item: Item): boolean =>
  /^preiselbeeren$/i.test(item.name.trim()) && hasUnit(item, PRESERVED);

/** Counted, it is the vegetable; by the spoon the spice. */
const isCountedPaprika = ({ name, amounts: [first] }: Item): boolean =>
  /^paprik(?:a|y|ák|ás)$/i.test(name.trim()) && first !== undefined && COUNTED.has(first.unit);

/** What lines in other languages mean by their amount, in English; the first that fits decides. */
const FOREIGN_NAMES: readonly SpecialName[] = [
  { reads: 'salt', when: isSaltAndPepper },
  { reads: 'baking powder', when: isBakingPowder },
  { reads: 'red bell pepper', when: isCountedPaprika },
  { reads: 'custard powder', when: isPuddingPacket },
  { reads: 'chocolate milk', when: isDrunkCocoa },
  { reads: 'cranberry sauce', when: isPreservedLingonberry },
];

/** The English name of what an item in another language means by its amount; null for all others. */
export const foreignByAmount = (item: Item): string | null =>
  FOREIGN_NAMES.find(({ when }) => when(item, item.name))?.reads ?? null;

/** Cocktail and dessert usage: the sweet canned product. */
const isCreamOfCoconut = ({ name }: Item): boolean => /\bcream of coconut\b/i.test(name);

/** One kind of name whose food hangs on its amount. */
interface SpecialName {
  /** What the line means. */
  reads: string;
  /** Whether a line is of this kind; `text` is the whole line. */
  when: (item: Item, text: string) => boolean;
}

/** The first that fits decides. */
const SPECIAL_NAMES: readonly SpecialName[] = [
  { reads: 'sweetened coconut cream', when: isCreamOfCoconut },
  { reads: 'salt and pepper', when: isSaltAndPepper },
  { reads: 'cooked chicken', when: isCookedChicken },
  { reads: 'chicken breast', when: isChickenMeat },
  { reads: 'bone-in chicken thigh', when: isChickenPieces },
  { reads: 'rack of lamb', when: isRackOfLamb },
  { reads: 'peppermint candy', when: isPeppermintSweet },
  { reads: 'ground coriander', when: isGroundCoriander },
  { reads: 'fresh herbs', when: isFreshHerbs },
  { reads: 'rye whiskey', when: isPouredRye },
  { reads: 'stevia erythritol blend', when: isBulkSweetener },
  { reads: 'canned biscuits', when: isCannedBiscuit },
  { reads: 'carton coconut milk', when: isCartonMilk },
  { reads: 'mashed potato', when: isMash },
  { reads: 'jelly crystals', when: isPacketJelly },
  { reads: 'chips by the cup', when: isCupOfChips },
  { reads: 'dried coconut', when: isMeasuredCoconut },
  { reads: 'bell pepper', when: isVegetablePepper },
  { reads: 'black pepper', when: isBarePepper },
  { reads: 'tomato paste', when: isSpoonedPuree },
];

/** The name as the amount tells it; unchanged when the amount tells nothing. `text` is the whole line. */
export function nameByAmount(name: string, item: Item, text = ''): string {
  if (name !== item.name) return name;
  return SPECIAL_NAMES.find(({ when }) => when(item, text))?.reads ?? name;
}

/** 'Shells from 1 pound of shrimp': what is left of a food is none of its kind. */
export const isLeftover = (line: Line): boolean =>
  /^(?:the )?(?:shells?|bones?|heads?|necks?|carcass|giblets|skins?|trimmings|pods)(?: and [a-z]+)? from\b/i.test(
    line.text.trim(),
  );
