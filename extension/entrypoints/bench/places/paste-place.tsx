/** A recipe from pasted text. */
import { PasteBox } from '../../../ui/controls/paste-box.tsx';
import { say } from '../../../ui/words/say.ts';
import type { PlaceProps } from '../kitchen.ts';
import { fresh } from '../opening.ts';

export function PastePlace({ kitchen }: PlaceProps) {
  return (
    <section class="place">
      <h1>{say('placePaste')}</h1>
      <PasteBox onRecipe={(recipe) => kitchen.show(fresh(recipe, kitchen.preferences))} />
    </section>
  );
}
