/**
 * What the cells of the tables hold, and the columns that all share.
 */
import type { Column } from "../src/cli/table.js";
import type { Checksum } from "./checksum.js";
import type { Timing } from "./time-task.js";

export const TIMES: readonly Column[] = [
  { head: "median ms", align: "right" },
  { head: "± ms", align: "right" },
  { head: "CPU ms", align: "right" },
  { head: "calls", align: "right" },
];

export function wanted(unit: string): Column {
  return { head: `wanted ${unit}`, align: "right" };
}

export function times({ median, spread, cpu, calls }: Timing): string[] {
  return [milliseconds(median), milliseconds(spread), milliseconds(cpu), String(calls)];
}

/** How many times faster than a reference, by the median and by CPU time. */
export const FASTER: readonly Column[] = [
  { head: "times faster", align: "right" },
  { head: "by CPU", align: "right" },
];

export function faster(reference: Timing, ...timings: readonly Timing[]): string[] {
  const times = (of: "median" | "cpu") => reference[of] / timings.reduce((sum, timing) => sum + timing[of], 0);
  return [`${times("median").toFixed(1)} ×`, `${times("cpu").toFixed(1)} ×`];
}

export function show({ triangles, volume, closed }: Checksum): string {
  return `${triangles} triangles, ${volume.toFixed(4)} mm³, ${closed ? "closed" : "NOT CLOSED"}`;
}

export function seconds(value: number): string {
  return (value / 1e3).toFixed(1);
}

/** Of ms. */
export function microseconds(value: number): string {
  return (1e3 * value).toFixed(0);
}

export function megabytes(bytes: number): string {
  return (bytes / 1e6).toFixed(0);
}

export function milliseconds(value: number): string {
  return value < 1 ? String(Number(value.toPrecision(2))) : value.toFixed(1);
}

export function ratio(value: number): string {
  return value < 0.01 ? "< 0.01" : value.toFixed(2);
}

export function mebibytes(bytes: number): string {
  return (bytes / 2 ** 20).toFixed(1);
}
