/** A serving as the page has it, while what can be done about it is worked out. */
import type { AsItIs } from '../solver/questions.ts';
import { sayWith } from '../words/say.ts';
import { about, short } from './format.ts';

export function AsItIsCard({ asItIs }: { asItIs: AsItIs }) {
  const { servings, netCarbsG } = asItIs;
  const figure = <b class="verdict-figure">{about(netCarbsG.best)} g</b>;
  return (
    <section class="card as-it-is">
      <p class="verdict-say" role="status">
        {servings === 1
          ? sayWith('asItIsWhole', figure)
          : sayWith('asItIsOneOf', short(servings), figure)}
      </p>
    </section>
  );
}
