import { useState } from 'preact/hooks';
import type { TracedLine } from '../../../engine/index.ts';
import type { RewrittenLine } from '../../../engine/model.ts';
import { gramsRange, matchReason, sourceText, weightReason } from '../figures/source-words.ts';
import { useTrace } from '../figures/trace-context.ts';

/**
 * The traced foods of a row after the rework: those under its own key, and those that replace its
 * food and have no row of their own.
 */
export function rowTraces(
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

function Rests({ side, line }: { side: string; line: TracedLine }) {
  return (
    <li>
      <strong>
        {side}: {line.food.name}, {gramsRange(line.grams)}.
      </strong>{' '}
      Grams: {weightReason(line.weight)}. Food: {matchReason(line.match)}. Figures:{' '}
      {sourceText(line.food)}.
    </li>
  );
}

interface Props {
  line: RewrittenLine;
  rows: readonly RewrittenLine[];
}

function Inside({ line, rows }: Props) {
  const trace = useTrace();
  const before = trace.before.filter(({ key }) => key === line.key);
  const after = rowTraces(trace.after, line.key, rows);
  return (
    <ul class="limits">
      {before.map((one) => (
        <Rests key={`before.${one.key}`} side="Original" line={one} />
      ))}
      {after.map((one) => (
        <Rests key={`after.${one.key}`} side="Reworked" line={one} />
      ))}
      {before.length + after.length === 0 && <li>This line is not counted.</li>}
    </ul>
  );
}

/** What a row's grams and food rest on. */
export function RowSources(props: Props) {
  const [open, setOpen] = useState(false);
  return (
    <details class="row-sources no-print" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        What it rests on<span class="hidden">: {props.line.after ?? props.line.before}</span>
      </summary>
      {open && <Inside {...props} />}
    </details>
  );
}
