/**
 * Gives way to whatever else waits to run: timers, input, messages, a signal about to be raised.
 *
 * A timer of no length would do everywhere, but browsers hold one back for 4 ms once they are nested (HTML standard,
 * Timers), and for a second in a page that is not seen.
 */
export function pause(): Promise<void> {
  if (typeof setImmediate === "function") return new Promise((resolve) => setImmediate(resolve));
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });
}
