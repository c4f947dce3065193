import { describe, expect, it } from "vitest";
import { about, FORGET, Memory, rememberPausing } from "../../src/base/memory.js";
import { finish, type Pausing } from "../../src/base/pausing.js";

/** Begins a run of a memory in which nothing is said. */
const quiet = (memory: Memory) => memory.begin(() => 0);

describe("a memory", () => {
  it("takes over what was made of the same values and the same things in the run before", () => {
    const memory = new Memory();
    const [a, b] = [{}, {}];
    const first = quiet(memory)(["body", 1], [a], () => ({}));
    const again = quiet(memory);
    expect(again(["body", 1], [a], () => ({}))).toBe(first);
    expect(again(["body", 2], [a], () => ({}))).not.toBe(first);
    expect(again(["body", 1], [b], () => ({}))).not.toBe(first);
    expect(again(["body", 1], [], () => ({}))).not.toBe(first);
  });

  it("tells values apart that JSON does not", () => {
    const recall = quiet(new Memory());
    const values = [0, -0, null, undefined, Number.NaN, "0", [0], [[0]], { a: undefined }, {}];
    const made = values.map((value) => recall([value], [], () => ({})));
    expect(new Set(made).size).toBe(values.length);
  });

  it("keeps nothing that was made while something was said, so that it is said again", () => {
    const memory = new Memory();
    const said: string[] = [];
    const make = () => said.push("crowded");
    for (let run = 0; run < 2; run++) memory.begin(() => said.length)(["run"], [], make);
    expect(said).toHaveLength(2);
  });

  it("keeps no failure", () => {
    const memory = new Memory();
    const recall = quiet(memory);
    expect(() =>
      recall(["a"], [], () => {
        throw new Error("no");
      }),
    ).toThrow("no");
    expect(recall(["a"], [], () => 7)).toBe(7);
  });

  it("forgets what four runs did not ask for, and keeps what they did", () => {
    const memory = new Memory();
    const often = quiet(memory)(["often"], [], () => ({}));
    for (let run = 0; run < 30; run++) {
      const recall = quiet(memory);
      expect(recall(["often"], [], () => ({}))).toBe(often);
      recall([run], [], () => run);
      expect(memory.size).toBeLessThanOrEqual(8);
    }
    expect(quiet(memory)([0], [], () => "new")).toBe("new");
  });

  it("gives a run that goes on later what it made itself", () => {
    const memory = new Memory();
    const recall = quiet(memory);
    const made = recall(["late"], [], () => ({}));
    for (let run = 0; run < 9; run++) quiet(memory);
    expect(recall(["late"], [], () => ({}))).toBe(made);
  });
});

describe("what is remembered about something", () => {
  it("depends on that too", () => {
    const memory = new Memory();
    const thing = {};
    const first = about(quiet(memory), [1], [thing])(["x"], [], () => ({}));
    expect(about(quiet(memory), [1], [thing])(["x"], [], () => ({}))).toBe(first);
    expect(about(quiet(memory), [2], [thing])(["x"], [], () => ({}))).not.toBe(first);
    expect(about(quiet(memory), [1], [{}])(["x"], [], () => ({}))).not.toBe(first);
  });

  it("is nothing where all is worked out", () => {
    expect(FORGET(["x"], [], () => ({}))).not.toBe(FORGET(["x"], [], () => ({})));
  });
});

describe("work in pieces", () => {
  const begun = () => {
    const memory = new Memory();
    let said = 0;
    return { memory, said: () => said, say: () => said++, run: () => memory.begin(() => said) };
  };
  const work = function* (what: string, log: string[], say?: () => void): Pausing<string[]> {
    yield what;
    log.push(what);
    say?.();
    return [what];
  };

  it("is done once, and taken over by the next run", () => {
    const { said, run } = begun();
    const log: string[] = [];
    const ask = () => finish(rememberPausing(run(), { by: ["a"], of: [], said }, () => work("a", log)));
    const first = ask();
    expect(ask()).toBe(first);
    expect(log).toEqual(["a"]);
    expect(finish(rememberPausing(FORGET, { by: ["a"], of: [], said }, () => work("a", log)))).toEqual(first);
    expect(log).toEqual(["a", "a"]);
  });

  it("that says something is done again, so that it is said again; what it throws is thrown", () => {
    const { said, say, run } = begun();
    const log: string[] = [];
    for (let i = 0; i < 2; i++) {
      finish(rememberPausing(run(), { by: ["a"], of: [], said }, () => work("a", log, say)));
    }
    expect(log).toEqual(["a", "a"]);
    const broken = function* (): Pausing<string> {
      yield undefined;
      throw new Error("broken");
    };
    expect(() => finish(rememberPausing(run(), { by: ["b"], of: [], said }, broken))).toThrow("broken");
  });
});
