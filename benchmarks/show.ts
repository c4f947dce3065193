/**
 * The results as tables.
 */
import { type Column, showTable } from "../src/cli/table.js";
import { mebibytes, ratio, show, TIMES, times } from "./cells.js";
import type { Flat } from "./flat.js";
import type { PictureTimings } from "./picture.js";
import type { Reading } from "./reading.js";
import type { Results } from "./results.js";
import { showChanges } from "./show-changes.js";
import { showStages, showUnions } from "./show-design.js";
import { showByBeads, showByUnits } from "./show-growth.js";
import { showStarts } from "./show-starts.js";
import { showStones } from "./show-stones.js";
import { showMemory, showWhole } from "./show-whole.js";
import type { Writing } from "./writing.js";

export function showResults(results: Results): string {
  const { machine, memory, starts, whole, changes, designs, growth, flat, writing, reading, picture, stones } = results;
  return [
    `${machine.processor}, ${machine.cores} cores, ${machine.system}, node ${machine.node}${machine.quick ? "; quick: rough numbers" : ""}`,
    showWhole(whole),
    showMemory(memory),
    showStarts(starts),
    showChanges(changes),
    ...designs.flatMap((design) => [showStages(design), showUnions(design)]),
    showByBeads(growth),
    showByUnits(growth),
    showFlat(flat),
    showFiles("writing", writing),
    showFiles("reading", reading),
    showPicture(picture),
    showStones(stones),
  ].join("\n\n");
}

function showFlat({ design, beads, icons, area, timings }: Flat): string {
  const columns: Column[] = [{ head: "flat work" }, ...TIMES];
  const rows = timings.map((timing) => [timing.name, ...times(timing)]);
  return `${design}, ${beads} beads; ${icons} icons that cover ${area.toFixed(1)} mm²\n${showTable(columns, rows)}`;
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
