/** Shown while something is worked out; it appears by itself after a third of a second. */
export function Working({ title }: { title: string }) {
  return (
    <section class="message working" role="status">
      <h2>{title}</h2>
      <p class="working-loaf" aria-hidden="true" />
    </section>
  );
}
