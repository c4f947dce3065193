/**
 * annulet fit: how many repeats go round, and what each number would take.
 */
import { type Fit, type FitCandidate, fitDesign, type LaneFit, readDesign } from "../../index.js";
import { type Command, JSON_OPTION } from "../command.js";
import { DESIGN_ARGUMENT, loadDesign } from "../design-file.js";
import { DESIGN_OPTIONS, type DesignOptions } from "../design-options.js";
import { EXIT } from "../exit.js";
import { type Io, print, printJson } from "../io.js";
import { type LimitOptions, limitsOf, MAX_SECONDS } from "../limit-options.js";
import { fixed, NOTHING, signed, signedPercent } from "../show.js";
import { type Column, showTable } from "../table.js";

const COLUMNS: readonly Column[] = [
  { head: "" },
  { head: "repeats", align: "right" },
  { head: "tile width", align: "right" },
  { head: "tile height", align: "right" },
  { head: "band width", align: "right" },
  { head: "change", align: "right" },
  { head: "stretch", align: "right" },
  { head: "aspect error", align: "right" },
];

const LEGEND = [
  "Lengths in mm. Tile, band width and its change are those with the tile held true; stretch and aspect error are",
  "those with the band held as drawn: the tile's height over what its aspect asks for, and how far that is from 1.",
].join("\n");

const LANES_LEGEND = [
  "Lengths in mm. Of each lane: tile, band width and its change are those at which the lane's share of the seat makes its",
  "tiles true; stretch and aspect error are those with the lane held at its share of the band as drawn.",
].join("\n");

type OneFit = Omit<Fit, "lanes">;

interface FitOptions extends Pick<LimitOptions, "maxSeconds">, DesignOptions {
  readonly json?: boolean;
}

export const fitCommand: Command<FitOptions> = {
  name: "fit",
  each: true,
  details: [
    "The number that annulet make would take is marked with *.",
    "Drawings, images and fonts that the design names are not opened: the fit does not depend on them, and what is wrong in them is said by annulet tile and annulet make.",
  ],
  examples: [
    { line: "annulet fit ring.json", does: "choose a number of repeats, then write it into the design" },
    { line: "annulet fit ring.json --size uk:T", does: "how it would come out in another size" },
  ],
  args: [DESIGN_ARGUMENT],
  options: [...DESIGN_OPTIONS, MAX_SECONDS, JSON_OPTION],
  async run({ args: [path], options }, io) {
    const design = readDesign(await loadDesign(path, io, options));
    const fit = fitDesign(design, { limits: limitsOf(options) });
    const drawnWidth = design.profile.width;
    if (options.json) printJson(io, { drawnWidth, ...fit });
    else printFit(fit, drawnWidth, io);
    return EXIT.done;
  },
};

function printFit({ lanes, ...fit }: Fit, drawnWidth: number, io: Io): void {
  if (lanes.length === 0) printTable(fit, drawnWidth, io);
  lanes.forEach((lane, i) => {
    print(io, `${i === 0 ? "" : "\n"}${lane.name}, ${fixed(lane.height)} mm high`);
    printTable(lane, drawnWidth, io);
  });
  const words = lanes.length === 0 ? describeFit(fit, drawnWidth) : describeLanes(lanes, drawnWidth);
  print(io, `\n${lanes.length === 0 ? LEGEND : LANES_LEGEND}\n\n${words}`);
}

function printTable(fit: OneFit, drawnWidth: number, io: Io): void {
  print(
    io,
    showTable(
      COLUMNS,
      fit.candidates.map((one) => toRow(one, fit, drawnWidth)),
    ),
  );
}

function toRow(one: FitCandidate, fit: OneFit, drawnWidth: number): string[] {
  const { repeats, tileWidth, tileHeight, bandWidth, stretch } = one;
  const possible = bandWidth !== undefined;
  return [
    repeats === fit.repeats ? "*" : "",
    String(repeats),
    fixed(tileWidth),
    fixed(tileHeight),
    possible ? fixed(bandWidth) : NOTHING,
    possible ? signed(bandWidth - drawnWidth) : NOTHING,
    fixed(stretch),
    signedPercent(stretch - 1),
  ];
}

/** The band's width in words; each lane's number stands in its table. */
function describeLanes(lanes: readonly LaneFit[], drawnWidth: number): string {
  const [{ bandWidth, hold }] = lanes;
  const tiles = lanes.map(({ name, repeats, tileWidth, tileHeight }) => {
    return `${name} has ${repeats} tiles of ${fixed(tileWidth)} × ${fixed(tileHeight)} mm`;
  });
  const width =
    hold === "tile"
      ? `All keep their shape, so the band becomes ${fixed(bandWidth)} mm wide, ${signed(bandWidth - drawnWidth)} mm.`
      : `The band stays ${fixed(bandWidth)} mm wide.`;
  return `* ${tiles.join("; ")}. ${width}`;
}

/** What the chosen fit means, in words. */
function describeFit(fit: OneFit, drawnWidth: number): string {
  const { repeats, rows, tileWidth, tileHeight, bandWidth, hold, aspectError } = fit;
  const tiles = `* ${repeats} tiles go round${rows === 1 ? "" : ` in ${rows} rows`}, each ${fixed(tileWidth)} × ${fixed(tileHeight)} mm`;
  const width = `${fixed(bandWidth)} mm`;
  if (hold === "tile") {
    const change = bandWidth - drawnWidth;
    if (fixed(change) === fixed(0)) return `${tiles}. They fit the band as it is drawn, ${width} wide.`;
    const direction = change > 0 ? "wider" : "narrower";
    return `${tiles}. They keep their shape, so the band becomes ${width} wide, ${fixed(Math.abs(change))} mm ${direction} than drawn.`;
  }
  if (signedPercent(aspectError) === signedPercent(0))
    return `${tiles}. The band stays ${width} wide, and they keep their shape.`;
  const direction = aspectError > 0 ? "stretched" : "squeezed";
  return `${tiles}. The band stays ${width} wide, so they are ${direction} across it by ${fixed(Math.abs(aspectError) * 100)} %.`;
}
