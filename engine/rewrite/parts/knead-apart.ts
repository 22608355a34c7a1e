/** Sentences that mix a dough and knead it: it rests in the middle of them. */
import { capital } from '../naming/method-names.ts';

/** 'Mix until combined, then knead for 8 minutes': the dough is there in the middle of it. */
const MIXES_THEN_KNEADS =
  /^(?<mixes>(?:mix|beat|combine|stir|bring|add\b[^.]*?\b(?:mix|stir))\b[^.]*?)(?:;|,? and(?: then)?|,? then|,)\s(?<kneads>(?:increase\b[^.]{0,40}\band |continue (?:to )?|turn\b[^.]{0,60}\band )?knead(?:ing)?\b.*)$/is;

/** The sentence in two, mixing and kneading; null where it does not do both. */
export function kneadApart(sentence: string): string | null {
  const { mixes, kneads } = MIXES_THEN_KNEADS.exec(sentence)?.groups ?? {};
  return mixes === undefined || kneads === undefined ? null : `${mixes}. ${capital(kneads)}`;
}
