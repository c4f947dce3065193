/**
 * The sheet's tables: sizes, fit, beads, allowances, weights.
 */
import type { StretchReport } from "../../band/surface/stretch.js";
import type { Allowances } from "../../casting/allowances/columns.js";
import type { WeightRow, WeightTable } from "../../measure/weights/weight-table.js";
import { sizeTable } from "../../size/size-table.js";
import { allowanceRows } from "../report/allowance-rows.js";
import { fontOfMark, nameMark, placeMark, workOfMark } from "../report/mark-lines.js";
import { nameStance } from "../report/name-stance.js";
import type { Report } from "../report/report.js";
import { densitySpan, showGrams } from "../report/show-grams.js";
import { type Column, paragraph, table } from "./html.js";

/** What stands where there is no number. */
const NOTHING = "–";

const right = (head: string): Column => ({ head, align: "right" });

/** The bore in every size system. */
export function sizesTable({ size }: Report): string {
  const rows = sizeTable(size.circumference).map(({ title, label, circumference, difference, span }) => [
    title,
    label ?? NOTHING,
    circumference === undefined ? NOTHING : circumference.toFixed(2),
    difference === undefined ? NOTHING : signed(difference, 2),
    span === undefined ? NOTHING : span.map((length) => length.toFixed(2)).join("–"),
  ]);
  const columns = [right("circumference, mm"), right("off, mm"), right("in charts, mm")];
  return table([{ head: "system" }, { head: "nearest size" }, ...columns], rows);
}

/** Repeats, tile and what gives way. */
export function fitTable({ fit, headroom }: Report): string {
  if (fit === null) return "";
  const lanes = fit.lanes.length > 0 ? fit.lanes : [{ ...fit, name: "" }];
  const rows = lanes.map(({ name, repeats, rows: across, tileWidth, tileHeight, aspectError }) => [
    ...(fit.lanes.length > 0 ? [name] : []),
    String(repeats),
    String(across),
    mm(tileWidth),
    mm(tileHeight),
    `${signed(100 * aspectError, 2)} %`,
  ]);
  const columns = [right("repeats"), right("rows"), right("tile width"), right("tile height"), right("stretch")];
  const { edge, crown, topCrown } = fit.lambda;
  const lines = [
    `Band ${mm(fit.bandWidth)} mm wide; reference radius ${mm(fit.referenceRadius)} mm; the pattern covers ${fit.cover}°.`,
    `λu ${edge.min.toFixed(4) === edge.max.toFixed(4) ? "" : `${edge.min.toFixed(4)} to `}${edge.max.toFixed(4)} at the seat's edges, ${crown.toFixed(4)} at its crown, ${topCrown.toFixed(4)} at the relief's top: 1 is true.`,
    ...acrossLine(fit.lambda),
    ...(headroom === null ? [] : [`Headroom from relief to rail ${mm(headroom)} mm.`]),
  ];
  return [table(fit.lanes.length > 0 ? [{ head: "lane" }, ...columns] : columns, rows), ...lines.map(paragraph)].join(
    "\n",
  );
}

/** How much the tiles of a band that tapers are narrower than flat. */
function acrossLine({ across }: StretchReport): string[] {
  if (across === undefined) return [];
  if (across.min === 1 && across.max === 1) {
    return [
      "The tiles keep their size across the band and are cut off at the seat's edge where it is narrower: λv is 1.",
    ];
  }
  return [`The tiles are true at the top; across the band λv is ${across.min.toFixed(4)} to ${across.max.toFixed(4)}.`];
}

/** Bead runs, their counts and ratios, and the numbers beside those. */
export function beadTable({ beads }: Report): string {
  if (beads.length === 0) return "";
  const rows = beads.map((run) => {
    const { diameterMin, diameterMax } = run;
    const beside = run.choices.filter(({ made }) => !made).map(({ count, ratio }) => `${count} (${ratio.toFixed(3)})`);
    return [
      run.run,
      String(run.count),
      diameterMin === diameterMax ? mm(run.diameter) : `${mm(diameterMin)} to ${mm(diameterMax)}`,
      mm(run.spacing),
      run.ratio.toFixed(3),
      beside.length > 0 ? beside.join(", ") : NOTHING,
    ];
  });
  const columns = [
    { head: "run" },
    right("beads"),
    right("diameter"),
    right("spacing"),
    right("ratio"),
    right("or (ratio)"),
  ];
  return table(columns, rows);
}

/** The piece finished, as cast and as the master. */
export function allowanceTable(allowances: Allowances, weights: WeightTable): string {
  const { scale, notes, any } = allowances;
  const rows = allowanceRows(
    allowances,
    (value) => (value === null ? NOTHING : mm(value)),
    (grams, symbol) => showGrams(grams, densitySpan(weights, symbol)),
  );
  const factors = any
    ? [`Master over casting: ${scale.radial.toFixed(5)} across the finger axis, ${scale.axial.toFixed(5)} along it.`]
    : [];
  return [
    table([{ head: "" }, right("finished"), right("cast"), right("master")], rows),
    ...[...factors, ...notes].map(paragraph),
  ].join("\n");
}

/** Lettering and the hallmark's field. */
export function markTable({ marks }: Report): string {
  if (marks.length === 0) return "";
  const columns = [
    { head: "mark" },
    { head: "where" },
    { head: "how" },
    right("height"),
    right("length"),
    { head: "font" },
  ];
  const rows = marks.map((mark) => [
    nameMark(mark),
    placeMark(mark),
    workOfMark(mark),
    mm(mark.height),
    mm(mark.length),
    fontOfMark(mark) ?? NOTHING,
  ]);
  return [table(columns, rows), paragraph("Height of capitals, or of the field; length along the surface.")].join("\n");
}

/** How the mesh lies for the printer, and its sprue. */
export function printLines({ print, sprue, weights }: Report): string {
  const { height, layer, layers, undersides } = print;
  const lines = [
    `Master ${nameStance(print)}: ${mm(height)} mm high, ${layers} layers of ${mm(layer)} mm; ${undersides.area.toFixed(1)} mm² of undersides lean more than ${undersides.support}°.`,
  ];
  if (sprue !== null) {
    const grams = showGrams(sprue.weight, densitySpan(weights, sprue.material));
    lines.push(
      `Drawn sprue: ${mm(sprue.volume)} mm³, ${grams} g in ${sprue.material}, over ${mm(sprue.covers)} mm of the band; no other figure counts it.`,
    );
  }
  return lines.map(paragraph).join("\n");
}

/**
 * Weights in every material; costs where the design has prices.
 *
 * @param own symbol of the design's own material, whose row stands out
 */
export function weightTable(weights: WeightTable, own: string): string {
  const { rows, sprue, button, currency, pattern } = weights;
  const priced = rows.some(({ cost }) => cost !== null);
  const columns: Column[] = [
    { head: "material" },
    right("g/cm³"),
    right("finished, g"),
    right("range, g"),
    right("cast, g"),
    right("to melt, g"),
    ...(priced ? [right(`melt${currency === null ? "" : `, ${currency}`}`)] : []),
  ];
  const row = ({ symbol, name, density, finished, finishedRange, cast, melt, cost }: WeightRow) => {
    const span = densitySpan(weights, symbol);
    return [
      name,
      density.toFixed(2),
      showGrams(finished, span),
      finishedRange === null ? NOTHING : finishedRange.map((g) => g.toFixed(2)).join("–"),
      showGrams(cast, span),
      showGrams(melt, span),
      ...(priced ? [cost === null ? NOTHING : cost.melt.toFixed(2)] : []),
    ];
  };
  const left = button > 0 ? ` and ${button.toFixed(2)} g of button` : "";
  const lines = [
    `To melt: the casting with ${sprue} % of sprue${left}.`,
    `Pattern: ${pattern.millilitres.toFixed(3)} ml of ${pattern.symbol}; cured it weighs ${showGrams(pattern.weight, densitySpan(weights, pattern.symbol))} g.`,
  ];
  const marked = rows.findIndex(({ symbol }) => symbol === own);
  return [table(columns, rows.map(row), marked), ...lines.map(paragraph)].join("\n");
}

function mm(value: number): string {
  return value.toFixed(3);
}

function signed(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return Number(text) > 0 ? `+${text}` : text;
}
