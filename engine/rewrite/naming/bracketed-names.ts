/**
 * Names in a method of another language. Endings and articles of the text stay right because the
 * recipe's word stays, with what it stands for now in brackets.
 */
import type { FoodTable } from '../../foods/index.ts';
import { parseLine } from '../../parse/index.ts';
import { keyed, type MethodWords } from '../languages/method-words.ts';
import { boiledOf } from '../steps/boils-as.ts';
import type { UsedSoFar } from '../steps/used-so-far.ts';
import { withoutLeftOut } from '../wording/leave-out.ts';
import { shareNamed } from './amounts-in-steps.ts';
import { foreignPattern, formsOf } from './foreign-forms.ts';
import type { Mention } from './mention.ts';
import { byCompany, inPart, type Stated, sentenceAt, statesAmount } from './owners.ts';
import { bracketPatterns, remark } from './remarks.ts';

/** A number and at most four words at the end of a text: '20 grammes de ', '2 cuillères à soupe d’'. */
const AMOUNT_BEFORE =
  /(?<![\p{L}\p{N}])(?:\d+(?:[.,/]\d+)?|[¼-¾⅐-⅞])\s{0,2}[¼-¾⅐-⅞]?\s{0,2}(?:\p{L}{1,12}(?:\.\s{0,2}|\s{1,2}|['’])){0,4}$/u;

/** The amount that stands in front of a name; null when none does, or it is one of another thing. */
function statedBefore(before: string, name: string, { tag }: MethodWords): Stated | null {
  const lead = AMOUNT_BEFORE.exec(before.slice(-60))?.[0];
  if (lead === undefined) return null;
  const { items } = parseLine(`${lead}${name}`, { language: tag });
  const [item] = items;
  const [amount] = item?.amounts ?? [];
  if (items.length !== 1 || item?.name.toLowerCase() !== name.toLowerCase()) return null;
  return amount === undefined ? null : { quantity: amount.quantity, unit: amount.unit };
}

/** Mentions by name. */
function byName(mentions: readonly Mention[]): Map<string, Mention[]> {
  const owners = new Map<string, Mention[]>();
  for (const mention of mentions)
    for (const name of mention.names) owners.set(name, [...(owners.get(name) ?? []), mention]);
  return owners;
}

/** What is only looked at: 'bis der Zucker gelöst ist'. */
const LOOKED_AT =
  /(?<!\p{L})(?:bis|sobald|jusqu\p{L}*|hasta|cuando|quando|finch[eé]|fino|tot(?:dat)?|zodra|tills|indtil|inntil|når)(?!\p{L})[^,;.]*/giu;

/** Where a name of several lines stands. */
interface Where {
  text: string;
  at: number;
  word: string;
  part: number | null;
  mentions: readonly Mention[];
  used: UsedSoFar;
  /** Whether only what is left of a line is meant: 'den restlichen Zucker'. */
  isRest: boolean;
}

/** Of lines of one name the one whose company it stands in, else the next that no earlier step took. */
function inCompany(own: readonly Mention[], where: Where): Mention | undefined {
  if (own.length < 2) return undefined;
  const { text, at, word, mentions, used, isRest } = where;
  const sentence = sentenceAt(text, at);
  const near = byCompany(own, sentence, { mentions }) ?? byCompany(own, text, { mentions });
  if (near !== undefined) return near;
  const takes = sentence.replace(LOOKED_AT, '').includes(word);
  const fresh = own.find((mention) => !used.isNamedBefore(mention));
  const isNew = own.some((mention) => used.isNamedBefore(mention));
  return isNew && takes && !isRest ? fresh : undefined;
}

/** The one a name means: the line with the amount in front of it, else one of the part made here, by what stands around it. */
function ownerOf(all: readonly Mention[], stated: Stated | null, where: Where): Mention | null {
  const same = stated === null ? [] : all.filter((mention) => statesAmount(mention, stated));
  if (same.length === 1) return same[0] ?? null;
  const own = inPart(all, where);
  // Of lines of one name, an amount means one that has as much.
  const enough =
    stated === null || own.length < 2
      ? own
      : own.filter((mention) => shareNamed(mention, stated.quantity, stated.unit) !== null);
  const near = stated === null ? inCompany(enough, where) : undefined;
  return near ?? enough.find(({ changed }) => changed) ?? enough[0] ?? null;
}

/** Verbs that put something in, as methods of nine languages have them. */
const PUTS_IN =
  /(?<!\p{L})(?:aggiung|uni(?:re|te|sci)|mescol|mett(?!r)|vers|incorpor|amalgam|ajout|mélang|añad|agreg|mezcl|pon(?:er|ga|emos)|ech(?:a|ar|e)(?!\p{L})|adicion|junt|mistur|coloq|acrescent|hinzu|zugeb|dazugeb|unterrühr|unterheb|einrühr|verrühr|misch|gib|geb(?:en|t)|voeg|toevoeg|roer|meng|klop|doe|tillsätt|rör|blanda|häll|vispa|tilsæt|rør|bland|hæld|tilsett|pisk|hell)\p{L}*/iu;

/** 'Étape 1 : Cuisson des carottes', 'Für den Teig': a few words without a full stop that put nothing in. */
const isHeading = (text: string): boolean =>
  !/[.!?]\s*$/.test(text) &&
  (/:\s*$/.test(text) || !PUTS_IN.test(text)) &&
  text.trim().split(/\s+/).length <= 6 &&
  !/\d\s?(?:g|ml|°|min)/i.test(text);

/** Whether the steps of a method end without full stops as a rule, so that the lack of one is no sign of a heading. */
function isUnpointed(method: string): boolean {
  const lines = method.split('\n').filter((line) => line.trim() !== '');
  const bare = lines.filter((line) => !/[.!?:]\s*$/.test(line));
  return bare.length > 2 && bare.length > lines.length / 2;
}

/** Talk of what else one may take. */
const OTHER_WAY =
  /(?<!\p{L})(?:statt|anstelle|au lieu de|à la place|in plaats van|en lugar de|en vez de|invece di|al posto di|em vez de|i stället för|istället för|i stedet for)(?!\p{L})/iu;

/** Whether a title is more than the name of one food. */
const isLong = (title: string): boolean => title.trim().split(/\s+/).length > 2;

/** The step with remarks behind changed ingredients, and which of them it names. Each remark once a step; amounts each get their own. */
export function renameForeign(
  text: string,
  mentions: readonly Mention[],
  context: {
    words: MethodWords;
    foods: FoodTable;
    used: UsedSoFar;
    title: string;
    /** The whole method, a line a step. */
    method: string;
  },
  partAt: (at: number) => number | null = () => null,
): { text: string; named: Mention[] } {
  const owners = byName(mentions);
  const forms = formsOf([...owners.keys()]);
  if (forms.size === 0 || (isHeading(text) && !isUnpointed(context.method)))
    return { text, named: [] };
  const pattern = foreignPattern([...forms.keys()]);
  const named = new Set<Mention>();
  const left = new Set<string>();
  const boils = /\bboil\b/.test(keyed(text, context.words));
  const patterns = bracketPatterns(context.words);
  // 'Begin the pasta with lentils': the dish by its whole name is no amount.
  const titled = isLong(context.title)
    ? text.toLowerCase().indexOf(context.title.toLowerCase())
    : -1;
  const renamed = text.replace(pattern, (...found) => {
    const whole = found[0] as string;
    const groups = found.at(-1) as { name?: string; stem?: string };
    const form = (groups.name ?? groups.stem ?? '').toLowerCase();
    const name = forms.get(form) ?? form;
    const at = found.at(-3) as number;
    const stated = statedBefore(text.slice(0, at), whole, context.words);
    const isRest = patterns.share.test(text.slice(Math.max(0, at - 40), at));
    const where = { text, at, word: whole, part: partAt(at), mentions, used: context.used, isRest };
    const mention = ownerOf(owners.get(name) ?? [], stated, where);
    if (mention === null || OTHER_WAY.test(sentenceAt(text, at))) return whole;
    if (titled >= 0 && at >= titled && at < titled + context.title.length) return whole;
    const share = stated === null ? null : shareNamed(mention, stated.quantity, stated.unit);
    if (named.has(mention) && share === null) return whole;
    named.add(mention);
    context.used.name(mention);
    if (share !== null) context.used.use(mention, share);
    const fresh = context.used.takeAdditions(mention);
    const leftOut = boils && boiledOf(mention)?.length === 0;
    const again = mention.changed && !leftOut && context.used.introduce(mention);
    const said = {
      word: whole,
      share: share ?? 1,
      stated: stated !== null,
      again,
      partOnly: stated === null && isRest,
    };
    const peels = patterns.peel.test(sentenceAt(text, at));
    const put = remark(mention, said, fresh, { ...context, boils, peels });
    if (put === context.words.leaveOut) left.add(whole);
    return put === null ? whole : `${whole} (${put})`;
  });
  const told = [...left].reduce((now, word) => withoutLeftOut(now, word, context.words), renamed);
  return { text: told, named: [...named] };
}
