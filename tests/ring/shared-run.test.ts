import { describe, expect, it } from "vitest";
import { SharedRun } from "../../src/ring/shared-run.js";
import { deferred } from "../support/deferred.js";

/** A run that ends when it is told to, with what it saw of its signal. */
function runOf() {
  const { promise, resolve, reject } = deferred<string>();
  let over = 0;
  let seen: AbortSignal | undefined;
  let begun = 0;
  const run = new SharedRun<string>(
    (signal) => {
      begun++;
      seen = signal;
      return promise;
    },
    () => {
      over++;
    },
  );
  return { run, end: resolve, fail: reject, over: () => over, stopped: () => seen?.aborted, begun: () => begun };
}

const turns = async () => {
  for (let i = 0; i < 10; i++) await Promise.resolve();
};

describe("work that several wait for", () => {
  it("is done once, and all have its result", async () => {
    const { run, end, over, begun } = runOf();
    const waiting = [run.wait(undefined), run.wait(new AbortController().signal)];
    await turns();
    expect(over()).toBe(0);
    end("made");
    expect(await Promise.all(waiting)).toEqual(["made", "made"]);
    expect([begun(), over()]).toEqual([1, 1]);
    expect(await run.wait(undefined)).toBe("made");
  });

  it("goes on while one of them stays, and lets the other go at once with its own reason", async () => {
    const { run, end, stopped, over } = runOf();
    const leaver = new AbortController();
    const stays = run.wait(new AbortController().signal);
    const leaves = run.wait(leaver.signal);
    await turns();
    leaver.abort("enough");
    await expect(leaves).rejects.toBe("enough");
    expect([stopped(), over()]).toEqual([false, 0]);
    end("made");
    expect(await stays).toBe("made");
  });

  it("is stopped when the last has gone, and told to be over before it has ended", async () => {
    const { run, stopped, over } = runOf();
    const [a, b] = [new AbortController(), new AbortController()];
    const waits = [run.wait(a.signal), run.wait(b.signal)];
    await turns();
    a.abort("a");
    expect(stopped()).toBe(false);
    b.abort("b");
    expect([stopped(), over()]).toEqual([true, 1]);
    expect((await Promise.allSettled(waits)).map((one) => one.status === "rejected" && one.reason)).toEqual(["a", "b"]);
  });

  it("does not keep one whose signal is up already, nor stop for one who never waited alone", async () => {
    const { run, end, stopped } = runOf();
    const stays = run.wait(undefined);
    await expect(run.wait(AbortSignal.abort("late"))).rejects.toBe("late");
    expect(stopped()).toBe(false);
    end("made");
    expect(await stays).toBe("made");
  });

  it("hands its failure to all, and is over once", async () => {
    const { run, fail, over } = runOf();
    const waits = [run.wait(undefined), run.wait(undefined)];
    fail(new Error("broken"));
    for (const one of await Promise.allSettled(waits)) expect(one).toMatchObject({ reason: { message: "broken" } });
    expect(over()).toBe(1);
  });

  it("is not stopped by a signal that goes up after its end", async () => {
    const { run, end, stopped } = runOf();
    const late = new AbortController();
    const waits = run.wait(late.signal);
    end("made");
    await waits;
    await turns();
    late.abort("late");
    expect(stopped()).toBe(false);
  });
});
