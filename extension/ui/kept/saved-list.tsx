import type { SavedRecipe } from '../../store/records.ts';
import { amount, momentText } from '../figures/format.ts';

interface Props {
  recipes: readonly SavedRecipe[];
  deleted: readonly SavedRecipe[];
  onDelete(saved: SavedRecipe): void;
  onRestore(saved: SavedRecipe): void;
}

function figures({ adaptation }: SavedRecipe): string {
  if (!adaptation) return 'open it to work it out again';
  const from = adaptation.before.perServing.netCarbsG;
  const to = adaptation.after.perServing.netCarbsG;
  const text = (value: typeof from) => (value ? `${amount(value.best)} g` : 'not known');
  const missing = adaptation.after.uncounted.length;
  const open = missing === 0 ? '' : `, ${missing} ${missing === 1 ? 'line' : 'lines'} not counted`;
  return `${text(from)} → ${text(to)} net carbs a serving${open}`;
}

/** Saved recipes, latest first, and the bin. */
export function SavedList({ recipes, deleted, onDelete, onRestore }: Props) {
  return (
    <>
      {recipes.length === 0 && (
        <p>Nothing saved yet. Open a recipe page, press the Crumbshift button, then Save.</p>
      )}
      <ul class="saved">
        {recipes.map((saved) => (
          <li key={saved.id}>
            <a class="kept-title" href={`/bench.html?id=${encodeURIComponent(saved.id)}`}>
              {saved.recipe.title}
            </a>
            <span class="figure">{figures(saved)}</span>
            <span class="quiet">
              {momentText(saved.updatedAt)}
              {saved.name !== '' && `, “${saved.name}”`}
              {saved.worked && ', this one worked'}
            </span>
            <button type="button" onClick={() => onDelete(saved)}>
              Delete<span class="hidden"> {saved.recipe.title}</span>
            </button>
          </li>
        ))}
      </ul>
      {deleted.length > 0 && (
        <details class="bin">
          <summary>Deleted ({deleted.length}), kept for 30 days</summary>
          <ul class="saved">
            {deleted.map((saved) => (
              <li key={saved.id}>
                <span>{saved.recipe.title}</span>
                <button type="button" onClick={() => onRestore(saved)}>
                  Bring back<span class="hidden"> {saved.recipe.title}</span>
                </button>
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
