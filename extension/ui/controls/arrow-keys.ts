/** Arrow keys, Home and End within a long list: any row is near for those who go by keyboard. */

const STEPS: Readonly<Record<string, (at: number, last: number) => number>> = {
  ArrowDown: (at, last) => Math.min(at + 1, last),
  ArrowUp: (at) => Math.max(at - 1, 0),
  Home: () => 0,
  End: (_, last) => last,
};

/** A handler for the list; `rows` selects what of each row has the focus. Elsewhere in the list the keys stay what they are. */
export const arrowKeys =
  (rows: string) =>
  (event: KeyboardEvent): void => {
    const list = event.currentTarget;
    const step = STEPS[event.key];
    if (!(list instanceof HTMLElement) || step === undefined) return;
    const all = [...list.querySelectorAll<HTMLElement>(rows)];
    const at = all.indexOf(event.target as HTMLElement);
    if (at < 0) return;
    event.preventDefault();
    all[step(at, all.length - 1)]?.focus();
  };
