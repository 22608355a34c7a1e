/** The place that is open. Places that need a recipe say so when there is none. */

import type { ComponentType } from 'preact';
import { BeginLinks } from '../../ui/controls/begin-links.tsx';
import { Message } from '../../ui/controls/message.tsx';
import { Working } from '../../ui/controls/working.tsx';
import { FirstRun } from '../../ui/settings/first-run.tsx';
import { say } from '../../ui/words/say.ts';
import type { Kitchen, OpenRecipe, PlaceProps } from './kitchen.ts';
import { type Place, START } from './place-names.ts';
import { FiguresMadePlace, PrivacyPlace } from './places/about-places.tsx';
import { BakesPlace } from './places/bakes-place.tsx';
import { BuyPlace } from './places/buy-place.tsx';
import { CupboardPlace } from './places/cupboard-place.tsx';
import { KeptPlace } from './places/kept-place.tsx';
import { PastePlace } from './places/paste-place.tsx';
import { RecipePlace } from './places/recipe-place.tsx';
import { SettingsPlace } from './places/settings-place.tsx';
import { StovePlace } from './places/stove-place.tsx';

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
