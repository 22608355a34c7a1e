import type { ComponentChildren } from 'preact';

/** Mark, name, and what stands beside them. */
export function Masthead({ children }: { children?: ComponentChildren }) {
  return (
    <header class="masthead">
      <img src="/icon/48.png" alt="" width="24" height="24" />
      <h1>Crumbshift</h1>
      {children}
    </header>
  );
}
