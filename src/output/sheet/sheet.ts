/**
 * The bench sheet: all that a workshop needs of one ring on a few pages, as one HTML file that needs nothing else.
 */

import type { Band } from "../../band/band.js";
import type { BandSurface } from "../../band/surface/surface.js";
import { describeProblem } from "../../base/errors.js";
import { radians } from "../../base/units.js";
import type { Design } from "../../design/schema.js";
import type { Finding, RuleResult } from "../../judge/finding.js";
import { orderStones, SPARE_SHARE } from "../../stones/order-stones.js";
import type { PlacedStones } from "../../stones/place-stones.js";
import type { DrawnTile } from "../drawing/drawn-tile.js";
import { type Figure, figureElement, fitted } from "../drawing/figure.js";
import { escapeText } from "../drawing/svg.js";
import { cautions } from "../report/cautions.js";
import type { Report } from "../report/report.js";
import { densitySpan, showGrams } from "../report/show-grams.js";
import { STONE_CAUTION, stoneCautions } from "../stones/stone-cautions.js";
import { drawStoneMap, STONE_MAP } from "../stones/stone-map.js";
import { base64 } from "./base64.js";
import { paragraph, section } from "./html.js";
import { drawPatternFigure, PATTERN_FIGURE } from "./pattern-figure.js";
import { drawSection, SECTION_FIGURE } from "./section-figure.js";
import { SHEET_STYLE } from "./sheet-style.js";
import { orderTable, rowTable } from "./stone-tables.js";
import { allowanceTable, beadTable, fitTable, markTable, printLines, sizesTable, weightTable } from "./tables.js";
import { drawTileFigure } from "./tile-figure.js";

/** A picture of the ring. */
export interface SheetPicture {
  readonly title: string;
  /** The bytes of a PNG file. */
  readonly png: Uint8Array;
}

export interface SheetContent {
  readonly report: Report;
  readonly design: Design;
  readonly profile: Band;
  readonly wrap: BandSurface;
  readonly stones: PlacedStones;
  /** Castability of the finished piece. */
  readonly check: SheetCheck;
  /** One tile, or one cycle, of each lane; none where there is no pattern. */
  readonly tiles: readonly DrawnTile[];
  /** All tiles of a stretch, of each lane. */
  readonly unrolled: readonly DrawnTile[];
  readonly pictures: readonly SheetPicture[];
  /** SHA-256 of the design's text, hexadecimal. */
  readonly digest: string;
  /** Program and version that made it. */
  readonly tool: string;
}

/** What the castability rules came to. */
export interface SheetCheck {
  readonly rules: { readonly name: string; readonly summary: string };
  readonly results: readonly RuleResult[];
  readonly findings: readonly Finding[];
}

/** Degrees on the ring of its back. */
const BACK = 270;

/** The drawings of a sheet in their order: section, patterns at true size, tiles. */
export function sheetFigures(content: SheetContent): readonly Figure[] {
  const { report, design, profile, wrap, stones, tiles, unrolled } = content;
  const { outside } = design.profile;
  const channel = outside.form === "channel" ? { rail: outside.rail, depth: outside.depth } : {};
  const sizes = { relief: report.allowances.finished.relief ?? 0, ...channel };
  const places = report.band.taper ?? [];
  const sections =
    places.length === 0
      ? [drawSection(profile, sizes)]
      : [
          drawSection(profile, { ...sizes, at: "at the top" }),
          ...places.map(({ angle }) =>
            drawSection(profile.sectionAt(radians(angle)), {
              ...sizes,
              at: angle === BACK ? "at the back" : `at ${angle}°`,
            }),
          ),
        ];
  const map = stones.stones.length === 0 ? [] : [drawStoneMap({ rows: orderStones(stones), band: profile, wrap })];
  return [...sections, ...unrolled.map(drawPatternFigure), ...map, ...tiles.map(drawTileFigure)].map(fitted);
}

/** The sheet as HTML. */
export function makeSheet(content: SheetContent): string {
  const { report, pictures, digest, tool } = content;
  const figures = sheetFigures(content);
  const cross = figures.filter(({ name }) => name === SECTION_FIGURE);
  const flat = figures.filter(({ name }) => name !== SECTION_FIGURE);
  const title = escapeText(report.name);
  const body = [
    header(report),
    pictureRow(pictures),
    ...cross.map(figure),
    ...flat.filter(({ name }) => name === PATTERN_FIGURE).map(figure),
    section("size", "Size", sizesTable(report)),
    section("fit", "Repeats and fit", fitTable(report)),
    ...flat.filter(({ name }) => name !== PATTERN_FIGURE && name !== STONE_MAP).map(figure),
    section("beads", "Beads", beadTable(report)),
    section(
      "stones",
      "Stones",
      ...flat.filter(({ name }) => name === STONE_MAP).map(figure),
      orderTable(orderStones(content.stones), report.stones, SPARE_SHARE),
      rowTable(report.stones),
      ...stoneTexts(content.stones),
    ),
    section("marks", "Lettering and hallmark", markTable(report)),
    section("allowances", "From master to finished ring", allowanceTable(report.allowances, report.weights)),
    section("weights", "Weight", weightTable(report.weights, content.design.material)),
    section("print", "Print and sprue", printLines(report)),
    section("findings", "Findings", castability(content.check), findings(report)),
    section("cautions", "Cautions", `<div class="fine">\n${cautionTexts()}\n</div>`),
    `<footer>${escapeText(`Design ${digest} (SHA-256) · ${tool}`)}</footer>`,
  ];
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>${title}</title>
<style>${SHEET_STYLE}</style>
</head>
<body>
${body.filter((part) => part !== "").join("\n")}
</body>
</html>
`;
}

function stoneTexts(stones: PlacedStones): string[] {
  const texts = stoneCautions(stones);
  return texts.length === 0 ? [] : [...texts, STONE_CAUTION].map(paragraph);
}

function cautionTexts(): string {
  return cautions.map(({ topic, text }) => paragraph(`${capital(topic)}. ${text}`)).join("\n");
}

function header({ name, size, band, volume, mass, weights: table }: Report): string {
  const bore = `bore ${size.diameter.toFixed(3)} mm, circumference ${size.circumference.toFixed(3)} mm`;
  const label = size.system === undefined ? bore : `${size.system} ${size.label}: ${bore}`;
  const weights = Object.entries(mass).map(
    ([symbol, grams]) => `${showGrams(grams, densitySpan(table, symbol))} g in ${symbol}`,
  );
  const line = [
    label,
    `band ${band.width.toFixed(3)} mm wide × ${band.thickness.toFixed(3)} mm thick${band.taper === undefined ? "" : " at the top"}`,
    ...(band.taper ?? []).map(({ angle, width, thickness }) => {
      return `${width.toFixed(3)} mm wide × ${thickness.toFixed(3)} mm thick ${angle === BACK ? "at the back" : `at ${angle}°`}`;
    }),
    `${band.overall.toFixed(3)} mm thick with all that stands on it`,
    `volume ${volume.toFixed(3)} mm³`,
    ...weights,
  ].join("; ");
  return `<header>\n<h1>${escapeText(name)}</h1>\n${paragraph(`${line}. Lengths in mm, of the finished ring.`)}\n</header>`;
}

function pictureRow(pictures: readonly SheetPicture[]): string {
  if (pictures.length === 0) return "";
  const images = pictures.map(
    ({ title, png }) => `<img alt="${escapeText(title)}" src="data:image/png;base64,${base64(png)}">`,
  );
  return `<div class="pictures">\n${images.join("\n")}\n</div>`;
}

function figure(drawing: Figure): string {
  const caption = escapeText(`${drawing.title}, ${drawing.scale}`);
  return `<figure>\n<figcaption>${caption}</figcaption>\n${figureElement(drawing)}\n</figure>`;
}

function findings({ closed, triangles, components, genus, genusExpected, warnings, mesh }: Report): string {
  const handles =
    genus === genusExpected ? `${genus}, as the design implies` : `${genus}, where the design implies ${genusExpected}`;
  const solid = closed
    ? `Closed: ${components} ${components === 1 ? "piece" : "pieces"}, ${triangles} triangles, handles ${handles}.`
    : `NOT closed: ${components} pieces, ${triangles} triangles.`;
  // A value as a program has it is no help on paper; the message tells what it means.
  const told = warnings.map((warning) => describeProblem({ ...warning, value: undefined }));
  const items = told.map((text) => `<li>${escapeText(text).replaceAll("\n", "<br>")}</li>`);
  return [
    closed ? paragraph(solid) : `<p class="failed">${escapeText(solid)}</p>`,
    paragraph(
      `Shortest edge ${mesh.shortestEdge.toPrecision(3)} mm, smallest angle ${mesh.smallestAngle.toPrecision(3)}°.`,
    ),
    items.length === 0 ? paragraph("No warnings.") : `<ul>\n${items.join("\n")}\n</ul>`,
  ].join("\n");
}

/** Findings whose places are told, the worst places first. */
const PLACES_TOLD = 4;

function castability({ rules, results, findings }: SheetCheck): string {
  const items = findings.map(({ severity, message, source, places }) => {
    const told = places.slice(0, PLACES_TOLD).map(({ angle, v }) => `${angle.toFixed(1)}°, v ${v.toFixed(2)} mm`);
    const where = told.length === 0 ? "" : `; at ${told.join("; ")}${places.length > PLACES_TOLD ? " …" : ""}`;
    const grave = severity === "error" ? ' class="failed"' : "";
    return `<li${grave}>${escapeText(`${severity}: ${message}${where} (limit from ${source})`)}</li>`;
  });
  const kept = results.filter((result) => result.kept).length;
  return [
    paragraph(`Castability by the rules ${rules.name}, ${rules.summary}: ${kept} of ${results.length} limits kept.`),
    items.length === 0 ? "" : `<ul>\n${items.join("\n")}\n</ul>`,
  ].join("\n");
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
