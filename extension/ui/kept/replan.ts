/** Kept recipes at another budget: what each would be, before any of it is written. */
import { adaptRecipe, type WalkOptions } from '../../../engine/index.ts';
import type { Adaptation } from '../../../engine/model.ts';
import type { NextState } from '../../store/kept/several.ts';
import type { SavedRecipe } from '../../store/records.ts';
import { say } from '../words/say.ts';
import { changeTexts } from './compare-versions.ts';

export interface Replanned {
  saved: SavedRecipe;
  /** Null when it could not be worked out, or stays just as it is. */
  next: NextState | null;
  /** What would change, in words. */
  text: string;
}

export type OptionsFor = (saved: SavedRecipe) => WalkOptions;

function adaptedAt(saved: SavedRecipe, budgetG: number, options: WalkOptions): Adaptation | null {
  try {
    const { recipe, goals, corrections } = saved;
    return adaptRecipe(recipe, { ...goals, budgetG }, { ...options, corrections });
  } catch (error) {
    console.error(error);
    return null;
  }
}

export function replanned(saved: SavedRecipe, budgetG: number, options: WalkOptions): Replanned {
  if (saved.goals.budgetG === budgetG) return { saved, next: null, text: say('sameBudget') };
  const adaptation = adaptedAt(saved, budgetG, options);
  if (adaptation === null) return { saved, next: null, text: say('couldNotWorkOut') };
  const { recipe, corrections } = saved;
  const work = { recipe, goals: adaptation.goals, corrections, adaptation };
  const texts = saved.adaptation === null ? [] : changeTexts(saved.adaptation, adaptation);
  const text = texts.length === 0 ? say('onlyBudget') : `${texts.join('; ')}.`;
  return { saved, next: { id: saved.id, work }, text };
}

/** One after the other with a rest between, so that the page goes on. */
export async function replanAll(
  recipes: readonly SavedRecipe[],
  budgetG: number,
  optionsFor: OptionsFor,
  onOne: (done: number) => void,
): Promise<Replanned[]> {
  const all: Replanned[] = [];
  for (const saved of recipes) {
    all.push(replanned(saved, budgetG, optionsFor(saved)));
    onOne(all.length);
    await new Promise((done) => setTimeout(done, 0));
  }
  return all;
}
