import type { Recipe } from '../../../engine/model.ts';
import { webAddress } from '../../ui/figures/format.ts';

/** Title, author and where the recipe was read. */
export function Credit({ recipe }: { recipe: Recipe }) {
  const address = webAddress(recipe.url);
  return (
    <div class="credit">
      <h2 class="dish" lang={recipe.language ?? undefined}>
        {recipe.title}
      </h2>
      <p class="quiet">
        {recipe.author && <>By {recipe.author}. </>}
        {address ? (
          <>
            Read from{' '}
            <a href={address} rel="noreferrer noopener" target="_blank">
              {new URL(address).host}
            </a>
            .
          </>
        ) : (
          'From pasted text.'
        )}
        {recipe.yield.text && <> The recipe says: {recipe.yield.text}.</>}
      </p>
    </div>
  );
}
