/**
 * Tells how a range comes on: a bar on a terminal, now and then a line in a log, a line of JSON for each variant.
 */
import type { RangeEvent } from "../../range/disk/range-run.js";
import { describeProblem } from "../../toolbox/index.js";
import { type Io, print, say } from "../io.js";
import { plainJson } from "../plain-text.js";
import { errorMark } from "../say-problems.js";
import { startProgress } from "../show-progress.js";

/** A log has a line at most so often, ms. */
const EACH_MS = 10_000;

/** Counts of what became of variants. */
export type Counts = Record<RangeEvent["kind"], number>;

export interface RangeTeller {
  readonly counts: Counts;
  /** How many variants there are. */
  expect(count: number): void;
  tell(event: RangeEvent): void;
  stop(): void;
}

export function startTelling(json: boolean, io: Io): RangeTeller {
  const counts: Counts = { made: 0, kept: 0, "left-out": 0, failed: 0 };
  const progress = startProgress(io, json);
  const watched = io.stderr.isTTY === true;
  const start = performance.now();
  let told = start;
  let total = 1;
  return {
    counts,
    expect: (count) => {
      total = count;
    },
    tell(event) {
      counts[event.kind]++;
      if (json) print(io, plainJson(jsonOf(event), 0));
      else if (event.kind === "failed") sayFailed(event, io);
      const now = performance.now();
      const text = paceOf(counts, total, (now - start) / 1000);
      const done = counts.made + counts.kept + counts["left-out"] + counts.failed;
      progress.update(text, done / total);
      if (watched || json || now - told < EACH_MS) return;
      told = now;
      say(io, text);
    },
    stop: () => progress.stop(),
  };
}

/** `12 of 40, 3.1 a minute, 9 min left`. The rate is of what is made, since the rest takes no time. */
export function paceOf(counts: Counts, total: number, seconds: number): string {
  const worked = counts.made + counts.failed;
  const done = worked + counts.kept + counts["left-out"];
  if (worked === 0) return `${done} of ${total}`;
  const each = seconds / worked;
  return `${done} of ${total}, ${(60 / each).toPrecision(3)} a minute, ${inWords(each * (total - done))} left`;
}

const MINUTE = 60;
const HOUR = 3600;

function inWords(seconds: number): string {
  if (seconds < 2 * MINUTE) return `${Math.ceil(seconds)} s`;
  return seconds < 2 * HOUR ? `${Math.round(seconds / MINUTE)} min` : `${(seconds / HOUR).toFixed(1)} h`;
}

function sayFailed({ name, problems }: Extract<RangeEvent, { kind: "failed" }>, io: Io): void {
  for (const problem of problems) say(io, `${errorMark(io)} ${name}: ${describeProblem(problem)}`);
}

function jsonOf(event: RangeEvent): object {
  const { number, name, shown, kind } = event;
  if (event.kind === "failed") return { number, name, shown, kind, errors: event.problems };
  if (event.kind === "left-out") return { number, name, shown, kind, why: event.record.why };
  const { files, figures, key } = event.record;
  return { number, name, shown, kind, key, files, figures };
}
