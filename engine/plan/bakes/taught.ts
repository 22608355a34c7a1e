/** What lessons mean for the plan of one recipe. */
import type { Adjustment, Family, Interval } from '../../model.ts';
import type { Lesson } from './lessons.ts';

/** Lessons that are switched on, and the recipe they are for. */
export interface Taught {
  lessons: readonly Lesson[];
  /** Id under which the recipe is kept, or null. */
  recipeId: string | null;
  /** Names of the user's packages by food id. */
  foodNames: Readonly<Record<string, string>>;
  /** Ids of changes accepted after a bake that the user has switched off. */
  changesOff?: readonly string[];
}

const LAST: Record<Lesson['of'], string> = {
  'flour-water': 'with this package',
  'dish-water': 'of this dish',
  'dish-weight': 'of this dish',
  'family-weight': 'of such dishes',
  oven: 'in your oven',
};

const rests = ({ of, bakes }: Lesson): string => `your last ${bakes.length} bakes ${LAST[of]}`;

const tidy = (value: number): string => String(Math.round(Math.abs(value) * 10) / 10);

function waterChange(lesson: Lesson, food: string | null): Adjustment {
  const more = lesson.value > 0;
  const flour = food === null ? 'flour' : food;
  return {
    id: `taught.${lesson.id}`,
    symptom: 'taught',
    lever: 'water',
    factor: null,
    shiftPct: Math.round(lesson.value * 10) / 10,
    text: `${more ? 'More' : 'Less'} water: ${tidy(lesson.value)} g for each 100 g of ${flour}.`,
    why: `Your bakes taught it: so much ${more ? 'more' : 'less'} went in, on average, in ${rests(lesson)}.`,
    source: 'your own bakes',
    ...(food === null ? {} : { foodId: lesson.subject }),
  };
}

/** A step of an oven's dial, °C: own choice. */
const DIAL = 5;

function ovenChange(lesson: Lesson): Adjustment | null {
  const by = DIAL * Math.round(lesson.value / DIAL);
  if (by === 0) return null;
  const [turn, ran] = by > 0 ? ['lower', 'hotter'] : ['higher', 'cooler'];
  const size = Math.abs(by);
  return {
    id: `taught.${lesson.id}`,
    symptom: 'taught',
    lever: 'method',
    factor: null,
    shiftPct: null,
    text: `Set the oven ${size} °C (${Math.round(size * 1.8)} °F) ${turn} than the recipe says.`,
    why: `Your bakes taught it: it ran ${tidy(lesson.value)} °C ${ran} than it was set, on average, in ${rests(lesson)}.`,
    source: 'your own bakes',
  };
}

/** An oven with its heat; other words for it are in the lists of the method's own languages. */
const OVEN = /\b(oven|bake|roast|ofen|backofen|backen|four|horno|forno|ugn|ovn)\b/i;

/** Changes that the lessons ask for in this recipe; its steps tell whether an oven is used. */
export function taughtChanges(taught: Taught | undefined, steps: readonly string[]): Adjustment[] {
  if (taught === undefined) return [];
  const bakesIt = steps.some((step) => OVEN.test(step));
  return taught.lessons.flatMap((lesson): Adjustment[] => {
    const { of, subject } = lesson;
    if (of === 'flour-water') return [waterChange(lesson, taught.foodNames[subject] ?? subject)];
    if (of === 'dish-water') return subject === taught.recipeId ? [waterChange(lesson, null)] : [];
    const change = of === 'oven' && bakesIt ? ovenChange(lesson) : null;
    return change === null ? [] : [change];
  });
}

/** A finished dish's share of what goes in, as bakes have it, with the words for where it comes from. */
interface BakedShare {
  share: Interval;
  source: string;
}

/** The dish's own bakes before those of its family. */
export function taughtShare(taught: Taught | undefined, family: Family): BakedShare | null {
  const found = (of: Lesson['of'], subject: string | null): Lesson | undefined =>
    taught?.lessons.find((lesson) => lesson.of === of && lesson.subject === subject);
  const lesson = found('dish-weight', taught?.recipeId ?? null) ?? found('family-weight', family);
  if (lesson === undefined) return null;
  const { low, value, high } = lesson;
  const percent = Math.round(100 * value);
  return {
    share: { low, best: value, high },
    source: `taught by your bakes: ${percent} % of what goes in, from ${rests(lesson)}`,
  };
}

/** Accepted changes that are not switched off. */
export const changesOn = (
  changes: readonly Adjustment[],
  { changesOff = [] }: Partial<Taught> = {},
): Adjustment[] => changes.filter(({ id }) => !changesOff.includes(id));
