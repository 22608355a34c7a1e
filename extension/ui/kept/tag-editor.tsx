/** The tags of one kept dish, typed with commas between. */
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import type { ShelfRow } from '../../store/kept/shelf-row.ts';
import { say } from '../words/say.ts';

/** As the store takes them. */
const LONGEST = 40;
const MOST = 30;

/** Tags from typed text: trimmed, each once. */
export const tagsFrom = (typed: string): string[] =>
  [
    ...new Set(
      typed
        .split(',')
        .map((tag) => tag.trim().replace(/\s+/g, ' ').slice(0, LONGEST))
        .filter((tag) => tag !== ''),
    ),
  ].slice(0, MOST);

interface Props {
  row: ShelfRow;
  /** Null when nothing is to change. */
  onDone(tags: string[] | null): void;
}

export function TagEditor({ row, onDone }: Props) {
  const id = useId();
  const [typed, setTyped] = useState(row.tags.join(', '));
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => field.current?.focus(), []);
  return (
    <form
      class="tag-editor"
      onSubmit={(event) => {
        event.preventDefault();
        onDone(tagsFrom(typed));
      }}
    >
      <div class="field">
        <label for={id}>{say('tagsOf', row.title)}</label>
        <input
          id={id}
          ref={field}
          type="text"
          autocomplete="off"
          value={typed}
          onInput={({ currentTarget }) => setTyped(currentTarget.value)}
        />
      </div>
      <button type="submit" class="button first">
        {say('keepTags')}
      </button>
      <button type="button" class="button" onClick={() => onDone(null)}>
        {say('leaveAsItWas')}
      </button>
    </form>
  );
}
