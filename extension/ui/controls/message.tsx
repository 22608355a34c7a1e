import type { ComponentChildren } from 'preact';

interface Props {
  title: string;
  children?: ComponentChildren;
  alert?: boolean;
}

/** A whole-view state: loading, nothing found, failed. */
export function Message({ title, children, alert = false }: Props) {
  return (
    <section class="message" role={alert ? 'alert' : 'status'}>
      <h2>{title}</h2>
      {children}
    </section>
  );
}
