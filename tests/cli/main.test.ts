import { afterEach, expect, it, vi } from "vitest";

const [argv, exitCode] = [process.argv, process.exitCode];
const streams = [process.stdout, process.stderr] as const;
const before = streams.map((stream) => stream.listeners("error"));

/** Runs the program as Node would, with what it wrote to standard output. */
async function runMain(...words: string[]): Promise<string> {
  vi.resetModules();
  process.argv = ["node", "annulet", ...words];
  let out = "";
  vi.spyOn(process.stdout, "write").mockImplementation((text) => {
    out += String(text);
    return true;
  });
  vi.spyOn(process.stderr, "write").mockReturnValue(true);
  await import("../../src/cli/main.js");
  return out;
}

/** The listener to errors of a stream that the program added. */
function added(which: 0 | 1): (error: unknown) => void {
  const own = streams[which].listeners("error").find((listener) => !before[which].includes(listener));
  if (own === undefined) throw new Error("no listener was added");
  return own as (error: unknown) => void;
}

afterEach(() => {
  vi.restoreAllMocks();
  process.argv = argv;
  process.exitCode = exitCode;
  streams.forEach((stream, i) => {
    for (const listener of stream.listeners("error")) {
      if (!before[i].includes(listener)) stream.off("error", listener as (error: Error) => void);
    }
  });
});

it("takes the words after its own name and hands on the exit code", async () => {
  expect(await runMain("--version")).toMatch(/^\d+\.\d+\.\d+\n$/);
  expect(process.exitCode).toBe(0);
  await runMain("no-such-command");
  expect(process.exitCode).toBe(2);
});

it("ends where nobody reads its data any more, goes on where its talk is lost, and says that its data cannot be kept", async () => {
  await runMain("--version");
  const exit = vi.spyOn(process, "exit").mockReturnValue(undefined as never);
  const gone = Object.assign(new Error("gone"), { code: "EPIPE" });
  const full = Object.assign(new Error("full"), { code: "ENOSPC" });
  added(1)(gone);
  expect(exit).not.toHaveBeenCalled();
  added(0)(gone);
  expect(exit.mock.calls).toEqual([[]]);
  added(1)(full);
  expect(exit).toHaveBeenCalledOnce();
  added(0)(full);
  expect(exit.mock.calls).toEqual([[], [2]]);
  expect(process.stderr.write).toHaveBeenLastCalledWith(
    "error: standard output cannot be written: the disk is full.\n",
  );
});
