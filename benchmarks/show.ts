/**
 * The results as tables.
 */
import { type Column, showTable } from "../src/cli/table.js";
import type { Checksum } from "./checksum.js";
import type { Flat } from "./flat.js";
import type { Memory } from "./memory.js";
import type { PictureTimings } from "./picture.js";
import type { Reading } from "./reading.js";
import type { Results } from "./results.js";
import type { DesignTimings } from "./time-design.js";
import type { Timing } from "./time-task.js";
import { BVH_MOST_BEADS, REFERENCE } from "./unions.js";
import type { Writing } from "./writing.js";

export function showResults({ machine, memory, designs, flat, writing, reading, picture }: Results): string {
  return [
    `${machine.processor}, ${machine.cores} cores, ${machine.system}, node ${machine.node}${machine.quick ? "; quick: rough numbers" : ""}`,
    ...designs.flatMap((design) => [showStages(design), showUnions(design)]),
    showFlat(flat),
    showMemory(memory),
    showFiles("writing", writing),
    showFiles("reading", reading),
    showPicture(picture),
  ].join("\n\n");
}

const TIMES: readonly Column[] = [
  { head: "median ms", align: "right" },
  { head: "± ms", align: "right" },
  { head: "calls", align: "right" },
];

function showStages({ name, beads, stages, build, checksum, unions }: DesignTimings): string {
  const columns: Column[] = [
    { head: "stage" },
    ...TIMES,
    { head: "of build", align: "right" },
    { head: "of reference", align: "right" },
  ];
  const rows = [...stages, build].map((timing) => [
    timing.name,
    ...times(timing),
    `${(100 * (timing.median / build.median)).toFixed(1)} %`,
    ratio(timing.median / unions[0].median),
  ]);
  return `${name}, ${beads} beads: ${show(checksum)}\n${showTable(columns, rows)}`;
}

function showUnions({ name, beads, unions }: DesignTimings): string {
  const columns: Column[] = [
    { head: "whole-ring union" },
    { head: "bodies", align: "right" },
    ...TIMES,
    { head: "of reference", align: "right" },
    { head: "result" },
  ];
  const rows = unions.map((timing) => [
    timing.name,
    String(timing.bodies),
    ...times(timing),
    ratio(timing.median / unions[0].median),
    show(timing.checksum),
  ]);
  const without = beads > BVH_MOST_BEADS ? `; three-bvh-csg is timed up to ${BVH_MOST_BEADS} beads only` : "";
  return `${name}, the same parts united; reference: ${REFERENCE}${without}\n${showTable(columns, rows)}`;
}

function showFlat({ design, beads, icons, area, timings }: Flat): string {
  const columns: Column[] = [{ head: "flat work" }, ...TIMES];
  const rows = timings.map((timing) => [timing.name, ...times(timing)]);
  return `${design}, ${beads} beads; ${icons} icons that cover ${area.toFixed(1)} mm²\n${showTable(columns, rows)}`;
}

function showMemory({ design, before, peak, checksum }: Memory): string {
  const columns: Column[] = [{ head: "memory" }, { head: "MiB", align: "right" }];
  const rows = [
    ["loaded, nothing built", mebibytes(1024 * before)],
    ["peak after one build", mebibytes(1024 * peak)],
  ];
  return `${design} in a fresh process: ${show(checksum)}\n${showTable(columns, rows)}`;
}

function showFiles(what: string, { checksum, timings }: Writing | Reading): string {
  const columns: Column[] = [
    { head: what },
    ...TIMES,
    { head: "of three's", align: "right" },
    { head: "MiB", align: "right" },
  ];
  const rows = timings.map((timing) => [
    timing.name,
    ...times(timing),
    timing.ratio === undefined ? "" : ratio(timing.ratio),
    mebibytes(timing.bytes),
  ]);
  return `${what} a torus: ${show(checksum)}\n${showTable(columns, rows)}`;
}

function showPicture({ triangles, width, height, covered, timings }: PictureTimings): string {
  const columns: Column[] = [{ head: "picture" }, ...TIMES, { head: "of the PNG", align: "right" }];
  const png = timings[timings.length - 1].median;
  const rows = timings.map((timing) => [timing.name, ...times(timing), ratio(timing.median / png)]);
  const what = `${triangles} triangles, ${width} × ${height}, the ring covers ${(100 * covered).toFixed(2)} %`;
  return `${what}\n${showTable(columns, rows)}`;
}

function show({ triangles, volume, closed }: Checksum): string {
  return `${triangles} triangles, ${volume.toFixed(4)} mm³, ${closed ? "closed" : "NOT CLOSED"}`;
}

function times({ median, spread, calls }: Timing): string[] {
  return [milliseconds(median), milliseconds(spread), String(calls)];
}

function milliseconds(value: number): string {
  return value < 1 ? String(Number(value.toPrecision(2))) : value.toFixed(1);
}

function ratio(value: number): string {
  return value < 0.01 ? "< 0.01" : value.toFixed(2);
}

function mebibytes(bytes: number): string {
  return (bytes / 2 ** 20).toFixed(1);
}
