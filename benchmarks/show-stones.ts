/**
 * The table of a ring with stones.
 */
import { type Column, showTable } from "../src/cli/table.js";
import { milliseconds, show } from "./cells.js";
import { large } from "./designs.js";
import type { StonesTiming } from "./stones.js";
import { WANTED } from "./wanted.js";

const COLUMNS: readonly Column[] = [
  { head: "stones in a row" },
  { head: "CPU ms", align: "right" },
  { head: "reference", align: "right" },
  { head: "CPU ms", align: "right" },
  { head: "ratio", align: "right" },
  { head: "wanted", align: "right" },
];

export function showStones({
  stones,
  beads,
  road,
  checksum,
  large: plain,
  own,
  union,
  reference,
}: StonesTiming): string {
  const times = (value: number) => `${value.toFixed(2)} ×`;
  const rows = [
    [
      "warm build",
      milliseconds(own),
      large.name,
      milliseconds(plain),
      times(own / plain),
      `< ${WANTED.stonesOfLarge} ×`,
    ],
    ...[
      { what: "union, bodies made for it", cpu: union.cpu },
      { what: "warm build", cpu: own },
    ].map(({ what, cpu }) => [
      what,
      milliseconds(cpu),
      "manifold, whole ring",
      milliseconds(reference.cpu),
      times(reference.cpu / cpu),
      `> ${WANTED.stonesUnion} ×`,
    ]),
  ];
  return `${stones} bead-set stones, ${beads} beads; ${road}; ${show(checksum)}\n${showTable(COLUMNS, rows)}`;
}
