/** A whole-view state: nothing found, failed. */
import type { ComponentChildren } from 'preact';

interface Props {
  title: string;
  children?: ComponentChildren;
  alert?: boolean;
}

export function Message({ title, children, alert = false }: Props) {
  return (
    <section class="message" role={alert ? 'alert' : 'status'}>
      <h2>{title}</h2>
      {children}
    </section>
  );
}
