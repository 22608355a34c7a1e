/** What is shown until there is more to say: the title once it is known, and that something is being done. */
import { Working } from '../../ui/controls/working.tsx';
import { say } from '../../ui/words/say.ts';
import { PopupHead } from './popup-head.tsx';

export function WorkingHead({ title }: { title: string | null }) {
  return (
    <>
      <PopupHead title={title ?? 'Crumbshift'} language={null} />
      <main>
        <Working title={say(title ? 'workingOut' : 'readingPage')} />
      </main>
    </>
  );
}
