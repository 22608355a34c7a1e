import { describe, expect, it } from 'vitest';
import type { Amount } from '../../../engine/model.ts';
import { parseLine } from '../../../engine/parse/index.ts';
import { guessLanguage } from '../../../engine/parse/words/guess-language.ts';
import cs from '../lines/cs.json' with { type: 'json' };
import da from '../lines/da.json' with { type: 'json' };
import de from '../lines/de.json' with { type: 'json' };
import el from '../lines/el.json' with { type: 'json' };
import en from '../lines/en.json' with { type: 'json' };
import es from '../lines/es.json' with { type: 'json' };
import fr from '../lines/fr.json' with { type: 'json' };
import it_ from '../lines/it.json' with { type: 'json' };
import nb from '../lines/nb.json' with { type: 'json' };
import nl from '../lines/nl.json' with { type: 'json' };
import pt from '../lines/pt.json' with { type: 'json' };
import ru from '../lines/ru.json' with { type: 'json' };
import sv from '../lines/sv.json' with { type: 'json' };

/** Lines with their reading, checked by hand: [line, amounts, names, the rest]. */
const LINES: Record<string, string[][]> = {
  cs,
  da,
  de,
  el,
  en,
  es,
  fr,
  it: it_,
  nb,
  nl,
  pt,
  ru,
  sv,
};

function amountText(a: Amount): string {
  const quantity = `${Math.round(a.quantity * 1000) / 1000}`;
  const range = a.max === null ? quantity : `${quantity}-${a.max}`;
  const kind = a.kind === 'stated' ? '' : ` ${a.kind}`;
  return `${a.approximate ? '~' : ''}${range}${a.unit ? ` ${a.unit}` : ''}${kind}`;
}

function reading(text: string, language: string): string[] {
  const line = parseLine(text, { language });
  const amounts = line.items.map((item) => item.amounts.map(amountText).join('; '));
  const names = line.items.map((item) =>
    [item.name, ...item.alternatives.map((a) => a.name)].join(' | '),
  );
  const rest = [
    line.items[0]?.size,
    ...line.items.map((item) => item.preparation),
    line.note,
    line.purpose,
  ];
  return [
    text,
    line.kind === 'heading' ? 'heading' : amounts.filter(Boolean).join(' + '),
    names.join(' + ') || line.name,
    rest.filter(Boolean).join('; '),
  ];
}

for (const [language, lines] of Object.entries(LINES))
  describe(`lines in ${language}`, () => {
    it.each(lines.map((row) => [row[0] ?? '', row] as const))('%s', (text, row) => {
      expect(reading(text, language)).toEqual(row);
    });
  });

describe('a line whose language nobody said', () => {
  it.each([
    ['2 EL Olivenöl zum Braten', 'de'],
    ["2 cuillères à soupe d'huile", 'fr'],
    ['3 c à s de farine', 'fr'],
    ['2 cucharadas de aceite', 'es'],
    ['2 cucchiai di olio', 'it'],
    ['2 eetlepels olijfolie', 'nl'],
    ['2 colheres de sopa de azeite', 'pt'],
    ['2 msk olja och salt', 'sv'],
    ['2 tablespoons of olive oil', 'en'],
    ['1 cup crème fraîche', 'en'],
    ['flour', 'en'],
  ])('%s', (text, language) => {
    expect(guessLanguage(text.toLowerCase().split(' '))).toBe(language);
  });
});
