// Covers: src/cli/say-problems.ts
import { Readable, Writable } from "node:stream";
import { describe, expect, it } from "vitest";
import type { Io } from "../../src/cli/io.js";
import { run } from "../../src/cli/run.js";

/** Standard output that cannot be written to, and standard error that can: an error that is not ours. */
function brokenIo(env: Record<string, string>) {
  const chunks: string[] = [];
  const stderr = new Writable({
    write(chunk, _, done) {
      chunks.push(String(chunk));
      done();
    },
  });
  const stdout = Object.assign(new Writable(), {
    write(): boolean {
      throw new TypeError("the pen is dry");
    },
  });
  const io: Io = { stdin: Readable.from([]), stdout, stderr, env };
  return { io, said: () => chunks.join("") };
}

describe("what the program says of its own faults", () => {
  it("asks for a report, without the stack", async () => {
    const { io, said } = brokenIo({});
    expect(await run(["schema"], io)).toBe(3);
    expect(said()).toMatch(/^error: TypeError: the pen is dry\n.*report.*\n.*ANNULET_DEBUG=1/);
    expect(said()).not.toMatch(/\bat .*\.ts/);
  });

  it("shows the stack with ANNULET_DEBUG=1", async () => {
    const { io, said } = brokenIo({ ANNULET_DEBUG: "1" });
    expect(await run(["schema"], io)).toBe(3);
    expect(said()).toMatch(/\bat .*run\.test\.ts/);
  });
});

describe("a design that fails after it was warned of", () => {
  it("shows the warnings before the error: they are often its cause", async () => {
    const chunks: string[] = [];
    const sink = new Writable({
      write(chunk, _, done) {
        chunks.push(String(chunk));
        done();
      },
    });
    const design = {
      annulet: 1,
      size: { diameter: 17 },
      profile: { width: 6, thickness: 2, bore: { form: "flat" }, outside: { form: "flat" } },
      pattern: { regions: [{ path: "M 0.3 -0.05 H 0.7 V 0.05 H 0.3 Z", height: 0.5, round: 0.4 }] },
    };
    const io: Io = {
      stdin: Readable.from([JSON.stringify(design)]),
      stdout: sink,
      stderr: sink,
      env: {},
    };
    expect(await run(["make", "-", "-q", "--json"], io)).toBe(2);
    expect(chunks.join("")).toMatch(/warning: profile\.width: the band is .*\nerror: /s);
  });
});
