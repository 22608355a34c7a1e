import { readFileSync } from 'node:fs';
import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import { adaptRecipe, DEFAULT_GOALS, type Goals, readPage } from '../../engine/index.ts';
import { adapted, dishesOf, PASTED, type Pasted } from './pasted.ts';

const PAGE = new URL('../pages/demo/hearth-loaf.html', import.meta.url);
const read = readPage(new JSDOM(readFileSync(PAGE, 'utf8')).window.document);

function limitsOf(changes: Partial<Goals>) {
  if (!read.ok || !read.recipes[0]) throw new Error('the hearth loaf page cannot be read');
  return adaptRecipe(read.recipes[0], { ...DEFAULT_GOALS, way: 'within', ...changes }).plan.limits;
}

describe('what would bring a budget nearer', () => {
  it('does not offer less sweetness for a loaf without sugar', () => {
    const codes = limitsOf({ servings: 1 }).map(({ code }) => code);
    expect(codes).toContain('BUDGET_NOT_MET');
    expect(codes).not.toContain('LESS_SWEET');
  });

  it('names the avoided allergen that stands in the way', () => {
    const codes = limitsOf({ avoid: ['gluten'] }).map(({ code }) => code);
    expect(codes).toContain('AVOIDED');
  });
});

const dish = dishesOf('other');

const PAN_FRUIT = dish(
  'Pears from the pan',
  ['1600 g pears', '100 g sesame seeds', '60 g butter', '40 g balsamic vinegar'],
  ['Fry the pears in the butter, strew with sesame and sprinkle with vinegar.'],
);

const said = (recipe: Pasted) =>
  adapted(recipe, { way: 'within' }).plan.limits.map(({ code, text }) => `${code} ${text}`);

describe('what is said of a budget out of reach', () => {
  it('asks for less of what is sweet or starchy, not of seeds and seasoning', () => {
    const stuck = said(PAN_FRUIT).filter((text) => text.startsWith('NO_SWAP'));
    expect(stuck.join()).toMatch(/pear/);
    expect(stuck.join()).not.toMatch(/vinegar|sesame/);
  });

  it('promises no third of a plate', () => {
    expect(said(PAN_FRUIT).join()).not.toMatch(/MORE_SERVINGS/);
  });

  it('names half a plate', () => {
    const less = { ...PAN_FRUIT, lines: ['700 g pears', '60 g butter'] };
    expect(said(less).join()).toMatch(/MORE_SERVINGS Cut into [5-8] servings/);
  });
});

const potatoes = dishesOf('potato-dish')(
  'Fish balls with potatoes',
  ['400 g white fish', '700 g potatoes', '30 g breadcrumbs', '1 egg', '1 tbsp flour', '60 ml oil'],
  [
    'Mix fish, egg, flour and breadcrumbs, shape balls and fry them in the oil.',
    'Boil the potatoes for 20 minutes and serve them with the balls.',
  ],
);

const LEAST = /(?:bring this dish to|would still have) ([\d.]+) g/;

describe('the least of a dish that stays above the budget', () => {
  const unmet = [...PASTED, potatoes].flatMap((recipe) => {
    const { ways } = adapted(recipe, { budgetG: 6, way: 'within' });
    const within = ways.find(({ plan }) => plan.way === 'within');
    const text = within?.plan.limits.find(({ code }) => code === 'BUDGET_NOT_MET')?.text;
    const net = within?.after.perServing.netCarbsG?.best ?? null;
    return text && net !== null ? [{ text, net }] : [];
  });

  it('is called so only where what is shown is about that', () => {
    const told = unmet.filter(({ text }) => text.startsWith('The changes worth making'));
    expect(told.length).toBeGreaterThan(5);
    for (const { text, net } of told) expect(net - Number(LEAST.exec(text)?.[1])).toBeLessThan(1.5);
  });

  it('is told as another dish where the plan stops short of it', () => {
    const told = unmet.filter(({ text }) => text.startsWith('Changed as far as we know how'));
    expect(told.length).toBeGreaterThan(0);
    for (const { text, net } of told)
      expect(net - Number(LEAST.exec(text)?.[1])).toBeGreaterThan(0.5);
  });
});
