/** What is said of a budget out of reach agrees with what is shown. */
import { describe, expect, it } from 'vitest';
import { adapted, dishesOf, PASTED } from './pasted.ts';

const potatoes = dishesOf('potato-dish')(
  'Fish balls with potatoes',
  ['400 g white fish', '700 g potatoes', '30 g breadcrumbs', '1 egg', '1 tbsp flour', '60 ml oil'],
  [
    'Mix fish, egg, flour and breadcrumbs, shape balls and fry them in the oil.',
    'Boil the potatoes for 20 minutes and serve them with the balls.',
  ],
);

const LEAST = /(?:least this dish can reach is|would still have) ([\d.]+) g/;

describe('the least of a dish that stays above the budget', () => {
  const unmet = [...PASTED, potatoes].flatMap((recipe) => {
    const { ways } = adapted(recipe, { budgetG: 6, way: 'within' });
    const within = ways.find(({ plan }) => plan.way === 'within');
    const text = within?.plan.limits.find(({ code }) => code === 'BUDGET_NOT_MET')?.text;
    const net = within?.after.perServing.netCarbsG?.best ?? null;
    return text && net !== null ? [{ text, net }] : [];
  });

  it('is called so only where what is shown is about that', () => {
    const told = unmet.filter(({ text }) => text.startsWith('The least'));
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
