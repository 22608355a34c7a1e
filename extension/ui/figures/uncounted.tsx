/** Lines that are not in the totals, always shown beside them. */
import type { Tally } from '../../../engine/model.ts';
import { say } from '../words/say.ts';
import { ToldSentence } from '../words/told-sentence.tsx';

export function Uncounted({ before, after }: { before: Tally; after: Tally }) {
  const lines = new Map([...before.uncounted, ...after.uncounted].map((line) => [line.key, line]));
  if (lines.size === 0) return <p class="soft">{say('everyLineCounted')}</p>;
  return (
    <div class="uncounted">
      <h3>{say('notCountedTitle')}</h3>
      <ul>
        {[...lines.values()].map((line) => (
          <li key={line.key}>
            <q>{line.text}</q> – <ToldSentence text={line.why} />
          </li>
        ))}
      </ul>
    </div>
  );
}
