import { describe, expect, it } from 'vitest';
import de from './de.json' with { type: 'json' };
import fr from './fr.json' with { type: 'json' };
import { type Row, reading } from './reading.ts';

/** Lines in the style of home recipes, read by hand before the engine read them. */
const LINES = { de, fr } as unknown as Record<string, Row[]>;

for (const [language, rows] of Object.entries(LINES))
  describe(`lines in ${language} with their foods`, () => {
    it.each(rows)('%s', (...row) => {
      expect(reading(row[0], language)).toEqual(row);
    });
  });
