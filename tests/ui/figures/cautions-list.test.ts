import { h } from 'preact';
import { afterEach, describe, expect, it } from 'vitest';
import type { Adaptation, Note } from '../../../engine/model.ts';
import { Cautions } from '../../../extension/ui/figures/cautions-list.tsx';
import { adaptedPage } from '../adapted.ts';
import { type Drawn, drawn } from '../screen.ts';

let screen: Drawn | null = null;
afterEach(() => screen?.clear());

const note = (text: string): Note => ({ code: 'ODD', text, key: null });

const loaf = adaptedPage('hearth-loaf.html');

function shown(change: Partial<Adaptation>) {
  screen = drawn(h(Cautions, { adaptation: { ...loaf, ...change } }));
  const texts = (selector: string) =>
    [...(screen?.root.querySelectorAll(selector) ?? [])].map(({ textContent }) => textContent);
  return { cautions: texts('.cautions li'), notes: texts('.notes li') };
}

describe('what to mind', () => {
  it('is four lines at most, the gravest first, whatever the notes and allergens are', () => {
    const many = Array.from({ length: 9 }, (_, at) => note(`Note ${at}.`));
    const { cautions, notes } = shown({
      notes: many,
      allergensAdded: ['soy', 'milk'],
      allergensRemoved: ['egg'],
    });
    expect(loaf.cautions).toHaveLength(4);
    expect(cautions).toHaveLength(4);
    expect(cautions[0]).toContain('insulin');
    expect(cautions.slice(1)).toEqual(loaf.cautions.slice(1).map(({ text }) => text));
    for (const { text } of many) expect(notes).toContain(text);
    expect(notes[0]).toContain('egg');
  });

  it('has no heading for notes where there are none', () => {
    const { notes } = shown({
      notes: [],
      recipe: { ...loaf.recipe, notes: [] },
      allergensRemoved: [],
    });
    expect(notes).toEqual([]);
    expect(screen?.root.querySelector('b')).toBeNull();
  });
});
