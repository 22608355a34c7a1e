/** What the cues of each part look at: its share of the plan, of the ingredients and of the method. */
import type { Plan } from '../../model.ts';
import type { CueContext } from '../cues/cue-context.ts';
import { courseOf } from './course.ts';
import { partOfItem, partOfKey } from './part-of.ts';
import type { StepParts } from './step-parts.ts';

export interface PartMethod {
  context: CueContext;
  /** The steps that may be the part's, with English key words; the others are empty. */
  texts: string[];
  /** The same in the words of the page. */
  original: string[];
}

export interface WholeMethod {
  original: readonly string[];
  /** The steps with English key words. */
  searched: readonly string[];
  parts: readonly StepParts[];
  /** Steps that name each ingredient, by its key. */
  named: ReadonlyMap<string, readonly number[]>;
}

/** The plan as far as one part goes. */
function planOfPart(plan: Plan, part: number): Plan {
  const { family = plan.family.id, why = '' } = plan.parts[part] ?? {};
  const items = plan.items.filter((item) => partOfItem(plan, item) === part);
  const foods = new Set(items.map(({ foodId }) => foodId));
  const swaps = plan.swaps.filter(({ key, to }) =>
    key === null ? to.some(({ foodId }) => foods.has(foodId)) : partOfKey(plan, key) === part,
  );
  return {
    ...plan,
    family: { ...plan.family, id: family, why },
    parts: [],
    items,
    swaps,
    dough: part === 0 ? plan.dough : null,
    reserveWaterG: part === 0 ? plan.reserveWaterG : null,
  };
}

/** Where a whole dish goes into the oven: whose step it is cannot be told from the words around. */
const TOGETHER = /\b(bake|oven|roast)\b/i;

/** 'Bake and glaze' bakes the rolls too, though it is headed for the glaze: the steps from the part's own on that use the oven. */
const withOven = (
  texts: readonly string[],
  own: readonly number[],
  { searched }: WholeMethod,
): string[] => {
  const first = own[0] ?? 0;
  return texts.map((text, at) =>
    text === '' && at > first && TOGETHER.test(searched[at] ?? '') ? (searched[at] ?? '') : text,
  );
};

function ofPart(context: CueContext, part: number, method: WholeMethod): PartMethod {
  const { plan, ingredients, mentions } = context;
  const own = method.parts.flatMap(({ whole }, at) => (whole === part ? [at] : []));
  const isOwn = ({ sentences, headed }: StepParts, at: number): boolean =>
    sentences.some((one) => one.part === part || one.part === null) ||
    (!headed && TOGETHER.test(method.searched[at] ?? ''));
  const found = method.searched.map((text, at) => {
    const parts = method.parts[at];
    return parts === undefined || isOwn(parts, at) ? text : '';
  });
  const here = mentions.filter((mention) => mention.part === part);
  const isDough = here.some(({ role }) => role === 'structure');
  // An oven that is heated before the part begins bakes nothing of it yet.
  const unbaked = isDough && !found.some((text, at) => at > (own[0] ?? 0) && TOGETHER.test(text));
  const texts = unbaked ? withOven(found, own, method) : found;
  return {
    context: {
      ...context,
      plan: planOfPart(plan, part),
      ingredients: ingredients.filter(({ key }) => partOfKey(plan, key) === part),
      mentions: here,
      partTitle: plan.parts[part]?.title ?? null,
      course: courseOf(texts, own, here, method.named),
    },
    texts,
    original: method.original.map((text, at) => (texts[at] === '' ? '' : text)),
  };
}

/** The dish as one, or each of its parts. */
export function partMethods(context: CueContext, method: WholeMethod): PartMethod[] {
  const { plan, mentions } = context;
  if (plan.parts.length < 2) {
    const all = method.searched.map((_, at) => at);
    const course = courseOf(method.searched, all, mentions, method.named);
    return [
      {
        context: { ...context, course },
        texts: [...method.searched],
        original: [...method.original],
      },
    ];
  }
  return plan.parts.map((_, part) => ofPart(context, part, method));
}
