/** Where a row's grams, food and figures come from. */
import { useState } from 'preact/hooks';
import type { TracedLine } from '../../../../engine/index.ts';
import type { RewrittenLine } from '../../../../engine/model.ts';
import {
  gramsRange,
  matchReason,
  sourceText,
  weightReason,
} from '../../figures/sources/source-words.ts';
import { useTrace } from '../../figures/sources/trace-context.ts';
import { foodWord } from '../../words/food-words.ts';
import { say } from '../../words/say.ts';

/**
 * The traced foods of a row after the rework: those under its own key, and those that replace its
 * food and have no row of their own.
 */
function rowTraces(
  traces: readonly TracedLine[],
  key: string,
  rows: readonly Pick<RewrittenLine, 'key'>[],
): TracedLine[] {
  const own = new Set(rows.map((row) => row.key));
  return traces.filter(
    (trace) =>
      trace.key === key ||
      (!own.has(trace.key) && trace.key.split('>')[0] === key && !key.includes('>')),
  );
}

function Source({ side, line }: { side: string; line: TracedLine }) {
  return (
    <li>
      <strong>
        {side}: {foodWord(line.food.id, line.food.name)}, {gramsRange(line.grams)}.
      </strong>{' '}
      {say('traceGrams', weightReason(line.weight))}{' '}
      {say('traceFood', matchReason(line.match), sourceText(line.food))}
    </li>
  );
}

interface Props {
  line: RewrittenLine;
  rows: readonly RewrittenLine[];
}

function Inside({ line, rows }: Props) {
  const trace = useTrace(true);
  if (!trace) return null;
  const before = trace.before.filter(({ key }) => key === line.key);
  const after = rowTraces(trace.after, line.key, rows);
  return (
    <ul class="notes">
      {before.map((one) => (
        <Source key={`before.${one.key}`} side={say('loafBefore')} line={one} />
      ))}
      {after.map((one) => (
        <Source key={`after.${one.key}`} side={say('loafNow')} line={one} />
      ))}
      {before.length + after.length === 0 && <li>{say('lineNotCounted')}</li>}
    </ul>
  );
}

export function RowSources(props: Props) {
  const [open, setOpen] = useState(false);
  return (
    <details
      class="plain-fold row-sources"
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
    >
      <summary>{say('whereFromLong')}</summary>
      {open && <Inside {...props} />}
    </details>
  );
}
