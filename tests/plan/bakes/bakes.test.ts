import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foodTable } from '../../../engine/foods/index.ts';
import {
  type Adaptation,
  type Adjustment,
  FAMILIES,
  type Food,
  type Goals,
  type Lever,
  type PlannedItem,
  type Role,
} from '../../../engine/model.ts';
import { CONFLICTS, FAILURES } from '../../../engine/plan/bakes/failure-table.ts';
import {
  bakeSymptoms,
  learnedWater,
  likelyCauses,
  proposeAdjustments,
} from '../../../engine/plan/bakes/index.ts';
import { FIGURE_NAMES } from '../../../engine/plan/bakes/value-names.ts';
import { adapted, PASTED, pastedNamed } from '../pasted.ts';

const byTitle = (title: string, goals: Partial<Goals> = {}): Adaptation =>
  adapted(pastedNamed(title), goals);

const loaf = byTitle('Overnight kitchen loaf');
const cookies = byTitle('Chocolate chip cookies', { budgetG: 8 });

/** A loaf with figures of our choosing, so that conditions can be checked by hand. */
function withDough(
  figures: Partial<NonNullable<Adaptation['plan']['dough']>['after']>,
): Adaptation {
  const { dough } = loaf.plan;
  if (dough === null) throw new Error('the loaf has no dough');
  const after = { ...dough.after, ...figures };
  return { ...loaf, plan: { ...loaf.plan, dough: { ...dough, after } } };
}

const levers = (adjustments: readonly Adjustment[]): string[] =>
  adjustments.map(({ lever }) => lever);

describe('failure table', () => {
  it('has the rows of a baker’s list, each with a source and adjustments that name a cause', () => {
    expect(FAILURES.length).toBeGreaterThanOrEqual(36);
    expect(new Set(FAILURES.map(({ id }) => id)).size).toBe(FAILURES.length);
    for (const row of FAILURES) {
      expect(row.source, row.id).not.toBe('');
      for (const change of row.adjust)
        for (const cause of change.cause) expect(Object.keys(row.causes), row.id).toContain(cause);
    }
  });

  it('names known figures in braces, and known rows in its conflicts', () => {
    const words = new Set<string>([...FIGURE_NAMES, 'doseFood', 'doubtfulFood']);
    const texts = FAILURES.flatMap(({ causes, adjust }) => [
      ...Object.values(causes).map(({ text }) => text),
      ...adjust.map(({ text }) => text),
    ]);
    const named = texts.flatMap((text) => [...text.matchAll(/\{(\w+)\}/g)].map(([, name]) => name));
    expect(named.length).toBeGreaterThan(40);
    expect(named.filter((name) => name !== undefined && !words.has(name))).toEqual([]);
    const ids = new Set(FAILURES.map(({ id }) => id));
    expect(CONFLICTS.flatMap(({ pair }) => pair).filter((id) => !ids.has(id))).toEqual([]);
  });

  it.each(FAMILIES)('offers something for %s', (family) => {
    const ids = bakeSymptoms(family).map(({ id }) => id);
    expect(ids).toContain('stomach');
    expect(ids).toContain('glucose');
  });

  it('offers what suits the dish only', () => {
    expect(bakeSymptoms('cookie').map(({ id }) => id)).toContain('spread');
    expect(bakeSymptoms('lean-yeast-bread').map(({ id }) => id)).not.toContain('spread');
    expect(bakeSymptoms('thickened-sauce').map(({ id }) => id)).not.toContain('gummy');
  });
});

describe('proposals', () => {
  it('cuts the binder of a gummy loaf by 40 % when there is much of it', () => {
    const base = loaf.plan.dough?.after.flourBaseG ?? 0;
    const items = loaf.plan.items.map((item) =>
      item.role === 'binder' ? { ...item, grams: 0.03 * base } : item,
    );
    const [first] = proposeAdjustments({ ...loaf, plan: { ...loaf.plan, items } }, ['gummy']);
    expect(first).toMatchObject({ id: 'gummy.1', lever: 'binder', factor: 0.6, shiftPct: null });
    expect(first?.why).toMatch(/Likely here: binder is 3 % of the flour.*3\.5 % at most/);
  });

  it('does not cut a binder that is not there', () => {
    const items = loaf.plan.items.filter(({ role }) => role !== 'binder');
    const bare = { ...loaf, plan: { ...loaf.plan, items } };
    expect(levers(proposeAdjustments(bare, ['gummy']))).not.toContain('binder');
    expect(proposeAdjustments(bare, ['lumps'])).toEqual([]);
  });

  it('takes the temperature of the centre as evidence', () => {
    const [first] = proposeAdjustments(loaf, ['gummy'], { innerC: 92 });
    expect(first?.text).toContain('98 °C');
    expect(first?.why).toContain('Likely here: the centre was 92 °C');
    const through = proposeAdjustments(loaf, ['gummy'], { innerC: 98 });
    expect(through[0]?.text).not.toContain('98 °C');
  });

  it('blames low gluten only when it is low', () => {
    const low = proposeAdjustments(withDough({ glutenProteinPct: 7 }), ['low-rise']);
    expect(low.find(({ lever }) => lever === 'gluten')).toMatchObject({ shiftPct: 5 });
    expect(low.find(({ lever }) => lever === 'gluten')?.why).toContain('gluten is 7 g');
    expect(levers(proposeAdjustments(loaf, ['low-rise']))).not.toContain('gluten');
  });

  it('does not bring gluten or egg to one who avoids it', () => {
    const avoids = { ...loaf.goals, avoid: ['gluten', 'egg'] as Goals['avoid'] };
    const low = { ...withDough({ glutenProteinPct: 7, digestibleStarchPct: 12 }), goals: avoids };
    const all = proposeAdjustments(low, ['low-rise', 'collapse', 'pale', 'crumbly']);
    expect(levers(all)).not.toContain('gluten');
    expect(levers(all)).not.toContain('egg-white');
    expect(levers(all)).not.toContain('egg');
    expect(all.map(({ text }) => text).join(' ')).not.toMatch(/beaten egg/);
  });

  it('leaves pinned lines and excluded foods alone', () => {
    const salt = loaf.plan.items.find(({ role }) => role === 'salt');
    const goals = { ...loaf.goals, pinned: [salt?.key ?? ''], excludedFoods: ['allulose'] };
    expect(levers(proposeAdjustments({ ...loaf, goals }, ['too-salty', 'pale']))).toEqual([
      'method',
      'method',
    ]);
  });

  it('answers too wet and too dry at once in words, and leaves the water', () => {
    const both = proposeAdjustments(loaf, ['too-wet', 'too-dry']);
    expect(levers(both)).not.toContain('water');
    const words = both.find(({ id }) => id === 'too-wet+too-dry.water');
    expect(words?.why).toMatch(/not a matter of how much water/);
  });

  it('says so when rows pull one lever both ways', () => {
    const excludedSwaps = ['sugar-to-allulose', 'sugar-to-allulose-blend'];
    const goals: Partial<Goals> = { budgetG: 6, way: 'within', excludedSwaps };
    const blend = byTitle('Oatmeal raisin cookies', goals);
    const both = proposeAdjustments(blend, ['not-crisp', 'no-spread']);
    const words = both.filter(({ id }) => id.includes('+'));
    for (const one of words) expect(one.why).toMatch(/one bake cannot tell/);
    const shares = both.filter(({ lever }) => lever === 'erythritol-share');
    expect(shares.length + words.length).toBeGreaterThan(0);
    expect(shares.length * words.length).toBe(0);
  });

  it('comes back under a new id, three times at most', () => {
    const accept = (accepted: Adjustment[]): Adjustment | undefined =>
      proposeAdjustments({ ...loaf, goals: { ...loaf.goals, adjustments: accepted } }, [
        'too-salty',
      ]).find(({ lever }) => lever === 'salt');
    const rounds: Adjustment[] = [];
    for (let next = accept(rounds); next !== undefined; next = accept(rounds)) rounds.push(next);
    expect(rounds.map(({ id }) => id)).toEqual(['too-salty.1', 'too-salty.1.2', 'too-salty.1.3']);
  });

  it('knows what the method says already', () => {
    const cool = { section: null, before: null, change: 'inserted' as const, why: null };
    const said = { ...loaf, steps: [{ ...cool, after: 'Let it cool for 3 hours.' }] };
    const unsaid = { ...loaf, steps: [{ ...cool, after: 'Eat.' }] };
    const texts = (a: Adaptation): string[] => proposeAdjustments(a, ['gummy']).map((p) => p.text);
    expect(texts(said).join()).not.toContain('cool for 3 hours');
    expect(texts(unsaid).join()).toContain('cool for 3 hours');
  });

  it('passes over unknown symptoms and those of other dishes', () => {
    expect(proposeAdjustments(loaf, ['nonsense', 'spread', ''])).toEqual([]);
    expect(likelyCauses(loaf, 'spread')).toEqual([]);
  });
});

describe('how the eater felt', () => {
  it('proposes a smaller serving, and never a dose', () => {
    for (const one of [loaf, cookies, byTitle('Strawberry jam'), byTitle('Mango sorbet')]) {
      const found = proposeAdjustments(one, ['stomach', 'glucose']);
      const texts = found.map(({ text, why }) => `${text} ${why}`).join(' ');
      expect(texts).toMatch(/care team/);
      expect(texts).not.toMatch(/insulin|units?\b|\bmg\b|tablets?|correction/i);
      for (const { factor, shiftPct } of found) {
        expect(factor ?? 0).toBeLessThanOrEqual(1);
        expect(shiftPct).toBeNull();
      }
    }
  });

  it('counts doubtful fibre as carbohydrate: net carbs and that fibre together', () => {
    const foods = foodTable();
    const fibre = loaf.plan.items
      .filter(({ foodId }) => /resistant-wheat-starch|low-carb-wheat/.test(foodId))
      .reduce((sum, i) => sum + (i.grams * (foods.byId(i.foodId)?.per100g.fiberG ?? 0)) / 100, 0);
    const net = loaf.after.perServing.netCarbsG?.best ?? 0;
    const counted = net + fibre / loaf.after.servings;
    const text = proposeAdjustments(loaf, ['glucose'])[0]?.text ?? '';
    const figure = Number(/up to ([\d.]+) g/.exec(text)?.[1]);
    expect(fibre).toBeGreaterThan(10);
    expect(text).toMatch(/package of/);
    expect(Math.abs(figure - counted)).toBeLessThanOrEqual(0.51);
  });
});

describe('any recipe and any symptoms', () => {
  const adaptations = PASTED.map((recipe) => adapted(recipe, { budgetG: 10 }));
  const ids = FAILURES.map(({ id }) => id);

  it('is deterministic, fills its texts, and proposes one change a lever', () => {
    fc.assert(
      fc.property(fc.constantFrom(...adaptations), fc.subarray(ids), (adaptation, symptoms) => {
        const found = proposeAdjustments(adaptation, symptoms);
        expect(proposeAdjustments(adaptation, symptoms)).toEqual(found);
        expect(new Set(found.map(({ id }) => id)).size).toBe(found.length);
        const numeric = found.filter(({ lever }) => lever !== 'method');
        expect(new Set(levers(numeric)).size).toBe(numeric.length);
        for (const { text, why, factor, shiftPct, lever } of found) {
          expect(`${text} ${why}`).not.toMatch(/[{}]|NaN|undefined|Infinity/);
          expect(lever === 'method').toBe(factor === null && shiftPct === null);
        }
      }),
      { numRuns: 400 },
    );
  });
});

describe('an accepted change', () => {
  const foods = foodTable();
  const byRole = (role: Role) => (item: PlannedItem) => (item.role === role ? item.grams : 0);
  /** What each lever moves, by hand: grams of a role or of foods. */
  const MOVES: Partial<Record<Lever, (item: PlannedItem) => number>> = {
    water: ({ foodId, role, grams }) =>
      role === 'liquid' || role === 'egg'
        ? (grams * (foods.byId(foodId)?.per100g.waterG ?? 0)) / 100
        : 0,
    binder: byRole('binder'),
    egg: ({ foodId, grams }) => (/^egg($|-yolk)/.test(foodId) ? grams : 0),
    'egg-white': ({ foodId, grams }) => (/^egg-white/.test(foodId) ? grams : 0),
    fat: byRole('fat'),
    salt: byRole('salt'),
    leavening: byRole('leavening'),
    acid: byRole('acid'),
  };
  const direction = ({ factor, shiftPct }: Adjustment): number =>
    factor === null ? Math.sign(shiftPct ?? 0) : Math.sign(factor - 1);
  const titles = [
    'Overnight kitchen loaf',
    'Flour tortillas',
    'Brown soda bread',
    'Carrot cake',
    'Chocolate chip cookies',
    'Shortcrust pie crust',
  ];

  it.each(titles)('moves what it names, the way it says: %s', (title) => {
    const before = byTitle(title, { budgetG: 10 });
    const proposals = bakeSymptoms(before.plan.family.id).flatMap(({ id }) =>
      proposeAdjustments(before, [id]),
    );
    let moved = 0;
    for (const proposal of proposals) {
      const of = MOVES[proposal.lever];
      if (of === undefined) continue;
      const after = byTitle(title, { budgetG: 10, adjustments: [proposal] });
      const total = (a: Adaptation): number => a.plan.items.reduce((sum, i) => sum + of(i), 0);
      const change = total(after) - total(before);
      expect(change * direction(proposal), proposal.id).toBeGreaterThanOrEqual(-1e-6);
      if (Math.abs(change) > 1e-6) moved += 1;
    }
    expect(moved).toBeGreaterThan(1);
  });
});

describe('water learned from bakes', () => {
  const builtIn = foodTable().byId('low-carb-wheat-flour-blend');
  if (builtIn === null) throw new Error('no blend in the table');
  const own: Food = { ...builtIn, source: { kind: 'user', id: null, note: 'package' } };

  /** A bake in which the own flour makes 70 % of the flour base, and these water corrections stand. */
  function bake(title: string, shifts: readonly number[], flourG = 350): Adaptation {
    const item = loaf.plan.items.find(({ role }) => role === 'structure');
    if (item === undefined) throw new Error('the loaf has no flour');
    const items = [
      { ...item, grams: 500 - flourG, foodId: 'bread-flour' },
      { ...item, grams: flourG, foodId: own.id },
    ];
    const adjustments = shifts.map(
      (shiftPct, at): Adjustment => ({
        id: at === 0 ? 'too-dry.2' : `too-dry.2.${at + 1}`,
        symptom: 'too-dry',
        lever: 'water',
        factor: null,
        shiftPct,
        text: '',
        why: '',
        source: 'test',
      }),
    );
    return {
      ...loaf,
      recipe: { ...loaf.recipe, title },
      goals: { ...loaf.goals, adjustments },
      plan: { ...loaf.plan, items },
    };
  }

  it('moves the absorption by what two corrections asked for', () => {
    // 5 % + 5 % of the flour base, borne by 70 % of it: 0.10 / 0.7 = 0.143 g a gram.
    const learned = learnedWater(own, [bake('Loaf', [5, 5])]);
    expect(learned?.food.function?.absorption?.best).toBeCloseTo(0.95 + 0.14, 2);
    expect(learned?.food.function?.absorption?.high).toBeGreaterThanOrEqual(1.09);
    expect(learned?.why).toMatch(/2 corrections asked for more water/);
    expect(learned?.adjustmentIds).toEqual(['too-dry.2', 'too-dry.2.2']);
  });

  it('takes the mean over recipes, and of one recipe the last version', () => {
    const learned = learnedWater(own, [
      bake('Loaf', [5]),
      bake('Loaf', [5, 5]),
      bake('Rolls', [5]),
    ]);
    // (0.10 + 0.05) / 2 / 0.7 = 0.107
    expect(learned?.food.function?.absorption?.best).toBeCloseTo(0.95 + 0.11, 2);
  });

  it('learns nothing from one correction, from contradictions, or from a pinch of the flour', () => {
    expect(learnedWater(own, [bake('Loaf', [5])])).toBeNull();
    expect(learnedWater(own, [bake('Loaf', [5]), bake('Rolls', [-5])])).toBeNull();
    expect(learnedWater(own, [bake('Loaf', [5, 5], 50)])).toBeNull();
    expect(learnedWater(builtIn, [bake('Loaf', [5, 5])])).toBeNull();
  });
});
