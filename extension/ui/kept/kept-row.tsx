/** One kept dish: title, state and figure, its loaf, and a menu for what else can be done. */
import { useRef, useState } from 'preact/hooks';
import type { ShelfRow } from '../../store/kept/shelf-row.ts';
import { Icon } from '../controls/icon.tsx';
import { short } from '../figures/format.ts';
import { RowLoaf } from '../figures/loaf/row-loaf.tsx';
import { StateMark } from '../figures/loaf/state-mark.tsx';
import { say, sayCount } from '../words/say.ts';
import { RowSlice, type SliceActs } from './row-slice.tsx';
import { TagEditor } from './tag-editor.tsx';

export interface RowActs {
  /** Ids that are chosen, or null while none is being chosen. */
  chosen: ReadonlySet<string> | null;
  onChoose(row: ShelfRow, chosen: boolean): void;
  slices: SliceActs;
  onDuplicate(row: ShelfRow): void;
  onPutAway(row: ShelfRow): void;
  onTags(row: ShelfRow, tags: string[]): void;
  onWorked(row: ShelfRow, worked: boolean): void;
}

interface Props extends RowActs {
  row: ShelfRow;
  /** Small photo, or null. */
  photo: string | null;
  /** Grams at the right end of every loaf in the list. */
  fullG: number;
  /** The first of its budget says what the knife is. */
  labelled: boolean;
}

/** Closes when something outside it is pressed, or Escape. */
interface MenuProps extends RowActs {
  row: ShelfRow;
  onEdit(): void;
  onWeigh(): void;
}

function Menu({ row, onEdit, onWeigh, ...acts }: MenuProps) {
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
        <button type="button" class="button bare" onClick={then(onWeigh)}>
          {say('weighSlice')}
        </button>
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

function Choice({ row, chosen, onChoose }: Pick<Props, 'row' | 'chosen' | 'onChoose'>) {
  if (chosen === null) return null;
  return (
    <label class="tick kept-tick">
      <input
        class="kept-choice"
        type="checkbox"
        checked={chosen.has(row.id)}
        onChange={({ currentTarget }) => onChoose(row, currentTarget.checked)}
      />
      <span class="hidden">{row.title}</span>
    </label>
  );
}

export function KeptRow({ row, fullG, photo, labelled, ...acts }: Props) {
  const [editing, setEditing] = useState(false);
  const [weighing, setWeighing] = useState(false);
  const choosing = acts.chosen !== null;
  return (
    <li class={choosing ? 'kept-row choosing' : 'kept-row'}>
      <Choice row={row} chosen={acts.chosen} onChoose={acts.onChoose} />
      <a
        class={photo ? 'kept-link with-photo' : 'kept-link'}
        href={`/bench.html?id=${encodeURIComponent(row.id)}`}
      >
        {photo && <img class="kept-photo" src={photo} alt="" />}
        <span class="kept-words">
          <span class="kept-title" lang={row.language ?? undefined} dir="auto">
            {row.title}
          </span>
          <Said row={row} />
        </span>
        {row.figures && <RowLoaf {...row.figures} fullG={fullG} labelled={labelled} />}
      </a>
      <Menu row={row} onEdit={() => setEditing(true)} onWeigh={() => setWeighing(true)} {...acts} />
      {weighing && <RowSlice row={row} onDone={() => setWeighing(false)} {...acts.slices} />}
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
