/**
 * The tables of one design: its stages, and the unions that it is held against.
 */
import { type Column, showTable } from "../src/cli/table.js";
import { FASTER, faster, ratio, show, TIMES, times, wanted } from "./cells.js";
import { large } from "./designs.js";
import type { DesignTimings } from "./time-design.js";
import { BVH_MOST_BEADS, REFERENCE } from "./unions.js";

export function showStages({ name, beads, stages, build, checksum, unions }: DesignTimings): string {
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

export function showUnions({ name, beads, unions }: DesignTimings): string {
  const columns: Column[] = [
    { head: "whole-ring union" },
    { head: "bodies", align: "right" },
    ...TIMES,
    ...FASTER,
    wanted("times"),
    { head: "result" },
  ];
  const asked = name === large.name;
  const rows = unions.map((timing) => [
    timing.name,
    String(timing.bodies),
    ...times(timing),
    ...faster(unions[0], timing),
    asked && timing.wanted !== undefined ? `≥ ${timing.wanted}` : "",
    show(timing.checksum),
  ]);
  const without = beads > BVH_MOST_BEADS ? `; three-bvh-csg is timed up to ${BVH_MOST_BEADS} beads only` : "";
  return `${name}, the same parts united; reference: ${REFERENCE}${without}\n${showTable(columns, rows)}`;
}
