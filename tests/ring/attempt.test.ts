import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../src/base/errors.js";
import { Work } from "../../src/base/work.js";
import { type Answer, AnswerStore } from "../../src/ring/answer-store.js";
import { attempt } from "../../src/ring/attempt.js";
import type { Given, Tools, WorkStage } from "../../src/ring/stage.js";

const given = {} as Given<never>;
const signal = new AbortController().signal;
const warning = { code: "told", message: "told" };
const error = new AnnuletError({ code: "wrong", message: "wrong" });

function stageOf(run: (tools: Tools) => unknown, compare: WorkStage<unknown>["compare"] = "work") {
  const stage: WorkStage<unknown> = {
    kind: "work",
    phase: undefined,
    reads: [],
    run: (_, tools) => run(tools),
    compare,
  };
  return { name: "size", stage } as const;
}

const work = (run: (tools: Tools) => unknown, compare?: WorkStage<unknown>["compare"], store = new AnswerStore()) =>
  attempt(stageOf(run, compare), given, { signal, work: new Work() }, store);

describe("what comes of a stage", () => {
  it("is its value with what it said, at once or later as it works", async () => {
    const run = ({ warn }: Tools) => {
      warn(warning);
      return 7;
    };
    expect(work(run)).toMatchObject({ outcome: { value: 7 }, warnings: [warning] });
    const later = work(async (tools) => run(tools));
    expect(later).toBeInstanceOf(Promise);
    expect(await later).toMatchObject({ outcome: { value: 7 }, warnings: [warning] });
  });

  it("is its failure where that is the design's, with what it said before", async () => {
    const run = ({ warn }: Tools) => {
      warn(warning);
      throw error;
    };
    expect(work(run)).toMatchObject({ outcome: { error }, warnings: [warning] });
    expect(await work(async (tools) => run(tools))).toMatchObject({ outcome: { error }, warnings: [warning] });
  });

  it("is nothing that would stand where another fault or an abort ended it", async () => {
    const fault = () => {
      throw new TypeError("a fault of the code");
    };
    expect(() => work(fault)).toThrow(TypeError);
    await expect(work(async () => fault())).rejects.toThrow(TypeError);
    const stopped = attempt(
      stageOf(async () => Promise.reject(error)),
      given,
      { signal: AbortSignal.abort(), work: new Work() },
      new AnswerStore(),
    );
    await expect(stopped).rejects.toBe(error);
  });
});

describe("by what an answer is compared", () => {
  const mark = (one: Answer | Promise<Answer>) => (one as Answer).mark;

  it("is its value where the stage says so: equal values have one mark", () => {
    expect(mark(work(() => ({ a: 1, b: [2] }), "value"))).toBe(mark(work(() => ({ a: 1, b: [2] }), "value")));
    expect(mark(work(() => 1, "value"))).not.toBe(mark(work(() => "1", "value")));
  });

  it("is the work that made it otherwise: no two have one mark, failures neither", () => {
    const store = new AnswerStore();
    const marks = [() => 1, () => 1].map((run) => mark(work(run, "work", store)));
    const failed = mark(
      work(
        () => {
          throw error;
        },
        "value",
        store,
      ),
    );
    expect(new Set([...marks, failed]).size).toBe(3);
  });

  it("is an earlier answer that is the same, where the stage tells: that one is given again", () => {
    const store = new AnswerStore();
    const compare = { same: (a: unknown, b: unknown) => (a as { id: number }).id === (b as { id: number }).id };
    const first = work(() => ({ id: 1 }), compare, store) as Answer;
    store.keep("size", "a", first);
    expect(work(() => ({ id: 1 }), compare, store)).toBe(first);
    expect(work(() => ({ id: 2 }), compare, store)).not.toBe(first);
  });
});

describe("the parts that a stage remembers", () => {
  it("come again in its next run, but what was made while something was said does not", () => {
    const store = new AnswerStore();
    let made = 0;
    const run = ({ remember, warn }: Tools) => {
      const quiet = remember(["quiet"], [], () => ++made);
      const loud = remember(["loud"], [], () => {
        warn(warning);
        return ++made;
      });
      return [quiet, loud];
    };
    const [first, second] = [work(run, "work", store), work(run, "work", store)] as Answer[];
    expect([first.outcome, second.outcome]).toEqual([{ value: [1, 2] }, { value: [1, 3] }]);
    expect(second.warnings).toEqual([warning]);
  });
});
