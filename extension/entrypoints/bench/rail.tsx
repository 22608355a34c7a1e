/** The rail of places; under 700 px a bar at the bottom, the less used ones behind 'More'. */
import { useRef } from 'preact/hooks';
import { Icon } from '../../ui/controls/icon.tsx';
import { Emblem } from '../../ui/figures/loaf/emblem.tsx';
import { say } from '../../ui/words/say.ts';
import { ICONS, type Place, type RailPlace, WORDS } from './place-names.ts';

const FIRST: readonly RailPlace[] = ['recipe', 'stove', 'buy', 'bakes'];
const SECOND: readonly RailPlace[] = ['cupboard', 'kept', 'settings'];
const BAR: readonly RailPlace[] = ['recipe', 'stove', 'buy', 'kept'];
const MORE: readonly RailPlace[] = ['bakes', 'cupboard', 'settings'];

interface LinkProps {
  place: RailPlace;
  here: Place;
  /** Words for a narrow bar. */
  brief?: boolean;
}

function PlaceLink({ place, here, brief = false }: LinkProps) {
  return (
    <a href={`#${place}`} aria-current={place === here ? 'page' : undefined}>
      <Icon name={ICONS[place]} />
      {say(brief && place === 'stove' ? 'placeStoveBrief' : WORDS[place])}
    </a>
  );
}

function Links({ places, here }: { places: readonly RailPlace[]; here: Place }) {
  return (
    <>
      {places.map((place) => (
        <PlaceLink key={place} place={place} here={here} />
      ))}
    </>
  );
}

function More({ here }: { here: Place }) {
  const menu = useRef<HTMLDetailsElement>(null);
  const close = () => {
    if (menu.current) menu.current.open = false;
  };
  return (
    <details
      class="rail-more"
      ref={menu}
      onClick={(event) => (event.target as Element).closest('a') && close()}
      onKeyDown={({ key }) => key === 'Escape' && close()}
    >
      <summary class={MORE.some((place) => place === here) ? 'here' : ''}>
        <Icon name="more" />
        {say('more')}
      </summary>
      <div class="rail-menu">
        <Links places={MORE} here={here} />
      </div>
    </details>
  );
}

export function Rail({ here }: { here: Place }) {
  return (
    <>
      <nav class="rail" aria-label={say('places')}>
        <p class="brand">
          <Emblem size={30} />
          Crumbshift
        </p>
        <Links places={FIRST} here={here} />
        <div class="rail-second">
          <Links places={SECOND} here={here} />
        </div>
      </nav>
      <nav class="bar" aria-label={say('places')}>
        {BAR.map((place) => (
          <PlaceLink key={place} place={place} here={here} brief />
        ))}
        <More here={here} />
      </nav>
    </>
  );
}
