/** Runs a job so many milliseconds after the screen has been drawn; the returned function calls it off. */
export function afterPaint(job: () => void, afterMs = 0): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const later = () => {
    timer = setTimeout(job, afterMs);
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
