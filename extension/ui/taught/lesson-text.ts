/** A lesson in a sentence, and what each of its bakes measured. */
import type { BakeFacts, Lesson } from '../../../engine/index.ts';
import { Family } from '../../../engine/model.ts';
import { dayText, digitsOf, short } from '../figures/format.ts';
import { familyWord } from '../words/family-words.ts';
import { say, sayCount } from '../words/say.ts';

export interface Named {
  /** The user's packages by food id. */
  foods: Readonly<Record<string, string>>;
  facts: readonly BakeFacts[];
}

const size = (value: number): string => short(Math.abs(value));
const percent = (share: number): string => digitsOf(100 * share, 0);

/** What a lesson is about, in the user's words. */
function subjectOf({ of, subject }: Lesson, { foods, facts }: Named): string {
  if (of === 'flour-water') return foods[subject] ?? subject;
  const family = Family.safeParse(subject);
  if (of === 'family-weight' && family.success) return familyWord(family.data);
  const title = facts.find(({ recipeId }) => recipeId === subject)?.title;
  return title === undefined ? say('aDish') : `“${title}”`;
}

/** 'Soft Mill blend: 10 g more water for each 100 g.' */
export function lessonText(lesson: Lesson, named: Named): string {
  const { of, value, low, high } = lesson;
  const subject = subjectOf(lesson, named);
  if (of === 'oven') return say(value > 0 ? 'taughtHotter' : 'taughtCooler', size(value));
  if (of === 'flour-water' || of === 'dish-water') {
    return say(value > 0 ? 'taughtMoreWater' : 'taughtLessWater', subject, size(value));
  }
  return say('taughtWeight', subject, percent(value), percent(low), percent(high));
}

/** 'From 3 bakes: 6 Sep 2026, …; 3 earlier ones no longer count.' */
export function lessonBakes({ bakes, earlier }: Lesson, { facts }: Named): string {
  const days = bakes.flatMap((id) => {
    const bake = facts.find((one) => one.id === id);
    return bake === undefined ? [] : [dayText(bake.day)];
  });
  const from = sayCount('taughtFrom', bakes.length, [...new Set(days)].join(', '));
  return earlier === 0 ? from : `${from} ${sayCount('taughtEarlier', earlier)}`;
}
