/** Works recipes out beside the page, so that typing there is never held up. */
import { indexFoods } from '../../../engine/index.ts';
import type { Food } from '../../../engine/model.ts';
import { answerTo, type Question, type Told } from './questions.ts';

/** The user's foods as they came last: what is indexed for them holds for the same list only. */
let last: { text: string; foods: readonly Food[] } = { text: '[]', foods: [] };

function known(foods: readonly Food[]): readonly Food[] {
  const text = JSON.stringify(foods);
  if (text !== last.text) last = { text, foods };
  return last.foods;
}

const say = (told: Told): void => postMessage(told);

addEventListener('message', ({ data }: MessageEvent<Question>) => {
  const { ownFoods = [] } = data.options;
  const question = { ...data, options: { ...data.options, ownFoods: known(ownFoods) } };
  const answer = answerTo(question, (asItIs) => say({ kind: 'asItIs', asItIs }));
  say({ kind: 'answer', answer });
});

// Most often the page is still being read.
indexFoods();
