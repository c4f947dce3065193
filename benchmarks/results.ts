/**
 * What a run of the benchmark comes to, and the machine it ran on.
 */
import os from "node:os";
import type { ChangeTiming } from "./changes.js";
import type { Flat } from "./flat.js";
import type { Growth } from "./growth.js";
import type { Memory } from "./memory.js";
import type { PictureTimings } from "./picture.js";
import type { Reading } from "./reading.js";
import type { StartTiming } from "./starts.js";
import type { StonesTiming } from "./stones.js";
import type { DesignTimings } from "./time-design.js";
import type { WholeTiming } from "./whole.js";
import type { Writing } from "./writing.js";

export interface Machine {
  readonly processor: string;
  readonly cores: number;
  readonly system: string;
  readonly node: string;
  /** Whether tasks were called too few times to rely on. */
  readonly quick: boolean;
}

export interface Results {
  readonly machine: Machine;
  readonly memory: Memory;
  readonly starts: readonly StartTiming[];
  /** Of the README's design. */
  readonly whole: readonly WholeTiming[];
  readonly changes: readonly ChangeTiming[];
  readonly designs: readonly DesignTimings[];
  readonly growth: Growth;
  readonly flat: Flat;
  readonly writing: Writing;
  readonly reading: Reading;
  readonly picture: PictureTimings;
  readonly stones: StonesTiming;
}

export function thisMachine(quick: boolean): Machine {
  const cores = os.cpus();
  return {
    processor: cores[0]?.model ?? os.arch(),
    cores: cores.length,
    system: `${os.type()} ${os.release()}`,
    node: process.versions.node,
    quick,
  };
}
