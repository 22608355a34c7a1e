import fc from 'fast-check';
import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import type { Adaptation } from '../../../engine/model.ts';
import { cardText } from '../../../extension/ui/share/card-text.ts';
import { CARD, cardSvg, wrapped } from '../../../extension/ui/share/picture-card.ts';
import { adaptedPage } from '../adapted.ts';

const rolls = adaptedPage('milk-rolls.html');

/** The card as a strict reader of XML takes it. @throws {Error} when it is not well formed. */
function drawn(svg: string): Document {
  const { document } = new JSDOM(svg, { contentType: 'image/svg+xml' }).window;
  return document;
}

const titled = (title: string): Adaptation => ({ ...rolls, recipe: { ...rolls.recipe, title } });
const words = (svg: string): string[] =>
  [...drawn(svg).querySelectorAll('text')].map(({ textContent }) => textContent ?? '');

describe('a picture card', () => {
  it('says before and after, figures, credit and that these are estimates', () => {
    const { before, after, recipe } = rolls;
    const said = cardText(rolls);
    expect(said.now).toContain(`One of ${after.servings} `);
    expect(said.now).toContain(`${after.perServing.netCarbsG?.best.toFixed(1)} g net carbs`);
    expect(said.was).toBe(
      `As the page has it, one of ${before.servings}: ${before.perServing.netCarbsG?.best.toFixed(1)} g`,
    );
    expect(said.credit).toContain(recipe.author ?? 'nobody');
    const all = words(cardSvg(rolls));
    for (const text of [recipe.title, said.now, said.was, said.credit]) expect(all).toContain(text);
    expect(all.join()).toContain('Not for working out insulin doses');
    for (const { now, was } of said.figures) {
      expect(all).toContain(now);
      expect(all).toContain(was);
    }
  });

  it('is told to those who do not see it', () => {
    const svg = drawn(cardSvg(rolls)).documentElement;
    expect(svg.getAttribute('role')).toBe('img');
    expect(svg.querySelector('desc')?.textContent).toContain(cardText(rolls).now);
  });

  it('names what was not counted', () => {
    const row = { key: '9', text: 'a pinch of moon dust', why: 'not known', grams: null };
    const uncounted = [row] as unknown as Adaptation['after']['uncounted'];
    const lacking = { ...rolls, after: { ...rolls.after, uncounted } };
    expect(words(cardSvg(lacking)).join()).toContain('not counted');
    expect(words(cardSvg(rolls)).join()).not.toContain('not counted');
  });

  it('stays one drawing whatever the title is, and asks for nothing from elsewhere', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary', maxLength: 200 }),
          fc.constantFrom(
            '</text><script>x</script>',
            '"/><image href="https://a.example/b.png"/>',
            ']]>&',
          ),
        ),
        (title) => {
          const svg = cardSvg(titled(title));
          const root = drawn(svg).documentElement;
          expect(root.localName).toBe('svg');
          expect([...root.querySelectorAll('script, image, use, a, style, foreignObject')]).toEqual(
            [],
          );
          const reaching = [...root.querySelectorAll('*')].flatMap(({ attributes }) =>
            [...attributes].filter(
              ({ name, value }) => /href|src|^on/i.test(name) || /url\(/.test(value),
            ),
          );
          expect(reaching).toEqual([]);
        },
      ),
      { numRuns: 60, seed: 3 },
    );
  });

  it('keeps long titles to two lines within the card', () => {
    const long =
      'Overnight rye and caraway loaf with a very long name that goes on and on, for guests'.repeat(
        3,
      );
    const lines = wrapped(long, 48, 2);
    expect(lines).toHaveLength(2);
    expect(lines[1]).toMatch(/…$/);
    for (const line of lines)
      expect(0.54 * 48 * [...line].length).toBeLessThanOrEqual(CARD.wide - 128);
    expect(wrapped('Rye loaf', 48, 2)).toEqual(['Rye loaf']);
    expect(wrapped('x'.repeat(500), 48, 2)).toHaveLength(1);
  });
});
