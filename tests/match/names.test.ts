import { describe, expect, test } from 'vitest';
import { foodTable } from '../../engine/foods/index.ts';
import de from '../../engine/match/data/names/de.json' with { type: 'json' };
import es from '../../engine/match/data/names/es.json' with { type: 'json' };
import fr from '../../engine/match/data/names/fr.json' with { type: 'json' };
import it from '../../engine/match/data/names/it.json' with { type: 'json' };
import nl from '../../engine/match/data/names/nl.json' with { type: 'json' };
import pt from '../../engine/match/data/names/pt.json' with { type: 'json' };
import sv from '../../engine/match/data/names/sv.json' with { type: 'json' };
import { matchItem } from '../../engine/match/index.ts';
import { parseLine } from '../../engine/parse/index.ts';

const foods = foodTable();

const match = (name: string, language: string) => {
  const line = parseLine('100 g x');
  const [item] = line.items;
  return item ? matchItem({ ...item, name }, line, { foods, language }) : null;
};

describe('names in other languages', () => {
  test.each([
    ['de', 'Mehl', 'all-purpose-flour'],
    ['de-AT', 'Topfen', 'quark'],
    ['de', 'Äpfel', 'apple'],
    ['de', 'weiche Butter', 'butter-unsalted'],
    ['fr', 'huile d’olive', 'olive-oil'],
    ['fr', "gousses d'ail", 'garlic'],
    ['fr', 'farine de blé', 'all-purpose-flour'],
    ['es', 'azúcar moreno', 'brown-sugar'],
    ['it', "olio extravergine d'oliva", 'olive-oil'],
    ['nl', 'eieren', 'egg'],
    ['pt', 'açúcar', 'sugar'],
    ['sv', 'vetemjöl', 'all-purpose-flour'],
    ['da', 'sukker', 'sugar'],
    ['nb', 'smør', 'butter'],
  ])('%s: %s -> %s', (language, name, id) => {
    expect(match(name, language)?.foodId).toBe(id);
    expect(match(name, language)?.confidence).toBeGreaterThan(0.9);
  });

  test('a word of the name is taken with less confidence', () => {
    const found = match('Urgroßmutters Weizenmehl', 'de');
    expect(found?.foodId).toBe('all-purpose-flour');
    expect(found?.confidence).toBeLessThan(0.7);
  });

  test('an English name still counts, a foreign word is not bent into an English one', () => {
    expect(match('Cheddar', 'de')?.foodId).toBe('cheddar');
    expect(match('Quatschkram', 'de')).toBeNull();
  });

  test('every listed food is in the table', () => {
    const ids = [de, es, fr, it, nl, pt, sv].flatMap((names) => Object.keys(names));
    expect(ids.filter((id) => foods.byId(id) === null)).toEqual([]);
  });
});
