import type { Tally } from '../../../engine/model.ts';

/** Lines that are not in the totals, always shown beside them. */
export function Uncounted({ before, after }: { before: Tally; after: Tally }) {
  const lines = new Map([...before.uncounted, ...after.uncounted].map((line) => [line.key, line]));
  if (lines.size === 0) return <p class="quiet">Every line is counted.</p>;
  return (
    <div class="uncounted">
      <h3>Not counted</h3>
      <ul>
        {[...lines.values()].map((line) => (
          <li key={line.key}>
            <q>{line.text}</q> – {line.why}
          </li>
        ))}
      </ul>
    </div>
  );
}
