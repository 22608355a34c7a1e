/** What the popup says, read from its page: for the tests of both browsers and for `npm start`. */

export interface PopupWords {
  dish: string;
  /** The state's word: 'Probably fits'. */
  state: string;
  /** What the range adds, '' when it adds nothing. */
  range: string;
  /** 'A roll has about 14.8 g, it was 49.' */
  sentence: string;
  /** One text a line of 'What you do'; empty when there is nothing to change. */
  changes: string[];
  /** How many more are folded, in the popup's words; '' for none. */
  moreChanges: string;
  /** What the user should mind, one text a line. */
  concerns: string[];
  /** What a serving gives: name, now with its unit, before. */
  figures: string[][];
}

/** Runs inside the popup; nothing outside it may be used. @throws {Error} when a part is missing there. */
function read(): PopupWords {
  const text = (part: Element): string => {
    const copy = part.cloneNode(true) as Element;
    // Words for those who hear the page repeat what stands beside them.
    for (const word of copy.querySelectorAll('.hidden, svg')) word.remove();
    return (copy.textContent ?? '').replace(/\s+/g, ' ').trim();
  };
  const one = (selector: string): string => {
    const part = document.querySelector(selector);
    if (!part) throw new Error(`the popup has no ${selector}`);
    return text(part);
  };
  const all = (selector: string): string[] =>
    [...document.querySelectorAll(selector)].map((part) => text(part));
  const parted = (selector: string): string[] =>
    [...document.querySelectorAll(selector)].map((part) =>
      [...part.children].map((piece) => text(piece)).join('  '),
    );
  one('.what-you-do');
  return {
    dish: one('.popup-head .dish'),
    state: one('.verdict-state .state'),
    range: one('.verdict-state .soft'),
    sentence: one('.verdict-say'),
    changes: parted('.what-you-do .do li'),
    moreChanges: all('.what-you-do .more-lines').join(),
    concerns: all('.alert-title, .missing p, .concerns li'),
    figures: [...document.querySelectorAll('.nutrition .give')].map((row) =>
      ['.give-name', '.after', '.before'].map((part) => {
        const piece = row.querySelector(part);
        return piece ? text(piece) : '';
      }),
    ),
  };
}

/** An expression that gives {@link PopupWords} as JSON. Some builds name inner functions by a helper. */
export const POPUP_WORDS = `(() => { const __name = (one) => one; return JSON.stringify((${read})()); })()`;

const padded = ([name = '', now = '', before = '']: string[]): string =>
  `${name.padEnd(28)}${now.padStart(20)}${before.padStart(22)}`.trimEnd();

/** The popup in lines for a terminal. @throws {Error} when it says nothing of what belongs there. */
export function terminalText(words: PopupWords): string {
  const { dish, state, range, sentence, changes, moreChanges, concerns, figures } = words;
  if (!state || !sentence || figures.length < 2) throw new Error('the popup shows no figures');
  const more = moreChanges === '' ? [] : [moreChanges];
  return [
    dish,
    `${state}. ${range}`.trim(),
    sentence,
    '',
    'What you do',
    ...(changes.length > 0 ? [...changes, ...more] : ['nothing']).map((line) => `  ${line}`),
    ...(concerns.length > 0 ? ['', 'What to mind', ...concerns.map((line) => `  ${line}`)] : []),
    '',
    ...figures.map(padded),
  ].join('\n');
}
