import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { followPulse } from "../../../src/workbench/engine/heartbeat.js";

beforeEach(() => {
  vi.useFakeTimers();
});

afterEach(() => {
  vi.useRealTimers();
});

/** A worker that answers while `alive`. */
function follow() {
  const worker = { alive: true, busy: false };
  const ask = vi.fn(() => (worker.alive ? Promise.resolve() : new Promise(() => undefined)));
  const onSilent = vi.fn();
  const end = followPulse({ ask, isBusy: () => worker.busy, onSilent });
  return { worker, ask, onSilent, end };
}

it("asks again and again, and is content with answers", async () => {
  const { ask, onSilent, end } = follow();
  await vi.advanceTimersByTimeAsync(3_600_000);
  expect(ask.mock.calls.length).toBeGreaterThan(1_000);
  expect(onSilent).not.toHaveBeenCalled();
  end();
  const before = ask.mock.calls.length;
  await vi.advanceTimersByTimeAsync(60_000);
  expect(ask.mock.calls.length).toBe(before);
});

it("tells once that no answer comes, of a busy worker much later", async () => {
  for (const [busy, soonest, latest] of [
    [false, 15_000, 60_000],
    [true, 120_000, 600_000],
  ] as const) {
    const { worker, ask, onSilent } = follow();
    await vi.advanceTimersByTimeAsync(10_000);
    Object.assign(worker, { alive: false, busy });
    const before = ask.mock.calls.length;
    await vi.advanceTimersByTimeAsync(soonest);
    expect(onSilent).not.toHaveBeenCalled();
    // Nothing piles up in the worker meanwhile.
    expect(ask.mock.calls.length).toBe(before + 1);
    await vi.advanceTimersByTimeAsync(latest);
    expect(onSilent).toHaveBeenCalledOnce();
  }
});

it("does not take a sleep of the machine for silence", async () => {
  let answer: () => void = () => undefined;
  const onSilent = vi.fn();
  const ask = () =>
    new Promise<void>((done) => {
      answer = done;
    });
  const end = followPulse({ ask, isBusy: () => false, onSilent });
  vi.advanceTimersByTime(2_000);
  // Asked; the machine sleeps for a day, and one beat comes before the answer.
  vi.setSystemTime(Date.now() + 86_400_000);
  vi.advanceTimersByTime(2_000);
  answer();
  await vi.advanceTimersByTimeAsync(2_000);
  expect(onSilent).not.toHaveBeenCalled();
  end();
});
