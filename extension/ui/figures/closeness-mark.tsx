import { type Adaptation, ClosenessPart } from '../../../engine/model.ts';

/** The parts of closeness in the words of the screen. */
export const PART_NAMES: Record<ClosenessPart, string> = {
  structure: 'Structure (gluten, egg, binder)',
  water: 'Water',
  sweetness: 'Sweetness',
  fat: 'Fat',
  flavour: 'Flavour and colour',
};

/** What the changes cost, part by part: how far each moves from the original. */
export function Closeness({ adaptation }: { adaptation: Adaptation }) {
  const { closenessParts, swaps } = adaptation.plan;
  const parts = ClosenessPart.options.flatMap((part) => {
    const share = closenessParts[part];
    return share === undefined ? [] : [{ part, away: Math.round((1 - share) * 100) }];
  });
  if (swaps.length === 0 || parts.length === 0) return null;
  return (
    <section class="closeness" aria-labelledby="closeness-title">
      <h2 id="closeness-title">How far it moves from the original</h2>
      <table class="plain">
        <tbody>
          {parts.map(({ part, away }) => (
            <tr key={part}>
              <th scope="row">{PART_NAMES[part]}</th>
              <td class="figure">{away === 0 ? 'not at all' : `${away} %`}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="quiet">
        Our own reckoning, which the plan keeps as small as the budget lets it. It does not say how
        the dish tastes to you: the bake log does.
      </p>
    </section>
  );
}
