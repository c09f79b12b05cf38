/** Lets the browser paint what was just shown before heavier work goes on. */
export function painted(): Promise<void> {
  return new Promise((resolve) => {
    // A page that is not looked at paints nothing: then a moment is enough.
    const timer = setTimeout(resolve, longestFrameMs);
    requestAnimationFrame(() => {
      clearTimeout(timer);
      setTimeout(resolve);
    });
  });
}

const longestFrameMs = 100;
