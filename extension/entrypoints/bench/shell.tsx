/** Rail, skip link, and the place that is open. */
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { Foot } from '../../ui/about/foot.tsx';
import { LoafDefs } from '../../ui/figures/loaf/loaf-defs.tsx';
import { say } from '../../ui/words/say.ts';
import { type Place, WORDS } from './place-names.ts';
import { Rail } from './rail.tsx';

interface Props {
  here: Place;
  /** Title of the recipe on the bench, for the tab. */
  title: string | null;
  children: ComponentChildren;
}

export function Shell({ here, title, children }: Props) {
  const main = useRef<HTMLElement>(null);
  const last = useRef(here);
  useEffect(() => {
    const part = here === 'recipe' && title ? title : say(WORDS[here]);
    document.title = `${part} – Crumbshift`;
    // Another place is another page to those who hear it: its start has the focus.
    if (last.current !== here) main.current?.focus({ preventScroll: true });
    last.current = here;
  }, [here, title]);
  return (
    <div class={`shell shell-${here}`}>
      <LoafDefs />
      <button type="button" class="skip" onClick={() => main.current?.focus()}>
        {say('skip')}
      </button>
      <Rail here={here} />
      <main ref={main} tabIndex={-1}>
        {children}
        <Foot />
      </main>
    </div>
  );
}
