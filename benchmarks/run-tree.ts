/**
 * Runs programs with all the processes that they start, and tells what all of them took together: the shell's own count of its
 * children (`times`, POSIX).
 */
import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";

export interface TreeUsage {
  /** From start to end, ms. */
  readonly wall: number;
  /** Of all processes, ms. */
  readonly cpu: number;
}

/** A program that runs until it is ended. */
export interface RunningTree {
  readonly done: Promise<TreeUsage>;
  /** Ends it, by SIGTERM. */
  end(): Promise<TreeUsage>;
}

/** The shell waits for its child through a signal that ends that, counts, and says so on descriptor 3. */
const SCRIPT =
  'trap : TERM; "$@" & child=$!; wait $child; code=$?; kill -TERM $child 2>/dev/null; wait $child 2>/dev/null; times >&3; exit $code';

/** @param codes exit codes that are none of a failure */
export function startTree(words: readonly string[], codes: readonly number[] = [0]): RunningTree {
  const start = performance.now();
  const child = spawn("sh", ["-c", SCRIPT, "sh", ...words], { stdio: ["ignore", "ignore", "pipe", "pipe"] });
  const done = usageOf(child, words, codes, start);
  // Who ends it waits for it then.
  done.catch(() => {});
  return {
    done,
    end() {
      child.kill("SIGTERM");
      return done;
    },
  };
}

async function usageOf(
  child: ChildProcess,
  words: readonly string[],
  codes: readonly number[],
  start: number,
): Promise<TreeUsage> {
  const said = { 2: "", 3: "" };
  for (const at of [2, 3] as const) {
    child.stdio[at]?.on("data", (chunk) => {
      said[at] += chunk;
    });
  }
  const [code] = await once(child, "close");
  if (!codes.includes(code)) throw new Error(`${words.join(" ")} failed with ${code}: ${said[2]}`);
  return { wall: performance.now() - start, cpu: childrenIn(said[3]) };
}

/** `0m1.50s 0m0.25s`, the second line: user and system time of all children. */
function childrenIn(text: string): number {
  const [, children = ""] = text.trim().split("\n");
  const times = [...children.matchAll(/(\d+)m([\d.]+)s/g)].map(
    ([, minutes, seconds]) => 60 * Number(minutes) + Number(seconds),
  );
  return 1000 * times.reduce((sum, time) => sum + time, 0);
}
