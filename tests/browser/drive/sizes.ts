/**
 * Measures of a page, run inside it: text that is too small to read and targets too small to hit. One
 * line a fault; nothing outside these functions may be used in them.
 */

/** Text under 14 px that can be seen. */
export function smallText(): string[] {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const faults = new Set<string>();
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const parent = node.parentElement;
    const text = node.textContent?.trim() ?? '';
    if (!parent || text === '' || !parent.checkVisibility({ checkOpacity: false })) continue;
    if (parent.closest('.hidden, script, style')) continue;
    const size = Number.parseFloat(getComputedStyle(parent).fontSize);
    if (size < 13.99) faults.add(`${size} px: ${text.slice(0, 60)}`);
  }
  return [...faults];
}

/**
 * What can be pressed and is under 44 px in either direction. A tick or a typed figure counts with the
 * label that is pressed for it; a link or a figure inside a sentence may be as high as its line (WCAG
 * 2.2, 2.5.8, the inline exception).
 */
export function smallTargets(): string[] {
  const all = 'a[href], button, input, select, textarea, summary';
  const inSentence = (one: Element): boolean =>
    one.matches('p a, p .figure-button, p .why-button, .stepper-figure input');
  return [...document.querySelectorAll(all)].flatMap((one) => {
    if (!one.checkVisibility() || one.closest('.hidden, .skip') || inSentence(one)) return [];
    const box = (one.closest('label') ?? one).getBoundingClientRect();
    if (box.width === 0 || (box.width >= 43.5 && box.height >= 43.5)) return [];
    return [`${Math.round(box.width)} x ${Math.round(box.height)}: ${one.outerHTML.slice(0, 120)}`];
  });
}
