import 'fake-indexeddb/auto';
import { h } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  type Adjustment,
  foodFromLabel,
  type LearnedWater as Lesson,
} from '../../../engine/index.ts';
import { openStore, type Store } from '../../../extension/store/db.ts';
import { listOwnFoods, saveOwnFood } from '../../../extension/store/kept/kept-packages.ts';
import type { OwnFood } from '../../../extension/store/records.ts';
import { LearnedWater } from '../../../extension/ui/taught/learned-water-panel.tsx';
import { blendUs } from '../../foods/label/labels.ts';
import { adaptedText } from '../adapted.ts';
import { type Drawn, drawn } from '../screen.ts';

const LOAF =
  'Loaf\n\n500 g bread flour\n370 g water\n10 g salt\n7 g dry yeast\n\nBake.\n\nServes 12';

const lessWater = (id: string): Adjustment => ({
  id,
  symptom: 'too-wet',
  lever: 'water',
  factor: null,
  shiftPct: -5,
  text: 'Less water: 5 % of the flour’s weight.',
  why: 'invented for the test',
  source: 'own choice',
});

function madePackage(): OwnFood {
  const label = blendUs();
  const made = foodFromLabel(label);
  if (!made.ok) throw new Error(made.why);
  return { ...made.food, label };
}

const blend = madePackage();
let store: Store;
let screen: Drawn;
let lessons: Lesson[] = [];
let count = 0;

async function show(adjustments: Adjustment[]): Promise<void> {
  lessons = [];
  await act(async () => {
    screen = drawn(
      h(LearnedWater, {
        store,
        own: { foods: [blend], damaged: 0 },
        adaptation: adaptedText(LOAF, { adjustments }),
        options: { ownFoods: [blend] },
        savedId: null,
        onKept: (lesson) => {
          lessons.push(lesson);
        },
      }),
    );
  });
}

const offer = () => screen.root.querySelector('button');

beforeEach(async () => {
  count += 1;
  store = openStore(() => {}, `learned-${count}`);
  await saveOwnFood(store, blend);
});

afterEach(async () => {
  vi.restoreAllMocks();
  screen.clear();
  await store.delete();
});

describe('water learned for a package', () => {
  it('is offered after two corrections, not after one', async () => {
    await show([lessWater('too-wet.1')]);
    expect(offer()).toBeNull();
    screen.clear();
    await show([lessWater('too-wet.1'), lessWater('too-wet.1.2')]);
    expect(screen.root.textContent).toContain('2 corrections asked for less water');
    expect(lessons).toEqual([]);
  });

  it('is kept with its label when it is taken', async () => {
    await show([lessWater('too-wet.1'), lessWater('too-wet.1.2')]);
    await act(async () => offer()?.click());
    await vi.waitFor(() => expect(lessons).toHaveLength(1));
    const { foods } = await listOwnFoods(store);
    expect(foods).toEqual([{ ...lessons[0]?.food, label: blend.label }]);
    expect(foods[0]?.function?.absorption?.best).toBeLessThan(
      blend.function?.absorption?.best ?? Number.NaN,
    );
  });

  it('that could not be kept is told of', async () => {
    await show([lessWater('too-wet.1'), lessWater('too-wet.1.2')]);
    const full = Object.assign(new Error('full'), { name: 'QuotaExceededError' });
    vi.spyOn(store.foods, 'put').mockRejectedValueOnce(full);
    await act(async () => offer()?.click());
    await vi.waitFor(() =>
      expect(screen.root.querySelector('[role=alert]')?.textContent).toContain('no room left'),
    );
    expect(lessons).toEqual([]);
  });
});
