import { Allergen } from '../../../engine/model.ts';

interface Props {
  legend: string;
  chosen: readonly Allergen[];
  onChosen(allergens: Allergen[]): void;
}

/** Allergens no addition may contain. */
export function AllergenBoxes({ legend, chosen, onChosen }: Props) {
  return (
    <fieldset class="boxes">
      <legend>{legend}</legend>
      {Allergen.options.map((allergen) => (
        <label key={allergen}>
          <input
            type="checkbox"
            checked={chosen.includes(allergen)}
            onChange={(event) =>
              onChosen(
                event.currentTarget.checked
                  ? [...chosen, allergen]
                  : chosen.filter((one) => one !== allergen),
              )
            }
          />{' '}
          {allergen}
        </label>
      ))}
    </fieldset>
  );
}
