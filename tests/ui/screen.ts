/** A page to draw single components on, without a browser. */
// Before there is a window: it puts itself there instead of on the global object, and the store finds none.
import 'fake-indexeddb/auto';
import { JSDOM } from 'jsdom';
import { type ComponentChild, render } from 'preact';
import { act } from 'preact/test-utils';

const { window } = new JSDOM('<!doctype html><html lang="en"><body></body></html>');
Object.assign(globalThis, { document: window.document, window });

export interface Drawn {
  root: HTMLElement;
  /** The field whose label begins with these words. @throws {Error} when there is none. */
  field(label: string): HTMLInputElement;
  /** Types into a field as a user does, all at once. */
  type(label: string, text: string): void;
  draw(child: ComponentChild): void;
  clear(): void;
}

/** Draws a component; `draw` draws it again with other properties. */
export function drawn(child: ComponentChild): Drawn {
  const root = window.document.createElement('main');
  window.document.body.append(root);
  const draw = (next: ComponentChild) => void act(() => render(next, root));
  const field = (label: string): HTMLInputElement => {
    const found = [...root.querySelectorAll('label')].find((one) =>
      one.textContent?.trim().startsWith(label),
    );
    const input = found?.control ?? root.querySelector(`#${found?.htmlFor ?? 'none'}`);
    if (!input) throw new Error(`no field is labelled ${label}`);
    return input as HTMLInputElement;
  };
  draw(child);
  return {
    root,
    draw,
    field,
    type: (label, text) => {
      const input = field(label);
      input.value = text;
      void act(() => void input.dispatchEvent(new window.Event('input', { bubbles: true })));
    },
    clear: () => {
      draw(null);
      root.remove();
    },
  };
}
