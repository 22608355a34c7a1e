import { describe, expect, it } from 'vitest';
import { DEFAULT_GOALS, tallyRecipe } from '../../../engine/index.ts';
import type { Note } from '../../../engine/model.ts';
import { readText } from '../../../engine/read/index.ts';

function notesOf(title: string, serves: string, servings: number | null = null): Note[] {
  const text = [title, '', serves, '', 'Ingredients', '- 600 g flour', '- 900 g potatoes'];
  const found = readText([...text, '- 500 g curd cheese', '', 'Method', '1. Cook it.'].join('\n'));
  if (!found.ok || !found.recipes[0]) throw new Error('the sample must be readable');
  return tallyRecipe(found.recipes[0], { ...DEFAULT_GOALS, servings }).notes;
}

const saysPiece = (notes: readonly Note[]): boolean =>
  notes.some(({ code }) => code === 'SERVING_IS_PIECE');

describe('servings that are pieces', () => {
  it('are called pieces, with the weight of one and what several come to', () => {
    const note = notesOf('Potato Dumplings', 'Serves 40').find(
      ({ code }) => code === 'SERVING_IS_PIECE',
    );
    expect(note?.text).toMatch(/one piece, about 50 g before cooking\. Six pieces have six times/);
  });

  it('are seen in dishes that swell in the pot', () => {
    expect(saysPiece(notesOf('Ravioli of Fresh Pasta', 'Serves 36'))).toBe(true);
  });

  it.each([
    'Kartoffelknödel',
    'Croquetas de la abuela',
    'Вареники с творогом',
    '焼き餃子',
    'Bitterballen',
  ])('are seen in titles of other languages: %s', (title) => {
    expect(saysPiece(notesOf(title, 'Serves 40'))).toBe(true);
  });

  it.each(['Knödelsuppe', 'Polpette-Sauce', 'Kartoffelsalat', 'Κεφτές'])(
    'but not in %s',
    (title) => {
      expect(saysPiece(notesOf(title, 'Serves 40'))).toBe(false);
    },
  );

  it('are not seen where a serving weighs as much as a plate', () => {
    expect(saysPiece(notesOf('Potato Dumplings', 'Serves 6'))).toBe(false);
  });

  it('are not seen in other dishes, nor in what is served beside such pieces', () => {
    expect(saysPiece(notesOf('Potato Bread', 'Serves 40'))).toBe(false);
    expect(saysPiece(notesOf('Sauce for Dumplings', 'Serves 40'))).toBe(false);
  });

  it('are not spoken of once the user has set the servings', () => {
    expect(saysPiece(notesOf('Potato Dumplings', 'Serves 40', 40))).toBe(false);
  });
});
