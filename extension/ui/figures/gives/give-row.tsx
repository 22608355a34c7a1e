/** One figure of a serving in true columns: how much now, of what, before, and the likely range. */
import type { ComponentChildren } from 'preact';
import { say } from '../../words/say.ts';

interface Props {
  now: ComponentChildren;
  unit: string;
  name: string;
  /** Said small over a figure: that it is only a lower bound. */
  bound?: string;
  wasBound?: string;
  was: ComponentChildren;
  /** The figure is another one now: what it was is struck out. */
  changed: boolean;
  /** Least and most, where they differ. */
  range?: string;
  /** The figure all others serve. */
  strong?: boolean;
  /** What the figure opens. */
  children?: ComponentChildren;
}

function Bound({ text = '' }: { text?: string | undefined }) {
  return text === '' ? null : <span class="give-bound">{text} </span>;
}

export function GiveRow(props: Props) {
  const { now, unit, name, was, changed, range = '', strong = false, children } = props;
  return (
    <li class={strong ? 'give strong' : 'give'}>
      <span class="give-amount after">
        <Bound text={props.bound} />
        <span class="unbroken">
          {now} {unit}
        </span>
      </span>
      <span class="give-name">{name}</span>
      <span class="before">
        <Bound text={props.wasBound} />
        {changed ? <s>{was}</s> : was}
      </span>
      {range !== '' && (
        <span class="range">
          <span class="hidden">{say('likelyHead')} </span>
          {range}
        </span>
      )}
      {children}
    </li>
  );
}

/** Small words over the columns, first in the list; those who hear the page have them at each figure. */
export function GiveHeads({ ranges = true }: { ranges?: boolean }) {
  return (
    <li class="give-heads" aria-hidden="true">
      <span class="give-amount">{say('loafNow')}</span>
      <span class="before">{say('loafBefore')}</span>
      {ranges && <span class="range">{say('likelyHead')}</span>}
    </li>
  );
}
