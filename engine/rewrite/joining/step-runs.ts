/** Runs of a step's sentences in which each ingredient is spoken of alike. */
import type { MethodWords } from '../languages/method-words.ts';
import type { Mention } from '../naming/mention.ts';
import { capital } from '../naming/method-names.ts';
import { sentencesOf } from '../wording/sentences.ts';
import type { LateVegetable } from './joins-late.ts';
import { peeledAlone } from './peeled-alone.ts';

export interface Segment {
  text: string;
  /** Where it begins in the step's text. */
  offset: number;
  mentions: readonly Mention[];
  /** Sentences of our own that stand behind it. */
  told: readonly LateVegetable[];
}

const THEN_DRAINS =
  /(?:,|,? (?:and|e|y|et|und|en|och|og))(?: (?:then|poi|luego|después|ensuite|dann|depois|daarna|sedan))? (?=(?:drain|abgie(?:ß|ss)|abtropf|abschütt|scola|asciuga|escurr|escorr|égoutt|giet|häll av|hæld|hell av|seca|séch|tork|tørk)\p{L}*)/iu;

/** A step's sentences, each with the blanks behind it. */
function pieces(text: string): { text: string; offset: number }[] {
  const starts: number[] = [];
  let from = 0;
  for (const sentence of sentencesOf(text)) {
    const at = text.indexOf(sentence, from);
    starts.push(at);
    from = at + sentence.length;
  }
  return starts.map((start, index) => {
    const offset = index === 0 ? 0 : start;
    return { text: text.slice(offset, starts[index + 1] ?? text.length), offset };
  });
}

const isSpokenAlone = (one: LateVegetable, at: number, sentence: number): boolean =>
  at < one.at || (at === one.at && sentence <= one.sentence);

const replaced = (
  mentions: readonly Mention[],
  early: ReadonlyMap<Mention, Mention>,
): readonly Mention[] => {
  if (early.size === 0) return mentions;
  return mentions.map((mention) => early.get(mention) ?? mention);
};

/** 'Boil until tender' and 'Drain and set aside' of a sentence that does both. */
function partedAtDraining(text: string): [string, string] | null {
  const found = THEN_DRAINS.exec(text);
  if (found === null) return null;
  return [`${text.slice(0, found.index)}. `, capital(text.slice(found.index + found[0].length))];
}

/**
 * A step in runs of sentences. `page`: all steps of the page, by which it is known whether what is peeled
 * is named again.
 */
export function segmentsOf(
  page: readonly string[],
  at: number,
  mentions: readonly Mention[],
  late: readonly LateVegetable[],
  words: MethodWords | null,
): Segment[] {
  const text = page[at] ?? '';
  const own = pieces(text);
  const whole = [{ text, offset: 0, mentions, told: [] }];
  if (late.length === 0 && !mentions.some(({ changed }) => changed)) return whole;
  const runs: Segment[] = [];
  own.forEach((piece, sentence) => {
    const here = late.filter((one) => one.at === at && one.sentence === sentence);
    const early = new Map<Mention, Mention>();
    for (const one of late) if (isSpokenAlone(one, at, sentence)) early.set(one.mention, one.early);
    const rest = [own.slice(sentence + 1).map((one) => one.text), page.slice(at + 1)].flat();
    for (const mention of mentions) {
      const alone = early.has(mention) ? null : peeledAlone(mention, piece.text, rest, words);
      if (alone !== null) early.set(mention, alone);
    }
    const spoken = replaced(mentions, early);
    const parted = here.some(({ joins }) => joins === 'within')
      ? partedAtDraining(piece.text)
      : null;
    const last = runs.at(-1);
    const first = parted?.[0] ?? piece.text;
    const before = parted === null ? here.filter(({ joins }) => joins !== 'behind') : [];
    const behind = parted === null ? here.filter(({ joins }) => joins === 'behind') : here;
    const same = (last?.mentions.length ?? 0) > 0 && isSame(last?.mentions ?? [], spoken);
    if (before.length > 0) {
      if (last === undefined) runs.push({ text: '', offset: 0, mentions: [], told: before });
      else runs[runs.length - 1] = { ...last, told: [...last.told, ...before] };
      runs.push({ ...piece, text: first, mentions: spoken, told: behind });
    } else if (last !== undefined && same && last.told.length === 0)
      runs[runs.length - 1] = { ...last, text: `${last.text}${first}`, told: behind };
    else runs.push({ ...piece, text: first, mentions: spoken, told: behind });
    if (parted !== null)
      runs.push({
        text: parted[1],
        offset: piece.offset + piece.text.length - parted[1].length,
        mentions,
        told: [],
      });
  });
  return runs.length === 0 ? whole : runs;
}

const isSame = (a: readonly Mention[], b: readonly Mention[]): boolean =>
  a.length === b.length &&
  a.every(
    (one, at) =>
      one === b[at] ||
      (one.ingredient === b[at]?.ingredient &&
        one.newName === b[at]?.newName &&
        one.items.length === b[at]?.items.length),
  );
