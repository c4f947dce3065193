/**
 * A progress bar, only where somebody is watching. The only file that knows the progress library.
 */
import { SingleBar } from "cli-progress";
import type { Io } from "./io.js";

export interface Progress {
  /** @param share of the whole work, 0 to 1 */
  update(stage: string, share: number): void;
  /** Takes the bar away. */
  stop(): void;
}

/** Steps of the bar. */
const STEPS = 100;

/** A bar on standard error; where that is no terminal, nothing. */
export function startProgress(io: Io, quiet: boolean): Progress {
  if (quiet || io.stderr.isTTY !== true) return { update() {}, stop() {} };
  const bar = new SingleBar({
    stream: io.stderr,
    format: "{bar} {percentage} % {stage}",
    barCompleteChar: "█",
    barIncompleteChar: "░",
    barsize: 30,
    clearOnComplete: true,
    // Terminal settings that are changed would stay changed after Ctrl-C: the cursor stays, and so does line wrapping.
    hideCursor: false,
    linewrap: true,
    // The work holds the event loop, so the bar draws itself whenever it is told something.
    synchronousUpdate: true,
    gracefulExit: false,
  });
  bar.start(STEPS, 0, { stage: "" });
  return {
    update: (stage, share) => bar.update(Math.round(share * STEPS), { stage }),
    stop: () => bar.stop(),
  };
}
