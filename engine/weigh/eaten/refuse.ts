/** What is thrown away of a food bought whole. */

import { hasTag } from '../../foods/tags.ts';
import { massInterval } from '../../interval.ts';
import type { Food, Interval, Item, Line } from '../../model.ts';
import trimming from '../data/trimming.json' with { type: 'json' };
import { plain } from '../line-words.ts';

/** Words of a name that say the stated mass is already without peel, bone or shell. */
const TRIMMED =
  /\b(peeled|boneless|boned|shelled|pitted|fillet|filet|floret|flesh|meat|trimmed|cored|seeded|hulled|deveined|cooked|chopped|diced|sliced|cubed|minced|grated|shredded|leaves|leaf|ready|prepared|baby|frozen|canned|puree|mashed|net|ground)\b/;

/** Words that say so wherever they stand on the line. */
const TRIMMED_ANYWHERE =
  /\b(florets?|boneless|shelled|pitted|fillets?|peeled weight|trimmed weight|flesh only|geputzt gewogen|poids epluche|schoongemaakt gewogen|peso limpio|peso pulito|sem desperdicios|rensad vikt|renset vægt|renset vekt|ohne schale|sans coquille|zonder schaal|sin c[aá]scara|senza guscio|sem casca|utan skal|uden skal|uten skall|nettogewicht|netto|poids net|peso neto|peso netto|peso liquido|nettovikt|nettovekt)\b/;

/** Chinese and Japanese leg 'meat' is sold off the bone. */
const LEG_MEAT = /[鶏鸡雞](?:もも|モモ|腿)肉/;

export interface WithoutRefuse {
  grams: Interval;
  assumption: string;
}

/** '(can also use boneless)': what may be taken instead says nothing of what is weighed. */
const INSTEAD = /\b(?:can also|could also|you can|if you (?:prefer|like))\b[^,;()]*/g;

/** Dishes that the whole citrus fruit goes into, peel and all, by their titles. */
const PEEL_EATEN =
  /\b(?:marmalade|orangenmarmelade|candied (?:lemon|orange|citrus)|preserved lemons?|whole[- ](?:lemon|orange|lime|clementine)s?)\b/;

/** What the line says before it names the food: '140 g finely diced onion' weighs the dice. */
function wordsBefore(item: Item, line: Line): string {
  const text = plain(line.text);
  const [first = ''] = plain(item.name).split(/[^a-z]+/);
  const at = first === '' ? -1 : text.indexOf(first);
  return at < 0 ? '' : text.slice(0, at);
}

/** What cooks at home cut off where canteens' figures cut more. Common practice, no source. */
const AT_HOME = new Map(Object.entries(trimming));

/** Bone of a cut whose record states no refuse, where the line says that it is in. Common practice, no source. */
const BONE_IN = /\bbone[- ]?in\b|\bon the bone\b/;
const BONE_SHARE = { low: 0.1, best: 0.18, high: 0.25 };

function withoutBone(grams: Interval, text: string, food: Food): WithoutRefuse | null {
  if (food.group !== 'meat and poultry' || food.state !== 'raw' || !BONE_IN.test(text)) return null;
  const { low, best, high } = BONE_SHARE;
  return {
    grams: massInterval(grams.low * (1 - high), grams.best * (1 - best), grams.high * (1 - low)),
    assumption: `assumed weight with the bone: ${Math.round(best * 100)} % of it left out`,
  };
}

/** A bird bought cooked, weighed whole: '1 (3 lb) rotisserie chicken'. As 600 g of meat in 1.2 kg: common practice, no source. */
const COOKED_BIRD = /\b(?:rotisserie|roast(?:ed)?|whole)\b[a-z -]*\bchickens?$/;
const BIRD_SHARE = { low: 0.4, best: 0.5, high: 0.6 };

function withoutCarcass(grams: Interval, item: Item, food: Food): WithoutRefuse | null {
  if (food.group !== 'meat and poultry' || food.state !== 'cooked') return null;
  const isEach = item.amounts.some(({ kind }) => kind === 'each');
  if (!isEach || !COOKED_BIRD.test(plain(item.name))) return null;
  const { low, best, high } = BIRD_SHARE;
  return {
    grams: massInterval(grams.low * (1 - high), grams.best * (1 - best), grams.high * (1 - low)),
    assumption: `assumed weight of the whole bird: ${Math.round(best * 100)} % of it is meat`,
  };
}

/** Squashes whose skin is eaten: seeds and ends only. Common practice, no source. */
const SKIN_EATEN = /hokkaido|\bkuri\b|delicata|potimarron/;
const SEEDS_SHARE = 0.15;

/** Share thrown away of what is bought, by the words of the line and what is usual at home. */
function shareOf(food: Food, refuse: number, text: string): number {
  if (NARROW_PART.test(text)) return refuse;
  if (SKIN_EATEN.test(text)) return Math.min(refuse, SEEDS_SHARE);
  return AT_HOME.get(food.id) ?? refuse;
}

/** 'White parts only': no more is used than the published figure leaves. */
const NARROW_PART = /\b(?:whites?|tender|tips?)(?: and [a-z -]+)? (?:parts? )?only\b/;

/**
 * Edible grams of a mass as bought: less the refuse USDA states for the food, or less what is usually
 * trimmed at home where that is known to be less. The low end holds USDA's share; the high end stays at
 * the full mass, since the line may already mean the trimmed food. Null when nothing is left out.
 */
export function withoutRefuse(
  grams: Interval,
  item: Item,
  line: Line,
  food: Food | null,
  title = '',
): WithoutRefuse | null {
  if (food === null) return null;
  const text = plain(line.text).replace(INSTEAD, '');
  const refuse = food.refuseShare ?? 0;
  if (hasTag(food, 'citrus-fruit') && PEEL_EATEN.test(plain(title))) return null;
  if (refuse <= 0) return withoutCarcass(grams, item, food) ?? withoutBone(grams, text, food);
  if (refuse >= 1 || food.state !== 'raw') return null;
  const before = `${wordsBefore(item, line)} ${plain(item.name)}`;
  if (TRIMMED.test(before) || TRIMMED_ANYWHERE.test(text) || LEG_MEAT.test(text)) return null;
  const share = shareOf(food, refuse, text);
  const percent = Math.round(share * 100);
  return {
    grams: massInterval(grams.low * (1 - refuse), grams.best * (1 - share), grams.high),
    assumption: `assumed weight as bought: ${percent} % peel, bone or trimmings left out`,
  };
}
