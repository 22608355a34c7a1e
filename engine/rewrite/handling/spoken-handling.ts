/** What a swap says of its handling, as a cook would tell it: 'Steam the cauliflower until just tender.' */

/** Words that may stand right behind a verb that has no object yet. */
const NO_OBJECT =
  /^(?:until|overnight|in|into|with|for|at|and|or|to|on(?! boiling)|raw|frozen|last|like|an hour|dry|lightly|briefly|gently|warm|hot|over|together|small|fine|coarsely|thinly|thick(?=[;,. ]|$)(?! rounds)|very|well|firmly|smooth|rather|before|as|by|later|off|soft|loosely|from|slowly|then|a minute|one minute|cold with|ice-cold|thin(?=[;,. ]|$)(?! (?:sheets|omelettes|rounds))|\d(?![\d.]* g\b).*)(?![a-z])/i;
/** Verbs that go with a particle before their object: 'stir the cream in at the end' is 'stir in the cream'. */
const WITH_PARTICLE = /^(?:(?:stir|fold|toss|whisk|mix|press) in)\b(?! (?:bites|sticks))/i;
const FIRST_VERBS = /^[a-z-]+(?: or [a-z-]+(?= at\b))?/i;
/** Clauses whose object is named, or that are no doing at all. */
const NOT_DONE = /^(?:needs|only|let|leave|eat|where)\b/i;
const PRONOUN = /^([a-z-]+(?: [a-z-]+ing)?) (?:it|them)\b/i;

/** The handling with the food as the object of its first verb; null when its words have one already. */
export function withObject(method: string, food: string): string | null {
  if (NOT_DONE.test(method)) return null;
  if (PRONOUN.test(method)) return method.replace(PRONOUN, `$1 the ${food}`);
  const verb = WITH_PARTICLE.exec(method)?.[0] ?? FIRST_VERBS.exec(method)?.[0] ?? '';
  const rest = method.slice(verb.length).trimStart();
  if (verb === '') return null;
  if (/^[,;.]/.test(rest)) return `${verb} the ${food}${rest}`;
  return NO_OBJECT.test(rest) ? `${verb} the ${food} ${rest}` : null;
}

/** Handling that is about the dish as a whole, or about what follows: it stands behind the step's words. */
const FOLLOWS =
  /^(?:add|simmer as long|sauce|strew|eat|let|leave|serve|salt the|bake (?:it )?(?:until the edges|\d+ minutes (?:less|longer)|at|\{d)|sweeten|thicken|moisten|thin|only|needs|stir (?:it )?in (?:at|for|off|raw)|fold in|press firmly|cook on|use (?:to|a third)|boil \d+ minutes less|dust|use maple)\b/i;

/** Whether a handling is told behind what the step says, not before. */
export const isTold = (method: string): boolean => FOLLOWS.test(method);

/** Handling that takes long or a pan of its own, so that it is a step of its own: half an hour or more. */
const LONG =
  /^fry (?:[a-z]+ ){0,4}dry\b|\bpress dry and fry\b|\b(?:overnight|hours?|day before|set \w+|(?:[3-9]\d|\d{3}) minutes|(?:chill|freeze)\b|roast|bake \d+ minutes at)\b/i;

export const takesLong = (method: string): boolean => LONG.test(method);

/** Where a sweetener meets a liquid: elsewhere it need not be dissolved. */
const LIQUID =
  /\b(?:dissolv\w*|simmer\w*|boil\w*|syrup|water|milk|juice|tea|coffee|vinegar|lemonade|heat|warm|saucepan|pan)\b/i;
const INTO_LIQUID = /^where it goes into a liquid, dissolve it warm/i;

/** Whether a clause of a handling holds: nothing is baked longer that no oven sees, and only an icing is thinned. */
export function clauseHolds(clause: string, whole: string): boolean {
  if (/\b(?:cut|leave out|halve) the milk\b/i.test(clause)) return MILK.test(whole);
  if (ZEST.test(clause)) return !ZEST.test(whole);
  if (/\bbake \d+ minutes longer\b/i.test(clause)) return BAKES.test(whole);
  if (/^toast\b[^;]*\bdry pan\b/i.test(clause)) return !BAKED.test(whole);
  // A crust or sponge made in place of a bought one is baked, whatever the page does.
  if (MADE_FIRST.test(clause)) return true;
  if (/\b(?:roast|bake)\b[^;]* at \d/i.test(clause) && !BAKES.test(whole)) return false;
  if (/\ban icing takes\b/i.test(clause)) return ICES.test(whole);
  if (/^warm the mix\b/i.test(clause))
    return (
      /\b(?:churn\w*|ice cream maker)\b/i.test(whole) &&
      !/\b(?:saucepan|simmer\w*|custard)\b/i.test(whole)
    );
  return true;
}

const MILK = /\b(?:milk|milch|lait|melk|leche|latte|leite|mjölk|mælk)\b/i;
const ZEST = /\b(?:zest|zeste|schale|schil|ralladura|scorza|raspa|skal|skall)\b/i;
const MADE_FIRST =
  /\bpress into a greased\b|^(?:pulse, )?press in\b|^bake (?:it a day\b|\d+ minutes at|thin|rounds|spoonfuls|in rings)\b/i;
/** What is baked anyway, and not only in words for a dish: 'baking dish', 'no-bake'. */
const BAKED = /\boven\b|(?<!\bno[- ])\bbake[ds]?\b(?! (?:dish|pan|sheet|tin))/i;
const BAKES = /\b(?:bake|baked|baking|oven|roast(?:ed|ing)?)\b/i;
const ICES =
  /\b(?:icing(?! sugar)|glaze|drizzle|glasur|glaçage|glazuur|glaseado|glassa|cobertura|glasyr)\b/i;

/** What is sifted by the page is not sifted before. */
const SIFTS = /\bsift/i;
const SIFTED = /^sift(?: it)?(?:[;.]\s*|$)/i;

/** What is left of a handling that sifts, where the sentence that takes the food sifts it; null where nothing is sifted twice. */
export const withoutSifting = (method: string, sentence: string): string | null =>
  SIFTS.test(sentence) && SIFTED.test(method) ? method.replace(SIFTED, '') : null;

/** Ways of cooking that a handling speaks against: said only where the step cooks so. */
const RATHER = /\brather than (?:to the )?(\w+)/i;

/** The handling as it holds for the sentence that takes the food; empty when it does not. */
export function heldFor(method: string, sentence: string): string {
  const against = RATHER.exec(method)?.[1];
  if (against !== undefined && !new RegExp(`\\b${against}`, 'i').test(sentence)) return '';
  if (!INTO_LIQUID.test(method)) return method;
  const fits = LIQUID.test(sentence) && !/\b(?:butter|cream|beat|flour)\b/i.test(sentence);
  return fits ? 'Warm it until it has dissolved.' : '';
}

/** Cooking by a packet's directions, as the packet of the stand-in tells it too. */
export const BY_PACKET =
  /,? ?\b(?:according to|following|as per|per|as directed on|using) (?:the |its |their )?(?:pack(?:age|aging|et)?|box|bag|manufacturer['’]?s?|label)(?: ?['’]?s)?(?: (?:directions|instructions))?(?:,? until (?:it['’]s |it is |they are |just |cooked )?al dente)?/i;

/** The same in other languages. */
export const BY_FOREIGN_PACKET =
  /,? ?(?<!\p{L})(?:nach (?:der )?(?:packungs(?:angabe|anleitung|anweisung)(?:en)?|packung)|(?:laut|gemäß) packung\p{L}*|volgens (?:de )?(?:(?:instructies|aanwijzingen) )?(?:op )?(?:de |het )?(?:verpakking|pak)|selon (?:les )?(?:instructions|indications) (?:du|de la|sur le|figurant sur le) (?:paquet|emballage|sachet)|según (?:las )?(?:instrucciones|indicaciones) del (?:paquete|envase|fabricante)|secondo (?:le )?(?:istruzioni|indicazioni) (?:sulla|della) confezione|conforme (?:as )?(?:instruções|indicações) da embalagem|enligt (?:anvisning\p{L}* på )?(?:förpackning\p{L}*|paketet)|(?:etter|efter) (?:anvisning\p{L}* på )?(?:pakken|pakningen|emballagen))(?!\p{L})/iu;
