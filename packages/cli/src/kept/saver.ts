/** Least time between two savings, ms. */
const pause = 500;
/** Savings take at most this share of the time. */
const share = 0.05;

/** Saves what is done now and then: not so often that it costs, not so seldom that much is lost. */
export function openSaver(save: () => void): { maybe(): void } {
  let last = performance.now();
  let cost = 0;
  return {
    maybe() {
      const now = performance.now();
      if (now - last < Math.max(pause, cost / share)) return;
      save();
      last = performance.now();
      cost = last - now;
    },
  };
}
