/** Allergens to be ticked. */
import { Allergen } from '../../../engine/model.ts';
import { Icon } from '../controls/icon.tsx';
import { allergenWord } from '../words/allergen-words.ts';

interface Props {
  legend: string;
  chosen: readonly Allergen[];
  onChosen(allergens: Allergen[]): void;
}

export function AllergenBoxes({ legend, chosen, onChosen }: Props) {
  return (
    <fieldset class="pegs">
      <legend>{legend}</legend>
      {Allergen.options.map((allergen) => (
        <label key={allergen} class="peg">
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
          <Icon name="tick" />
          {allergenWord(allergen)}
        </label>
      ))}
    </fieldset>
  );
}
