import { h } from 'preact';
import { afterEach, describe, expect, it } from 'vitest';
import type { Adjustment } from '../../../engine/model.ts';
import { Proposals } from '../../../extension/ui/bakes/proposals.tsx';
import { Cautions, cautionTexts } from '../../../extension/ui/figures/cautions-list.tsx';
import { ReasonWords } from '../../../extension/ui/recipe/lines/reason-words.tsx';
import { engineLang } from '../../../extension/ui/words/engine-language.ts';
import { engineWords, learnEngineWords } from '../../../extension/ui/words/engine-words.ts';
import { say, speak } from '../../../extension/ui/words/say.ts';
import { adaptedPage } from '../adapted.ts';
import { type Drawn, drawn } from '../screen.ts';

let screen: Drawn | null = null;
function show(child: Parameters<typeof drawn>[0]): HTMLElement {
  screen = drawn(child);
  return screen.root;
}
afterEach(() => {
  screen?.clear();
  speak('en');
});

/** Text of every element that says it is English. */
const english = (root: HTMLElement): (string | null)[] =>
  [...root.querySelectorAll('[lang="en"]')].map((one) => one.textContent);

describe('the words of other languages', () => {
  it('are read in for a screen in one of them, and let alone on an English one', async () => {
    await learnEngineWords();
    expect(engineWords()).toBeNull();
    speak('de');
    await learnEngineWords();
    expect(engineWords()?.shownName('de', 'water')).toBe('Wasser');
    speak('en');
    expect(engineWords()).toBeNull();
  });
});

describe('sentences of the engine', () => {
  it.each([
    ['de-AT', 'en'],
    ['de', 'en'],
    ['en-GB', undefined],
    ['en', undefined],
  ])('on a screen in %s have lang %s', (tag, lang) => {
    speak(tag);
    expect(engineLang()).toBe(lang);
  });

  it('are marked among the notes; cautions are said in the words of the screen', async () => {
    const page = adaptedPage('lemon-cake.html');
    const unheard = { code: 'UNHEARD', text: 'A sentence in no other language yet.', key: null };
    const adaptation = { ...page, notes: [...page.notes, unheard] };
    speak('de');
    await learnEngineWords();
    const told = cautionTexts(adaptation);
    const of = (wanted: boolean): string[] =>
      told.filter(({ byEngine }) => byEngine === wanted).map(({ text }) => text);
    expect(of(true)).toEqual([unheard.text]);
    const root = show(h(Cautions, { adaptation }));
    expect(english(root)).toEqual(of(true));
    expect(english(root)).not.toContain(say('careTeam'));
    expect(of(false)).toContainEqual(expect.stringContaining('weniger Netto-Kohlenhydrate'));
    for (const text of of(false)) expect(root.textContent).toContain(text);
  });

  it('are marked in reasons that are told in both languages', () => {
    speak('de');
    const reasons = [
      { text: 'Zutat nicht gefunden.', byEngine: false },
      { text: 'A cup is taken as 240 ml.', byEngine: true },
    ];
    const root = show(h(ReasonWords, { reasons }));
    expect(english(root).map((text) => text?.trim())).toEqual(['A cup is taken as 240 ml.']);
    expect(root.textContent).toBe('Zutat nicht gefunden. A cup is taken as 240 ml.');
  });

  it('are marked in proposals, and on an English screen nothing is', () => {
    const one = { id: 'a', text: 'Take 20 g more water.', why: 'It was dry.', source: 'none' };
    const props = {
      proposals: [one as Adjustment],
      accepted: [],
      onAccept: () => {},
      onWithdraw: () => {},
    };
    speak('de');
    expect(english(show(h(Proposals, props)))).toEqual(expect.arrayContaining([one.text, one.why]));
    screen?.clear();
    speak('en');
    expect(english(show(h(Proposals, props)))).toEqual([]);
  });
});
