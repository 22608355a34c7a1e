import { type Adaptation, ClosenessPart } from '../../engine/model.ts';

const NAMES: Record<ClosenessPart, string> = {
  structure: 'Structure (gluten, egg, binder)',
  water: 'Water',
  sweetness: 'Sweetness',
  fat: 'Fat',
  flavour: 'Flavour and colour',
};

/** How near the dish stays to the original, part by part. */
export function Closeness({ adaptation }: { adaptation: Adaptation }) {
  const { closeness, closenessParts, swaps } = adaptation.plan;
  const parts = ClosenessPart.options.flatMap((part) => {
    const share = closenessParts[part];
    return share === undefined ? [] : [{ part, share }];
  });
  if (swaps.length === 0 || parts.length === 0) return null;
  const percent = (share: number): string => `${Math.round(share * 100)} %`;
  return (
    <section class="closeness" aria-labelledby="closeness-title">
      <h2 id="closeness-title">How near it stays to the original</h2>
      <table class="plain">
        <tbody>
          <tr class="strong">
            <th scope="row">All together</th>
            <td class="figure">{percent(closeness)}</td>
          </tr>
          {parts.map(({ part, share }) => (
            <tr key={part}>
              <th scope="row" class="inner">
                {NAMES[part]}
              </th>
              <td class="figure">{percent(share)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="quiet">
        Our own reckoning from gluten, water, sweetness, fat and flavour; 100 % is the original. It
        does not measure how the dish tastes to you: the bake log does.
      </p>
    </section>
  );
}
