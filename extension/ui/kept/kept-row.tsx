/** One kept dish: title, state and figure, its loaf, and a menu for what else can be done. */
import { useRef, useState } from 'preact/hooks';
import type { ShelfRow } from '../../store/kept/shelf-row.ts';
import { Icon } from '../controls/icon.tsx';
import { short } from '../figures/format.ts';
import { RowLoaf } from '../figures/loaf/row-loaf.tsx';
import { StateMark } from '../figures/loaf/state-mark.tsx';
import { say, sayCount } from '../words/say.ts';
import { TagEditor } from './tag-editor.tsx';

export interface RowActs {
  onDuplicate(row: ShelfRow): void;
  onPutAway(row: ShelfRow): void;
  onTags(row: ShelfRow, tags: string[]): void;
  onWorked(row: ShelfRow, worked: boolean): void;
}

interface Props extends RowActs {
  row: ShelfRow;
  /** Grams at the right end of every loaf in the list. */
  fullG: number;
}

/** Closes when something outside it is pressed, or Escape. */
function Menu({ row, onEdit, ...acts }: RowActs & { row: ShelfRow; onEdit(): void }) {
  const menu = useRef<HTMLDetailsElement>(null);
  const then = (act: () => void) => () => {
    if (menu.current) menu.current.open = false;
    act();
  };
  return (
    <details
      class="row-menu"
      ref={menu}
      onKeyDown={({ key }) => {
        if (key === 'Escape' && menu.current) menu.current.open = false;
      }}
    >
      <summary aria-label={say('moreFor', row.title)}>
        <Icon name="more" />
      </summary>
      <div class="row-menu-list">
        <button
          type="button"
          class="button bare"
          onClick={then(() => acts.onWorked(row, !row.worked))}
        >
          {say(row.worked ? 'workedNot' : 'workedYes')}
        </button>
        <button type="button" class="button bare" onClick={then(onEdit)}>
          {say('changeTags')}
        </button>
        <button type="button" class="button bare" onClick={then(() => acts.onDuplicate(row))}>
          {say('duplicate')}
        </button>
        <button type="button" class="button bare" onClick={then(() => acts.onPutAway(row))}>
          {say('putAway')}
        </button>
      </div>
    </details>
  );
}

function Said({ row }: { row: ShelfRow }) {
  const parts = [
    row.figures ? say('netAServing', short(row.figures.afterG)) : say('openToWorkOut'),
    ...(row.uncounted > 0 ? [sayCount('linesNotCounted', row.uncounted)] : []),
    ...(row.worked ? [say('itWorked')] : []),
    ...(row.name === '' ? [] : [`“${row.name}”`]),
    ...row.tags,
  ];
  return (
    <span class="kept-said">
      {row.state && row.figures && <StateMark state={row.state} plain />}
      <span>{parts.join(', ')}</span>
    </span>
  );
}

export function KeptRow({ row, fullG, ...acts }: Props) {
  const [editing, setEditing] = useState(false);
  return (
    <li class="kept-row">
      <a class="kept-link" href={`/bench.html?id=${encodeURIComponent(row.id)}`}>
        <span class="kept-words">
          <span class="kept-title" lang={row.language ?? undefined}>
            {row.title}
          </span>
          <Said row={row} />
        </span>
        {row.figures && <RowLoaf {...row.figures} fullG={fullG} />}
      </a>
      <Menu row={row} onEdit={() => setEditing(true)} {...acts} />
      {editing && (
        <TagEditor
          row={row}
          onDone={(tags) => {
            setEditing(false);
            if (tags) acts.onTags(row, tags);
          }}
        />
      )}
    </li>
  );
}
