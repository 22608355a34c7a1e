import { afterEach, describe, expect, it } from 'vitest';
import { foodTable } from '../../../engine/index.ts';
import { allNoted, shelfNote } from '../../../extension/ui/cupboard/shelf-notes.ts';
import { LANGUAGES, speak } from '../../../extension/ui/words/say.ts';

afterEach(() => speak('en'));

describe('notes on specialities', () => {
  const table = foodTable();

  it.each(allNoted())('%s is a food that shops seldom have, told whole in each language', (id) => {
    expect(table.byId(id)).not.toBeNull();
    for (const language of Object.keys(LANGUAGES)) {
      speak(language);
      const note = shelfNote(id);
      for (const words of [note?.is, note?.called, note?.storing]) {
        expect(words?.trim().length).toBeGreaterThan(3);
        expect(words).not.toMatch(/[.;]$/);
      }
    }
  });

  it('are silent on foods that everybody knows', () => {
    expect(shelfNote('butter')).toBeNull();
  });
});
