/** Allergens to be ticked. */
import { Allergen } from '../../../engine/model.ts';
import { allergenWord } from '../words/allergen-words.ts';

interface Props {
  legend: string;
  chosen: readonly Allergen[];
  onChosen(allergens: Allergen[]): void;
}

export function AllergenBoxes({ legend, chosen, onChosen }: Props) {
  return (
    <fieldset class="boxes">
      <legend>{legend}</legend>
      {Allergen.options.map((allergen) => (
        <label key={allergen} class="tick">
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
          />
          <span>{allergenWord(allergen)}</span>
        </label>
      ))}
    </fieldset>
  );
}
