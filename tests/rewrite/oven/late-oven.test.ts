import { describe, expect, it } from 'vitest';
import type { RewrittenStep } from '../../../engine/model.ts';
import { methodWords } from '../../../engine/rewrite/languages/method-words.ts';
import { withLateOven } from '../../../engine/rewrite/oven/late-oven.ts';

const LIGHT = /light the oven only when/;

const told = (language: string, ...texts: string[]): string[] => {
  const steps = texts.map((text) => ({
    section: null,
    before: text,
    after: text,
    change: 'changed',
    why: null,
  })) as RewrittenStep[];
  return withLateOven(steps, methodWords(language)).map(({ after }) => after);
};

describe('an oven lit before a dough has rested', () => {
  it('waits, as is said beside the sentence that lights it', () => {
    const [first, ...rest] = told(
      'en',
      'Preheat the oven to 165 °C. Line a sheet.',
      'Make the dough.',
      'Chill the dough for 30-60 minutes.',
      'Bake for 10 minutes.',
    );
    expect(first).toMatch(/165 °C\. The dough rests first, .*nearly over\. Line a sheet\.$/);
    expect(rest.join(' ')).not.toMatch(LIGHT);
  });

  it.each([
    [
      'is lit when the dough is chilled',
      'Make the dough. Chill the dough for 1 hour.',
      'Preheat the oven.',
      'Bake.',
    ],
    [
      'is lit once that is over',
      'Once the dough is chilled, preheat the oven.',
      'Chill the dough for 1 hour.',
      'Bake.',
    ],
    [
      'has something to bake before',
      'Preheat the oven. Bake the base for 10 minutes.',
      'Chill the dough for 1 hour.',
      'Bake.',
    ],
    ['waits ten minutes', 'Preheat the oven.', 'Let the dough stand for 10 minutes.', 'Bake.'],
  ])('says nothing where it %s', (_, ...texts) => {
    expect(told('en', ...texts).join(' ')).not.toMatch(LIGHT);
  });

  it('is told in the language of the page', () => {
    const [first] = told(
      'de',
      'Den Ofen auf 170 °C vorheizen.',
      'Einen Teig kneten.',
      'Den Teig 30-60 Minuten kalt stellen.',
      'Im Ofen 12 Minuten backen.',
    );
    expect(first).toMatch(/den Ofen erst gegen Ende dieser Zeit anheizen/);
  });

  it('leaves a method that nothing has changed', () => {
    const steps = ['Preheat the oven.', 'Chill the dough for 1 hour.', 'Bake.'].map((text) => ({
      section: null,
      before: text,
      after: text,
      change: 'kept',
      why: null,
    })) as RewrittenStep[];
    expect(withLateOven(steps, null)).toEqual(steps);
  });
});
