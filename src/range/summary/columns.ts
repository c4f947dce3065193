/**
 * The columns of a range's tables.
 */
import type { SummaryRow } from "./summary-rows.js";

export interface SummaryColumn {
  /** In CSV and JSON. */
  readonly key: string;
  /** On the page. */
  readonly head: string;
  /** Or what tells it from another of the same head. */
  readonly unit: string;
  /** A number, a text, or nothing. */
  of(row: SummaryRow): number | string | null;
  /** Digits after the point on the page and in CSV; undefined for texts and counts. */
  readonly decimals?: number;
}

type Figures = NonNullable<SummaryRow["figures"]>;

/** The name, the axes, then the figures. An axis that is called as a figure is told apart. */
export function summaryColumns(axes: readonly string[]): readonly SummaryColumn[] {
  const taken = ["name", ...FIGURES.map(({ key }) => key)];
  const ofAxis = (axis: string): SummaryColumn => {
    const key = taken.includes(axis) ? `${axis} (axis)` : axis;
    return { key, head: key, unit: "", of: ({ shown }) => shown[axis] ?? "" };
  };
  return [{ key: "name", head: "name", unit: "", of: ({ name }) => name }, ...axes.map(ofAxis), ...FIGURES];
}

const FIGURES: readonly SummaryColumn[] = [
  { key: "status", head: "status", unit: "", of: ({ status }) => status },
  figure("repeats", "tiles", ""),
  figure("tileWidth", "tile", "mm", 3),
  { ...figure("stretch", "stretch", "%", 2), of: ({ figures }) => percent(figures) },
  figure("bandWidth", "band", "mm", 3),
  figure("beads", "beads", ""),
  figure("beadRatioMin", "bead ratio", "least", 3),
  figure("beadRatioMax", "bead ratio", "most", 3),
  figure("stones", "stones", ""),
  figure("carats", "carats", "", 3),
  figure("weight", "weight", "g", 2),
  { key: "change", head: "from the size before", unit: "", of: ({ change }) => change },
  { key: "warnings", head: "warnings", unit: "", of: ({ figures }) => warnings(figures) },
  { key: "why", head: "why not", unit: "", of: ({ why }) => why },
  figure("thickness", "thickness", "mm", 3),
  figure("tileHeight", "tile height", "mm", 3),
  figure("volume", "volume", "mm³", 2),
  figure("triangles", "triangles", ""),
];

function figure(key: string, head: string, unit: string, decimals?: number): SummaryColumn {
  const of = ({ figures }: SummaryRow) => {
    const value = (figures as Readonly<Record<string, unknown>> | null)?.[key];
    return typeof value === "number" ? value : null;
  };
  return { key, head, unit, of, ...(decimals === undefined ? {} : { decimals }) };
}

/** How far a tile is stretched across the band, %. */
function percent(figures: Figures | null): number | null {
  return typeof figures?.stretch === "number" ? 100 * (figures.stretch - 1) : null;
}

/** `beads-crowded 2, hairline`. */
function warnings(figures: Figures | null): string {
  if (figures === null || !("warnings" in figures)) return "";
  return Object.entries(figures.warnings)
    .map(([code, count]) => (count === 1 ? code : `${code} ${count}`))
    .join(", ");
}

/** A cell as text: rounded as the column has it, never −0. */
export function showCell(value: number | string | null, { decimals }: Pick<SummaryColumn, "decimals">): string {
  if (value === null) return "";
  if (typeof value === "string" || decimals === undefined) return String(value);
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace("-", "") : text;
}
