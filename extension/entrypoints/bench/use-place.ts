import { useEffect, useState } from 'preact/hooks';
import { type Place, placeOf } from './place-names.ts';

/** The place that the page's address names; back and forward lead through places. */
export function usePlace(otherwise: Place): Place {
  const [place, setPlace] = useState<Place>(placeOf(location.hash) ?? otherwise);
  useEffect(() => {
    const follow = () => {
      const named = placeOf(location.hash);
      if (named === null) return;
      setPlace(named);
      scrollTo(0, 0);
    };
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);
  return place;
}

/** Goes to a place as pressing its link does. */
export const goTo = (place: Place): void => {
  location.hash = place;
};
