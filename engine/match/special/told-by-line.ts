/** Names whose food the rest of the line tells: how lean, how fresh, in what it is packed, with what it is coated. */
import type { Line } from '../../model.ts';

const GROUND_BEEF =
  /^(?:(?:extra[- ])?lean |fresh )*(?:(?:ground|minced) (?:beef|chuck|sirloin|round)|(?:beef |steak )?mince|hamburger(?: meat)?|beef (?:patty|patties))\b/i;
/** '90/10', '80% lean / 20% fat', '(5% fat)'. */
const LEAN_AND_FAT = /\b([6-9]\d) ?%?(?: lean)? ?[/-] ?(\d{1,2})\b/i;
const FAT_ONLY = /\b(\d{1,2}) ?% fat\b/i;
/** Lean per cent of the table's kinds of ground beef. */
const LEAN_KINDS = [70, 80, 85, 90, 93, 95];

function leanPercent(text: string): number | null {
  const [, lean, fat] = LEAN_AND_FAT.exec(text) ?? [];
  if (Number(lean) + Number(fat) === 100) return Number(lean);
  const only = FAT_ONLY.exec(text)?.[1];
  return only === undefined ? null : 100 - Number(only);
}

/** 'Beef mince (90/10)' is the kind nearest to it. */
function byLean(name: string, text: string): string | null {
  const lean = GROUND_BEEF.test(name) ? leanPercent(text) : null;
  if (lean === null) return null;
  const apart = (kind: number): number => Math.abs(kind - lean);
  const nearest = LEAN_KINDS.reduce((best, kind) => (apart(kind) < apart(best) ? kind : best));
  return `ground beef, ${nearest}% lean`;
}

/** 'Fresh thin noodles' are the moist ones, of whatever cut; those of rice and buckwheat are others. */
const FRESH_NOODLES = /^fresh (?!.*\b(?:rice|udon|glass|soba|dried|dry)\b).*\b(?:noodles?|pasta)$/i;

/** A size and a jar may be left before the name: '14oz jar sun-dried tomatoes in oil'. */
const SUN_DRIED = /^(?:[a-z0-9]+ )*sun-?dried tomato(?:es)?(?: in (?:olive )?oil)?$/i;
const IN_OIL = /\b(?:in (?:olive )?oil|oil[- ]packed|drained)\b/i;

const CHIPOTLE = /^(?:(?:whole|large|small) )*chipotle(?:s|(?: chil[a-z]+| peppers?))?$/i;
const IN_ADOBO = /\badobo\b/i;

const NUTS = /\b(?:nuts?|peanuts?|almonds?|cashews?|pecans?|walnuts?|hazelnuts?)$/i;
/** 'Peanuts coated with sugar' are neither plain nuts nor sugar. */
const COATED = /^(.+?) (?:coated|covered|glazed|dipped) (?:with|in) (?:[a-z]+ )?([a-z]+)$/i;
const SWEET = /^(?:sugar|honey|caramel|syrup|toffee)$/i;

function coated(name: string): string | null {
  const [, food = '', coat = ''] = COATED.exec(name) ?? [];
  if (food === '') return null;
  if (!NUTS.test(food)) return `${coat}-coated ${food}`;
  return SWEET.test(coat) ? 'candied nuts' : `${coat}-coated nuts`;
}

const DARK_CHOCOLATE = /^(?:(?:very |extra )?(?:dark|bittersweet|plain) )?chocolate(?: bars?)?$/i;
/** Cocoa far above that of the usual bar. */
const COCOA = /\b(8[2-9]|9[0-5]) ?%/;

/** 'Dark chocolate, 90 % cocoa' is the nearer of the two darkest kinds. */
function byCocoa(name: string, text: string): string | null {
  const cocoa = DARK_CHOCOLATE.test(name) ? COCOA.exec(text)?.[1] : undefined;
  if (cocoa === undefined) return null;
  return Number(cocoa) < 88 ? '85% dark chocolate' : '90% dark chocolate';
}

const ARTICHOKES = /^(?:[a-z]+ )?artichokes?(?: hearts?)?$/i;
const MARINATED = /\bmarinated\b/i;

const CANNED_TOMATOES =
  /^(?:canned |tinned )?(?:diced|crushed|chopped|whole|stewed|canned|tinned|petite|peeled|\s)+tomatoes$/i;
const NO_SALT = /\b(?:no[- ]salt(?:[- ]added)?|unsalted|without salt|salt-free|low[- ]sodium)\b/i;

/** Only soft drinks have a diet kind: 'one bottle of brown fizz (not diet)' is the sugared one. */
const NOT_DIET = /\bnot diet\b|\bnon-?diet\b/i;
const OTHER_DRINK = /\b(?:lemon|lime|ginger|tonic|juice|beer)/i;

const PROTEIN_POWDER = /\bprotein powder$/i;

const THIGH = /^(?:chicken thighs?|thighs?)\b/i;
const SKINLESS = /\bskinless\b/i;
/** What may be taken instead does not tell what is meant. */
const INSTEAD = /\b(?:or|can also|could also|you can|if you)\b[^,;()]*/gi;

const VEGAN = /\b(?:vegan|non-?dairy|plant-based|dairy-?free)\b/i;
const HARD_CHEESE =
  /\b(?:cheddar|mozzarella|parmesan|gouda|feta|provolone|monterey jack|pepper jack|swiss cheese|shredded cheese)\b/i;

/** 'One of the following: rye, spelt or oat flour': the first is meant. */
const ONE_OF = /^(?:.*\b)?(?:one|any|either) of (?:the following|these)\b/i;

function firstOffered(name: string, text: string): string | null {
  if (!ONE_OF.test(name)) return null;
  const [, offered = ''] = text.split(/:\s+/);
  return offered.split(/[,;(]|\bor\b/)[0]?.trim() || null;
}

const RAW_BIRD = /^(?:[a-z'’-]+ )*(?:whole|roasting|broiler) chicken$/i;
/** How it was cooked, and in brackets what that makes: no raw bird goes in. */
const COOKED_BEFORE =
  /\b(?:cooked|roasted|poached|boiled|rotisserie)\b[^()]*\((?:about |approx[a-z.]* |makes )?[^()]*\d[^()]*\b(?:cups?|lbs?|pounds?|oz|ounces?|g|grams)\b/i;

/** The name with what the line says of it; unchanged where it says nothing. */
export function toldByLine(name: string, line: Line): string {
  const offered = firstOffered(name, line.text);
  if (offered !== null) return offered;
  const lean = byLean(name, line.text);
  if (lean !== null) return lean;
  if (FRESH_NOODLES.test(name)) return 'fresh noodles';
  const dark = byCocoa(name, line.text);
  if (dark !== null) return dark;
  if (SUN_DRIED.test(name) && IN_OIL.test(line.text)) return 'oil-packed sun-dried tomatoes';
  if (CHIPOTLE.test(name) && IN_ADOBO.test(line.text)) return 'chipotle peppers in adobo';
  if (ARTICHOKES.test(name) && MARINATED.test(line.text)) return 'marinated artichoke hearts';
  if (CANNED_TOMATOES.test(name) && NO_SALT.test(line.text)) return 'no-salt-added canned tomatoes';
  if (NOT_DIET.test(line.text) && !OTHER_DRINK.test(name)) return 'cola';
  if (VEGAN.test(name) && PROTEIN_POWDER.test(name)) return 'vegan protein powder';
  if (VEGAN.test(name) && HARD_CHEESE.test(name)) return 'vegan cheese';
  if (THIGH.test(name) && SKINLESS.test(line.text.replace(INSTEAD, '')))
    return 'skinless boneless chicken thigh';
  if (RAW_BIRD.test(name) && COOKED_BEFORE.test(line.text)) return 'cooked chicken';
  return coated(name) ?? name;
}
