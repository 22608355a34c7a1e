/** A heading that opens what lies under it; its content is made when it is first opened. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { Icon } from './icon.tsx';

interface Props {
  title: string;
  /** A word on what is inside, seen while it is closed. */
  aside?: string;
  /** Something grave is inside: its word, beside the sign for it. */
  grave?: string;
  /** Open at first. */
  open?: boolean;
  /** Name for addresses and tests. */
  name?: string;
  children(): ComponentChildren;
}

export function Fold({ title, aside, grave = '', open = false, name, children }: Props) {
  const [seen, setSeen] = useState(open);
  // From then on it is the user's to open and close.
  const [atFirst] = useState(open);
  return (
    <details
      class="fold"
      data-fold={name}
      open={atFirst}
      onToggle={({ currentTarget }) => currentTarget.open && setSeen(true)}
    >
      <summary>
        <Icon name="right" />
        <span class="fold-title">{title}</span>
        {grave !== '' && (
          <span class="fold-grave">
            <Icon name="warning" />
            {grave}
          </span>
        )}
        {aside && <span class="fold-aside">{aside}</span>}
      </summary>
      <div class="fold-inside">{seen && children()}</div>
    </details>
  );
}
