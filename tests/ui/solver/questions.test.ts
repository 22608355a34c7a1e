import { describe, expect, it } from 'vitest';
import { readText } from '../../../engine/index.ts';
import { DEFAULT_GOALS } from '../../../engine/model.ts';
import { type AsItIs, answerTo } from '../../../extension/ui/solver/questions.ts';
import { LOAF_TEXT } from '../../browser/drive/bench.ts';

function heard(text: string): { told: AsItIs[]; answer: ReturnType<typeof answerTo> } {
  const read = readText(text);
  const [recipe] = read.ok ? read.recipes : [];
  if (!recipe) throw new Error('not read');
  const told: AsItIs[] = [];
  const question = { recipe, goals: DEFAULT_GOALS, options: {} };
  const answer = answerTo(question, (asItIs) => told.push(asItIs));
  return { told, answer };
}

describe('an answer', () => {
  it('is told of first by the serving as the page has it', () => {
    const { told, answer } = heard(LOAF_TEXT);
    expect(told).toEqual([{ servings: 12, netCarbsG: answer?.before.perServing.netCarbsG }]);
  });

  it('is not told of by figures that are asked about', () => {
    const { told, answer } = heard(LOAF_TEXT.replace(/12 slices/, '1 slice'));
    expect(answer?.questions).not.toEqual([]);
    expect(told).toEqual([]);
  });
});
