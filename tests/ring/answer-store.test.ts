import { describe, expect, it } from "vitest";
import { LIMITS } from "../../src/base/limits.js";
import { type Answer, AnswerStore } from "../../src/ring/answer-store.js";
import { deferred } from "../support/deferred.js";

const answer = (value: unknown): Answer => ({ outcome: { value }, mark: `=${value}`, warnings: [], ms: 1 });

/** An answer that holds so many bytes, in a mesh. */
const heavy = (bytes: number): Answer => answer({ mesh: { positions: new Uint8Array(bytes) } });

describe("answers that are kept", () => {
  it("are found by stage and key alone", () => {
    const store = new AnswerStore();
    const [one, other] = [answer(1), answer(2)];
    store.keep("fit", "a", one);
    store.keep("wrap", "a", other);
    expect([store.find("fit", "a"), store.find("wrap", "a"), store.find("fit", "b")]).toEqual([one, other, undefined]);
    expect(store.of("fit")).toEqual([one]);
    expect(store.stages).toEqual(["fit", "wrap"]);
  });

  it("are eight of a stage at most: the one used longest ago goes, looking for one is using it", () => {
    const store = new AnswerStore();
    for (let i = 0; i < 8; i++) store.keep("fit", `${i}`, answer(i));
    store.keep("wrap", "0", answer("other"));
    expect(store.find("fit", "0")).toBeDefined();
    store.keep("fit", "8", answer(8));
    expect(store.find("fit", "1")).toBeUndefined();
    expect([0, 2, 3, 4, 5, 6, 7, 8].map((i) => store.find("fit", `${i}`)?.mark)).toEqual(
      [0, 2, 3, 4, 5, 6, 7, 8].map((i) => `=${i}`),
    );
    expect(store.find("wrap", "0")).toBeDefined();
  });

  it("hold 256 MB at most over all stages, the newest however large it is", () => {
    const store = new AnswerStore();
    store.keep("a", "0", heavy(100e6));
    store.keep("b", "0", heavy(100e6));
    expect(store.size).toEqual({ answers: 2, bytes: 200e6 });
    store.keep("c", "0", heavy(56e6));
    expect(store.size).toEqual({ answers: 3, bytes: 256e6 });
    store.keep("d", "0", heavy(1));
    expect(store.size).toEqual({ answers: 3, bytes: 156e6 + 1 });
    expect(store.find("a", "0")).toBeUndefined();
    store.keep("e", "0", heavy(300e6));
    expect(store.size).toEqual({ answers: 1, bytes: 300e6 });
    expect(store.find("e", "0")).toBeDefined();
  });

  it("are counted once where they are kept again", () => {
    const store = new AnswerStore();
    for (let i = 0; i < 3; i++) store.keep("a", "0", heavy(1000));
    expect(store.size).toEqual({ answers: 1, bytes: 1000 });
    store.keep("a", "0", heavy(10));
    expect(store.size).toEqual({ answers: 1, bytes: 10 });
  });
});

describe("names and numbers", () => {
  it("are the same for the same thing, and never come twice", () => {
    const store = new AnswerStore();
    const [a, b] = [{}, {}];
    const named = [store.nameOf(a), store.nameOf(b), store.nameOf(a)];
    expect(named[0]).toBe(named[2]);
    expect(named[0]).not.toBe(named[1]);
    expect(new Set([store.serial(), store.serial(), store.serial()]).size).toBe(3);
    expect(store.memoryOf("a")).toBe(store.memoryOf("a"));
    expect(store.memoryOf("a")).not.toBe(store.memoryOf("b"));
  });
});

describe("a run that is shared", () => {
  it("is one for all who ask while it works, and its answer is kept", async () => {
    const store = new AnswerStore();
    let runs = 0;
    const run = async () => {
      runs++;
      return answer(runs);
    };
    const both = await Promise.all([
      store.share({ stage: "a", key: "0", by: LIMITS }, run, undefined),
      store.share({ stage: "a", key: "0", by: LIMITS }, run, undefined),
    ]);
    expect(both[0]).toBe(both[1]);
    expect(store.find("a", "0")).toBe(both[0]);
    await store.share({ stage: "a", key: "1", by: LIMITS }, run, undefined);
    expect(runs).toBe(2);
  });

  it("that all have left leaves no answer, though it ends, and is begun anew by the next", async () => {
    const store = new AnswerStore();
    const ended = deferred<Answer>();
    const leaver = new AbortController();
    const left = store.share({ stage: "a", key: "0", by: LIMITS }, () => ended.promise, leaver.signal);
    await Promise.resolve();
    leaver.abort("gone");
    await expect(left).rejects.toBe("gone");
    const next = store.share({ stage: "a", key: "0", by: LIMITS }, async () => answer("new"), undefined);
    ended.resolve(answer("old"));
    expect((await next).mark).toBe("=new");
    await ended.promise;
    expect(store.find("a", "0")?.mark).toBe("=new");
  });

  it("that fails is not kept, and is tried again", async () => {
    const store = new AnswerStore();
    const failing = store.share(
      { stage: "a", key: "0", by: LIMITS },
      () => Promise.reject(new Error("no library")),
      undefined,
    );
    await expect(failing).rejects.toThrow("no library");
    expect(store.find("a", "0")).toBeUndefined();
    expect((await store.share({ stage: "a", key: "0", by: LIMITS }, async () => answer(1), undefined)).mark).toBe("=1");
  });
});
