/** Where to begin while no recipe is open: paste one, or take one that is kept. */
import { say } from '../words/say.ts';

export const BeginLinks = () => (
  <div class="acts">
    <a class="button first" href="#paste">
      {say('placePaste')}
    </a>
    <a class="button" href="#kept">
      {say('lookInKept')}
    </a>
  </div>
);
