/** Candidates in order of fit, and the match they make. */
import type { Match } from '../model.ts';
import type { Candidate } from './lookup.ts';
import { FLOOR } from './score.ts';

/** Further foods that a match tells. */
export const OTHERS = 4;

const byScore = (a: Candidate, b: Candidate): number => b.score - a.score || a.order - b.order;

/** The best candidate of each food, best first. */
export function ranked(candidates: readonly Candidate[]): Candidate[] {
  const best = new Map<string, Candidate>();
  for (const candidate of candidates) {
    const known = best.get(candidate.food.id);
    if (!known || candidate.score > known.score) best.set(candidate.food.id, candidate);
  }
  return [...best.values()].sort(byScore);
}

const round = (value: number): number => Math.round(Math.max(0, Math.min(1, value)) * 100) / 100;

export function toMatch(candidates: readonly Candidate[]): Match | null {
  const [first, ...rest] = ranked(candidates);
  if (!first || first.score < FLOOR) return null;
  return {
    foodId: first.food.id,
    foodName: first.food.name,
    confidence: round(first.score),
    reason: first.reason,
    others: rest.slice(0, OTHERS).map(({ food, score }) => ({
      foodId: food.id,
      foodName: food.name,
      confidence: round(Math.min(score, first.score)),
    })),
  };
}
