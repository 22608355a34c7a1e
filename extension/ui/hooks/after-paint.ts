/** Runs a job once the screen has been drawn; the returned function calls it off. */
export function afterPaint(job: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const later = () => {
    timer = setTimeout(job);
  };
  // A tab in the background is never drawn: what it shows must be worked out all the same.
  if (typeof requestAnimationFrame === 'undefined' || document.hidden) {
    later();
    return () => clearTimeout(timer);
  }
  const frame = requestAnimationFrame(later);
  return () => {
    cancelAnimationFrame(frame);
    clearTimeout(timer);
  };
}
