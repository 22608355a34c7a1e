import { describe, expect, it } from 'vitest';
import { FAMILIES, isDough } from '../../../engine/model.ts';
import familyRows from '../../../engine/plan/data/families.json' with { type: 'json' };
import { recogniseFamily } from '../../../engine/plan/index.ts';
import { foods, ingredientsOf, type Sample } from '../build.ts';
import { SAMPLES } from '../samples.ts';

const familyOf = (sample: Sample, title = sample.title) =>
  recogniseFamily(ingredientsOf(sample), { title, steps: sample.steps ?? [] }, foods);

describe('dish family', () => {
  it.each(SAMPLES.map((sample) => [sample.title, sample] as const))('%s', (_, sample) => {
    const found = familyOf(sample);
    expect(found.id).toBe(sample.family);
    expect(found.confidence).toBeGreaterThanOrEqual(0.4);
    expect(found.why).not.toBe('');
  });

  it('has at least two samples for every family', () => {
    for (const family of FAMILIES) {
      expect(SAMPLES.filter((s) => s.family === family).length, family).toBeGreaterThanOrEqual(2);
    }
  });

  it('tells bread, cake, brownie, crust and pasta from ratios without any title', () => {
    const blind = [
      'Hearth loaf',
      'Sandwich bread',
      'Yellow layer cake',
      'Cocoa brownies',
      'Single pie crust',
      'Egg tagliatelle',
      'Sugar cookies',
      'Herbed pilaf',
      'Mashed potatoes',
    ];
    for (const title of blind) {
      const sample = SAMPLES.find((s) => s.title === title);
      if (!sample) throw new Error(title);
      expect(familyOf(sample, '').id, title).toBe(sample.family);
    }
  });

  it('does not believe a title that the ratios contradict', () => {
    const roast: Sample = {
      title: 'Biscuit pasta',
      servings: 4,
      family: 'other',
      parts: [
        ['black-beans-cooked', 500],
        ['onion', 100],
      ],
    };
    expect(familyOf(roast).id).toBe('other');
  });

  it('is not misled by words inside words', () => {
    const parts: Sample['parts'] = [
      ['all-purpose-flour', 120],
      ['egg', 100],
      ['vegetable-oil', 60],
      ['cauliflower', 900],
      ['salt', 6],
    ];
    for (const title of [
      'Crispy cauliflower',
      'Rotisserie cauliflower',
      'Cauliflower with tartar sauce',
    ]) {
      const found = familyOf({
        title,
        servings: 4,
        family: 'breaded-food',
        parts,
        steps: ['Dredge and fry.'],
      });
      expect(['breaded-food', 'thickened-sauce', 'other'], title).toContain(found.id);
    }
  });

  it('takes a dredge for no dough, however much of it there is', () => {
    const steaks: Sample = {
      title: 'Country steaks',
      servings: 4,
      family: 'breaded-food',
      parts: [
        ['beef-round', 480],
        ['all-purpose-flour', 190],
        ['buttermilk', 130],
        ['egg', 50],
        ['baking-powder', 4],
      ],
      steps: [
        'Dredge the steaks in the flour, then the buttermilk, then the flour again, and fry.',
      ],
    };
    expect(familyOf(steaks).id).toBe('breaded-food');
    const crumbs: Sample = {
      title: 'For the crumb',
      servings: 4,
      family: 'breaded-food',
      parts: [
        ['cornmeal', 110],
        ['parmesan', 70],
        ['salt', 3],
      ],
      steps: ['Coat the fillets with the crumb.'],
    };
    expect(isDough(familyOf(crumbs).id)).toBe(false);
  });

  it('leaves a dough with meat in it a dough', () => {
    const turnovers: Sample = {
      title: 'Beef turnovers',
      servings: 6,
      family: 'pie-crust',
      parts: [
        ['beef-round', 400],
        ['all-purpose-flour', 300],
        ['butter', 150],
        ['water', 80],
      ],
      steps: [
        'Work flour, butter and water into a dough.',
        'Coat the beef with pepper, fold it into rounds of the dough and bake.',
      ],
    };
    expect(isDough(familyOf(turnovers).id)).toBe(true);
  });

  it('answers for an empty recipe', () => {
    expect(recogniseFamily([], { title: '', steps: [] }, foods).id).toBe('other');
  });
});

it('calls the same families doughs as the table of limits', () => {
  const rows = Object.entries(familyRows).map(([id, { kind }]) => [id, kind]);
  expect(rows.length).toBe(FAMILIES.length);
  for (const [id, kind] of rows) expect(kind === 'dough', id).toBe(isDough(id ?? ''));
});
