import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  type Adjustment,
  adaptRecipe,
  DEFAULT_GOALS,
  foodFromLabel,
  learnedWater,
  readText,
} from '../../../engine/index.ts';
import { openStore, type Store } from '../../../extension/store/db.ts';
import { listOwnFoods, saveOwnFood } from '../../../extension/store/kept/kept-packages.ts';
import { keepLesson, withoutLearned } from '../../../extension/store/kept/lesson.ts';
import { getRecipe, saveRecipe, versionsOf } from '../../../extension/store/kept/saved.ts';
import { blendUs } from '../../foods/label/labels.ts';

const label = blendUs();
const made = foodFromLabel(label);
if (!made.ok) throw new Error(made.why);
const blend = { ...made.food, label };

const correction = (id: string, lever: Adjustment['lever'] = 'water'): Adjustment => ({
  id,
  symptom: 'too-wet',
  lever,
  factor: null,
  shiftPct: lever === 'water' ? -5 : null,
  text: 'Less water: 5 % of the flour’s weight.',
  why: 'invented for the test',
  source: 'own choice',
});

/** A loaf of its own title, corrected as given. */
function loaf(title: string, adjustments: Adjustment[]) {
  const read = readText(
    `${title}\n\n500 g bread flour\n370 g water\n10 g salt\n7 g dry yeast\n\nMix and bake.\n\nServes 12`,
  );
  const recipe = read.ok ? read.recipes[0] : undefined;
  if (!recipe) throw new Error('not read');
  const goals = { ...DEFAULT_GOALS, adjustments };
  const adaptation = adaptRecipe(recipe, goals, { ownFoods: [blend] });
  return { recipe, goals, corrections: {}, adaptation };
}

let store: Store;
let count = 0;

beforeEach(async () => {
  count += 1;
  store = openStore(() => {}, `lesson-${count}`);
  await saveOwnFood(store, blend);
});

afterEach(() => store.delete());

describe('water learned for a package', () => {
  const twice = loaf('Twice corrected', [
    correction('too-wet.1'),
    correction('too-wet.1.2'),
    correction('stale.1', 'method'),
  ]);
  const here = loaf('On the screen', [correction('too-wet.1')]);
  const plain = loaf('Never corrected', []);

  it('is kept, and the corrections come off the recipes that rest on it, as new versions', async () => {
    const lesson = learnedWater(blend, [twice.adaptation, here.adaptation]);
    if (!lesson) throw new Error('nothing learned');
    const other = await saveRecipe(store, twice, null, 1000);
    const shown = await saveRecipe(store, here, null, 1000);
    const rest = await saveRecipe(store, plain, null, 1000);
    expect(await keepLesson(store, lesson, label, shown.id, {}, 2000)).toBe(1);
    expect((await listOwnFoods(store)).foods).toEqual([{ ...lesson.food, label }]);
    const changed = await getRecipe(store, other.id);
    expect(changed?.goals.adjustments.map(({ id }) => id)).toEqual(['stale.1']);
    const [before] = await versionsOf(store, other.id);
    expect(before?.goals.adjustments).toHaveLength(3);
    expect((await getRecipe(store, shown.id))?.goals.adjustments).toHaveLength(1);
    expect(await versionsOf(store, rest.id)).toEqual([]);
  });

  it('leaves corrections of anything but water', () => {
    const { adjustments } = twice.goals;
    const left = withoutLearned(adjustments, { adjustmentIds: adjustments.map(({ id }) => id) });
    expect(left.map(({ lever }) => lever)).toEqual(['method']);
  });
});
