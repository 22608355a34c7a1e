/** One figure of a serving as a line of a recipe: how much, of what, and what it was, struck out. */
import type { ComponentChildren } from 'preact';

interface Props {
  now: ComponentChildren;
  unit: string;
  name: string;
  /** Stands after the name in the place of what it was. */
  was: ComponentChildren;
  /** Least and most, where they differ. */
  range?: string;
  /** The figure all others serve. */
  strong?: boolean;
  /** What the figure opens. */
  children?: ComponentChildren;
}

export function GiveRow({ now, unit, name, was, range = '', strong = false, children }: Props) {
  return (
    <li class={strong ? 'give strong' : 'give'}>
      <span class="give-amount after">
        {now} {unit}
      </span>
      <span class="give-said">
        <span class="give-name">{name}</span> <span class="before">{was}</span>{' '}
        {range !== '' && <span class="range">{range}</span>}
      </span>
      {children}
    </li>
  );
}
