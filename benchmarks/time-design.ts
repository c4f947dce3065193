/**
 * Everything that is timed on one design: its stages, its whole build, and the unions it is held against.
 */
import { build } from "../src/ring/build.js";
import { type Checksum, checksumOf } from "./checksum.js";
import type { TimedDesign } from "./designs.js";
import type { Effort } from "./effort.js";
import { timeStages } from "./stages.js";
import { type Timing, timeTask } from "./time-task.js";
import { timeUnions, type UnionTiming } from "./unions.js";

export interface DesignTimings {
  readonly name: string;
  readonly beads: number;
  readonly stages: readonly Timing[];
  readonly build: Timing;
  /** Of the built ring. */
  readonly checksum: Checksum;
  /** The first is the reference. */
  readonly unions: readonly UnionTiming[];
}

export async function timeDesign({ name, document }: TimedDesign, effort: Effort): Promise<DesignTimings> {
  process.stderr.write(`${name}\n`);
  const { timings, parts, mesh } = await timeStages(document, effort);
  const whole = await timeTask({ name: "whole build", run: () => build(document) }, effort);
  const checksum = checksumOf(whole.result.mesh);
  if (checksum.volume !== checksumOf(mesh).volume) throw new Error(`${name}: the stages and the build differ`);
  const unions = await timeUnions(parts, effort);
  return { name, beads: parts.spheres.length, stages: timings, build: whole.timing, checksum, unions };
}
