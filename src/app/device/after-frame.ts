/** A page that is not seen gets no frames; then it goes on after this long, ms. */
const NO_FRAME = 250;

/**
 * Runs what can wait when the next frame is on the screen, so that what she changed is seen first. Answers the
 * function that calls it off.
 */
export function afterFrame(run: () => void): () => void {
  let soon: ReturnType<typeof setTimeout> | undefined;
  let frame = 0;
  const stop = (): void => {
    clearTimeout(soon);
    clearTimeout(late);
    if (frame !== 0) cancelAnimationFrame(frame);
  };
  const late = setTimeout(() => {
    stop();
    run();
  }, NO_FRAME);
  // Without a screen there is nothing to wait for.
  if (typeof requestAnimationFrame === 'undefined') soon = setTimeout(once);
  else {
    frame = requestAnimationFrame(() => {
      frame = 0;
      clearTimeout(late);
      soon = setTimeout(once);
    });
  }
  function once(): void {
    stop();
    run();
  }
  return stop;
}
