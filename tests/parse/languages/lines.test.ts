import { describe, expect, it } from 'vitest';
import da from './da.json' with { type: 'json' };
import de from './de.json' with { type: 'json' };
import es from './es.json' with { type: 'json' };
import fr from './fr.json' with { type: 'json' };
import hu from './hu.json' with { type: 'json' };
import it_ from './it.json' with { type: 'json' };
import ja from './ja.json' with { type: 'json' };
import nb from './nb.json' with { type: 'json' };
import nl from './nl.json' with { type: 'json' };
import pl from './pl.json' with { type: 'json' };
import pt from './pt.json' with { type: 'json' };
import { type Row, reading } from './reading.ts';
import sv from './sv.json' with { type: 'json' };
import zh from './zh.json' with { type: 'json' };

/** Lines in the style of home recipes, read by hand before the engine read them. */
const LINES = { da, de, es, fr, hu, it: it_, ja, nb, nl, pl, pt, sv, zh } as unknown as Record<
  string,
  Row[]
>;

for (const [language, rows] of Object.entries(LINES))
  describe(`lines in ${language} with their foods`, () => {
    it.each(rows)('%s', (...row) => {
      expect(reading(row[0], language)).toEqual(row);
    });
  });
