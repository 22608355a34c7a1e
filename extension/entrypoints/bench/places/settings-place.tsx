/** What each recipe starts with, and how figures are shown. */
import { Settings } from '../../../ui/settings/settings.tsx';
import { say } from '../../../ui/words/say.ts';
import type { PlaceProps } from '../kitchen.ts';

export function SettingsPlace({ kitchen }: PlaceProps) {
  return (
    <section class="place">
      <h1>{say('placeSettings')}</h1>
      <Settings preferences={kitchen.preferences} onChange={kitchen.prefer} />
    </section>
  );
}
