/** Pasted text without marks: yields and headings of parts are told by their words. */
import { describe, expect, it } from 'vitest';
import type { Recipe } from '../../../engine/model.ts';
import { readPasted } from '../../../engine/read/pasted/pasted-text.ts';

function read(lines: string): Recipe {
  const recipe = readPasted(lines, { url: null, language: null, title: null });
  if (!recipe) throw new Error('nothing read');
  return recipe;
}

const groups = (recipe: Recipe) => recipe.groups.map(({ title, lines }) => [title, lines]);

describe('how much a pasted recipe makes', () => {
  it.each([
    ['Ergibt 16 Stücke', null, 16],
    ['ergibt ca. 24 Stück', null, 24],
    ['Für 4 Personen', 4, null],
    ['Pour 6 personnes', 6, null],
    ['Para 8 personas', 8, null],
    ['Per 5 persone', 5, null],
    ['Voor 2 personen', 2, null],
    ['6 portioner', 6, null],
    ['Makes about 18 scones', null, 18],
    ['Serves 3', 3, null],
  ])('%s', (line, servings, pieces) => {
    const recipe = read(`Plain bake\n${line}\n200 g flour\n3 eggs\n100 g butter\n\nMix. Bake.`);
    expect(recipe.yield.servings?.low ?? null).toBe(servings);
    expect(recipe.yield.pieces?.count ?? null).toBe(pieces);
    expect(groups(recipe)).toEqual([[null, ['200 g flour', '3 eggs', '100 g butter']]]);
  });

  it.each(['12 figs', 'For 200 g of glaze', '1 portion custard powder', 'Para untar, 20 g butter'])(
    '%s is no yield',
    (line) => {
      const recipe = read(`Plain bake\n200 g flour\n${line}\n100 g butter\n\nMix. Bake.`);
      expect(recipe.groups.flatMap((group) => group.lines)).toContain(line);
    },
  );
});

describe('parts of a pasted recipe', () => {
  it.each([
    ['Für den Teig', 'Für die Creme'],
    ['For the base:', 'For the lemon cream:'],
    ['For the base', 'For the lemon cream'],
    ['Pour la pâte', 'Pour la garniture'],
    ['Para la masa', 'Para el relleno'],
    ['Voor het deeg', 'Voor de vulling'],
    ['Per la frolla', 'Per la crema'],
    ['Teig', 'Belag'],
    ['CRUST', 'FILLING'],
    ['Crust', 'Filling'],
  ])('%s, %s', (first, second) => {
    const recipe = read(
      `Plain tart\nServes 8\n${first}\n200 g flour\n100 g butter\n\n${second}\n3 eggs\n90 g sugar\n\nMix well. Bake for 30 minutes.`,
    );
    expect(groups(recipe)).toEqual([
      [first.replace(':', ''), ['200 g flour', '100 g butter']],
      [second.replace(':', ''), ['3 eggs', '90 g sugar']],
    ]);
  });

  it('keeps a line that begins like a heading and has no lines below it', () => {
    const recipe = read(
      'Plain cake\n200 g Mehl\n3 Eier\n100 g Zucker\nFür die Form Butter\n\nRühren. Backen.',
    );
    expect(recipe.groups[0]?.lines).toContain('Für die Form Butter');
  });
});

describe('lines that come again', () => {
  const linesOf = (lines: readonly string[]): string[] =>
    read(
      [
        'Odd cake',
        'Serves 4',
        '',
        'Ingredients',
        ...lines,
        '',
        'Method',
        'Mix well. Bake for 30 minutes.',
      ].join('\n'),
    ).groups.flatMap((group) => group.lines);

  it.each([
    [['1 egg', '2 eggs']],
    [['1 egg', '100 g flour']],
    [['100 g flour', '50 g flour', '10 g flour']],
  ])('are all kept where %j take turns', (turns) => {
    const lines = Array.from({ length: 40 }, (_, at) => turns[at % turns.length] ?? '');
    expect(linesOf(lines)).toEqual(lines);
  });

  it('are one list where the whole of it stands there twice', () => {
    const once = ['100 g flour', '2 eggs', '50 g sugar', '1 tsp salt'];
    expect(linesOf([...once, ...once])).toEqual(once);
  });
});
