/** Where gum meets fat and liquid in a method, by its steps with English key words. */
import { sentencesOf } from '../../wording/sentences.ts';
import type { Cue } from '../cue.ts';
import type { Place } from '../insertion.ts';

const FAT = /\b(?:butter|oil|fat|drippings|lard|margarine)\b/i;
const FLOUR = /\b(?:flour|starch)\b/i;
const THICKENS = /\b(?:thick\w*|simmer\w*|boil\w*|bubbl\w*)\b/i;

/** Whether a step puts what the gum stands for into fat by itself, so that nothing need be said of it. */
export function isInFat(text: string, { id }: Pick<Cue, 'id'>): boolean {
  const sentences = sentencesOf(text);
  const takes = sentences.findIndex((one) => FLOUR.test(one));
  return (
    id === 'gum-into-fat' &&
    takes >= 0 &&
    sentences.slice(0, takes + 1).some((one) => FAT.test(one))
  );
}

/** Steps behind the one that takes the gum, within which the sauce is cooked. Own choice. */
const LATER = 2;

/** Behind the sentence that thickens, from a step on; behind that step's last where none says so. */
export function thickenedAt(texts: readonly string[], from: number): Place {
  for (let at = from; at <= from + LATER; at += 1) {
    const sentences = sentencesOf(texts[at] ?? '');
    const takes = at === from ? sentences.findIndex((one) => FLOUR.test(one)) : 0;
    const behind = sentences.findIndex((one, index) => index >= takes && THICKENS.test(one));
    if (behind >= 0) return { at, behind };
  }
  return { at: from, behind: Math.max(0, sentencesOf(texts[from] ?? '').length - 1) };
}
