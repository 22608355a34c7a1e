/** The place that is open. Places that need a recipe say so when there is none. */

import type { ComponentType } from 'preact';
import { BeginLinks } from '../../ui/controls/begin-links.tsx';
import { later } from '../../ui/controls/later.tsx';
import { Message } from '../../ui/controls/message.tsx';
import { Working } from '../../ui/controls/working.tsx';
import { FirstRun } from '../../ui/settings/first-run.tsx';
import { say } from '../../ui/words/say.ts';
import type { Kitchen, OpenRecipe, PlaceProps } from './kitchen.ts';
import { type Place, START } from './place-names.ts';
import { KeptPlace } from './places/kept-place.tsx';

// Kept is there at once. What the others need is large, and read in with the first of them.
const RecipePlace = later(async () => (await import('./places/recipe-place.tsx')).RecipePlace);
const StovePlace = later(async () => (await import('./places/stove-place.tsx')).StovePlace);
const BuyPlace = later(async () => (await import('./places/buy-place.tsx')).BuyPlace);
const BakesPlace = later(async () => (await import('./places/bakes-place.tsx')).BakesPlace);
const CupboardPlace = later(
  async () => (await import('./places/cupboard-place.tsx')).CupboardPlace,
);
const SettingsPlace = later(
  async () => (await import('./places/settings-place.tsx')).SettingsPlace,
);
const PastePlace = later(async () => (await import('./places/paste-place.tsx')).PastePlace);
const FiguresMadePlace = later<PlaceProps>(
  async () => (await import('./places/about-places.tsx')).FiguresMadePlace,
);
const PrivacyPlace = later<PlaceProps>(
  async () => (await import('./places/about-places.tsx')).PrivacyPlace,
);

type OfRecipe = ComponentType<{ kitchen: Kitchen; open: OpenRecipe }>;

/** Places of the recipe on the bench. */
const NEED_RECIPE: Partial<Record<Place, OfRecipe>> = { recipe: RecipePlace, stove: StovePlace };

const OTHERS: Partial<Record<Place, ComponentType<PlaceProps>>> = {
  buy: BuyPlace,
  bakes: BakesPlace,
  cupboard: CupboardPlace,
  kept: KeptPlace,
  settings: SettingsPlace,
  paste: PastePlace,
  'figures-made': FiguresMadePlace,
  privacy: PrivacyPlace,
};

function NoRecipe() {
  return (
    <Message title={say('noRecipeOpen')} board>
      <p>{say('noRecipeOpenHow')}</p>
      <BeginLinks />
    </Message>
  );
}

interface Props extends PlaceProps {
  here: Place;
  /** Of the recipe on the bench. */
  state: 'none' | 'working' | 'failed' | 'open';
}

/** The first questions belong to the start: no recipe is open and nothing else has been asked for. */
function Welcome({ here, kitchen, state }: Props) {
  const { preferences, prefer } = kitchen;
  if (preferences.welcomed || here !== START || state !== 'none') return null;
  return (
    <FirstRun
      preferences={preferences}
      onChange={prefer}
      onDone={() => prefer({ welcomed: true })}
    />
  );
}

export function PlaceView(props: Props) {
  return (
    <>
      <Welcome {...props} />
      <OpenPlace {...props} />
    </>
  );
}

/** Places that tell of the recipe on the bench, once there is an answer. */
const OF_ANSWER: readonly Place[] = ['buy', 'bakes'];

function OpenPlace({ here, kitchen, open, state }: Props) {
  if (state === 'working' && OF_ANSWER.includes(here)) return <Working title={say('workingOut')} />;
  const Other = OTHERS[here];
  if (Other) return <Other kitchen={kitchen} open={open} />;
  const Recipe = NEED_RECIPE[here];
  if (Recipe && open) return <Recipe kitchen={kitchen} open={open} />;
  if (state === 'working') return <Working title={say('workingOut')} />;
  if (state === 'failed') {
    return (
      <Message title={say('couldNotWorkOut')} alert>
        <p>{say('pasteInstead')}</p>
        <a class="button first" href="#paste">
          {say('placePaste')}
        </a>
      </Message>
    );
  }
  return <NoRecipe />;
}
