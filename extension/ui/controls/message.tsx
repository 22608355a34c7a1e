/** A whole-view state: nothing found, failed. */
import type { ComponentChildren } from 'preact';
import { EmptyBoard } from '../figures/loaf/empty-board.tsx';

interface Props {
  title: string;
  children?: ComponentChildren;
  alert?: boolean;
  /** The bare board stands over it: nothing is there yet. */
  board?: boolean;
}

export function Message({ title, children, alert = false, board = false }: Props) {
  return (
    <section class="message" role={alert ? 'alert' : 'status'}>
      {board && <EmptyBoard />}
      <h2>{title}</h2>
      {children}
    </section>
  );
}
