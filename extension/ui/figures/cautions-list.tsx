import type { Adaptation } from '../../../engine/model.ts';

/** Allergen changes, cautions and notes. The last line is always there. */
export function Cautions({ adaptation }: { adaptation: Adaptation }) {
  const { allergensAdded, allergensRemoved, cautions, notes, recipe, before, after } = adaptation;
  // What is said of an uncounted line stands beside the totals already.
  const said = new Set([...before.uncounted, ...after.uncounted].map(({ key }) => key));
  const texts = new Set(
    [...cautions, ...notes, ...recipe.notes]
      .filter(({ key }) => key === null || !said.has(key))
      .map(({ text }) => text),
  );
  return (
    <section aria-labelledby="cautions-title">
      <h2 id="cautions-title">Cautions</h2>
      <ul class="cautions">
        {allergensAdded.length > 0 && (
          <li>
            <strong>Now contains {allergensAdded.join(', ')}</strong>, which the original did not.
          </li>
        )}
        {allergensRemoved.length > 0 && (
          <li>No longer contains {allergensRemoved.join(', ')}, going by the recipe as read.</li>
        )}
        {[...texts].map((text) => (
          <li key={text}>{text}</li>
        ))}
        <li>Talk to your care team before you change how much carbohydrate you eat.</li>
      </ul>
    </section>
  );
}
