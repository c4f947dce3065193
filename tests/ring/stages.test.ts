// Covers: src/ring/stage.ts
/**
 * What each stage reads: a change of that makes it work again, a change of anything else does not.
 */
import { describe, expect, it } from "vitest";
import { openInside, RING_DEFAULTS } from "../../src/ring/open-ring.js";
import type { StageName } from "../../src/ring/stage.js";
import { stages } from "../../src/ring/stages.js";
import { fontFiles, nameOf } from "../support/fonts.js";

const square = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><rect width="6" height="6"/></svg>';

const design = {
  annulet: 1,
  name: "one",
  size: { diameter: 17 },
  tolerance: 0.06,
  profile: { width: 6, thickness: 2.2, outside: { form: "channel", rail: 1, depth: 0.6 } },
  pattern: {
    fit: { repeats: 6, hold: "band" },
    regions: [
      { path: "M 0.1 0 L 0.25 0.1 L 0.4 0 L 0.25 -0.1 Z", height: 0.3, beads: { diameter: 0.3, on: "border" } },
      { svg: "a.svg", unit: "mm", place: { fit: [1, 1] }, height: 0.3 },
    ],
  },
  beads: [
    { along: "rail", diameter: 0.5 },
    { along: { path: "M 0 0.35 H 1" }, diameter: 0.3 },
  ],
  stones: [{ size: 0.6, place: { form: "single" }, setting: { form: "flush" } }],
  lettering: [{ text: "Reed", at: "bore", depth: 0.2, font: nameOf("nunito") }],
  material: "ag925",
  alloys: [{ symbol: "own", density: 9 }],
  costing: { sprue: 10 },
  casting: { shrinkage: 1.5, finishing: 0.05 },
  sprue: { diameter: 2, length: 6 },
  print: { stance: "lying" },
  rules: { set: "general-casting" },
  proud: false,
};
type Design = typeof design;

const NAMES = Object.keys(stages) as StageName[];
const OPTIONS = { detail: "draft", picture: { width: 40, height: 30 }, pictureWidth: 40, decimate: 0.002 } as const;
const setup = { files: { ...fontFiles, "a.svg": square, "b.svg": square.replace("6", "5") } };

const worked: string[] = [];
const ring = openInside(design, {
  ...setup,
  onStage: (stage, piece) => worked.push(piece === "cast" ? `cast.${stage}` : stage),
});

/** The stages that work after an edit of the design, but for those that ask for files, which every ring does. */
async function workAfter(edit: (copy: Design) => void): Promise<string[]> {
  // What is remembered of the design itself stays remembered.
  await ring.ask(NAMES, OPTIONS);
  worked.length = 0;
  const copy = structuredClone(design);
  edit(copy);
  await ring.change(copy).ask(NAMES, OPTIONS);
  return worked.filter((stage) => !stage.endsWith("Files")).sort();
}

const list = (...lines: string[]) => lines.join(" ").split(" ").sort();
const ofCast = (line: string) => line.replace(/\S+/g, "cast.$&");

/** From the bodies on to the pictures; and the same of the casting, and what is made of both. */
const SOLID =
  "parts headroom prove ringParts union asUnited decimated genus gate solid turned uncrossed measure outermost notices facts judgement studio picture sheetPictures";
const CAST = ofCast("parts headroom prove union decimated genus gate solid turned measure");
const MASTER = "allowances weights sprued sprue castPiece masterPiece castTurned masterTurned printed printFigures";
const BUILT = `${SOLID} ${CAST} ${MASTER}`;
/** What is drawn of the flat pattern. */
const FLAT = "stretch unrolledBand tile laneTiles";
const LAID = `pattern seatCarries beads ${ofCast("pattern seatCarries beads")}`;
const BAND = `fit profile seat filling wrap marks ${ofCast("fit profile seat filling wrap marks")}`;
/** Looked at anew whenever the pattern changes, and then found to be the same. */
const NAMED =
  "fitPattern keepsSize fontUses drawingUses imageUses filling coverStop stoneTiles cast.fontUses cast.filling";

const cases: readonly (readonly [what: string, edit: (copy: Design) => void, works: string[]])[] = [
  ["the name", (d) => (d.name = "two"), list("facts tile laneTiles")],
  [
    "the size",
    (d) => (d.size.diameter = 17.1),
    list("size boreRadius width cast.width drawnPattern stones cast.stones", BAND, LAID, FLAT, BUILT),
  ],
  [
    "the tolerance",
    (d) => (d.tolerance = 0.07),
    list("bodyTolerance drawnPattern stones cast.stones", BAND, LAID, FLAT, BUILT),
  ],
  [
    "the rails",
    (d) => (d.profile.outside.rail = 1.1),
    list("width cast.width drawnPattern stones cast.stones", BAND, LAID, FLAT, BUILT),
  ],
  [
    "the repeats",
    (d) => (d.pattern.fit.repeats = 7),
    list(
      NAMED,
      "fit width wrap marks drawnPattern stones cast.stones cast.fit cast.width cast.wrap cast.marks",
      LAID,
      FLAT,
      BUILT,
    ),
  ],
  ["a height", (d) => (d.pattern.regions[0].height = 0.31), list(NAMED, "drawnPattern", LAID, FLAT, BUILT)],
  [
    "a drawing's name",
    (d) => (d.pattern.regions[1].svg = "b.svg"),
    list(NAMED, "drawings drawnPattern stones cast.stones", LAID, FLAT, BUILT),
  ],
  [
    "beads on a region",
    (d) => (d.pattern.regions[0].beads = { diameter: 0.31, on: "border" }),
    list(NAMED, "drawnPattern", LAID, FLAT, BUILT),
  ],
  [
    "beads on the rails",
    (d) => (d.beads[0].diameter = 0.51),
    list("fitPattern drawingUses tileRuns beads cast.beads tile laneTiles", BUILT),
  ],
  [
    "beads along a path of the tile",
    (d) => (d.beads[1].diameter = 0.31),
    list("fitPattern drawingUses tileRuns drawnPattern", LAID, FLAT, BUILT),
  ],
  [
    "a stone",
    (d) => (d.stones[0].size = 0.7),
    list("drawingUses stoneTiles stones cast.stones", BUILT.replace("ringParts ", "")),
  ],
  [
    "the lettering",
    (d) => (d.lettering[0].text = "Sedge"),
    list("fontUses seatCarries marks cast.fontUses cast.seatCarries cast.marks", BUILT),
  ],
  [
    "the material",
    (d) => (d.material = "au750-yellow"),
    list("metal facts look picture sheetPictures allowances weights sprue"),
  ],
  ["its own alloys", (d) => (d.alloys[0].density = 9.5), list("metal patternMetal weights")],
  ["what is melted", (d) => (d.costing.sprue = 11), list("weights")],
  [
    "the shrinkage",
    (d) => (d.casting.shrinkage = 1.6),
    list("allowance patternMetal allowances weights masterPiece masterTurned printed printFigures"),
  ],
  [
    "what finishing takes off",
    (d) => (d.casting.finishing = 0.06),
    list(
      "allowance patternMetal",
      ofCast("size boreRadius fit width profile seat fontUses filling pattern seatCarries wrap marks beads stones"),
      CAST,
      MASTER,
    ),
  ],
  [
    "the sprue",
    (d) => (d.sprue.length = 7),
    list("sprued sprue castPiece masterPiece castTurned masterTurned printed printFigures"),
  ],
  ["the stance", (d) => (d.print.stance = "standing"), list("printSettings printed printFigures")],
  ["the rules", (d) => (d.rules.set = "conservative"), list("rules judgement")],
  ["whether relief may stand proud", (d) => (d.proud = true), list("headroom")],
];

describe("after a change of", () => {
  it.each(cases)("%s, what reads it works and nothing else", async (_, edit, works) => {
    expect(await workAfter(edit)).toEqual(works);
  });

  it("files, only those that the design names matter", async () => {
    await ring.ask(NAMES, OPTIONS);
    worked.length = 0;
    await ring.change(design, { files: { ...setup.files, "c.svg": square } }).ask(NAMES, OPTIONS);
    expect(worked.filter((stage) => !stage.endsWith("Files"))).toEqual([]);
    await ring.change(design, { files: { ...setup.files, "a.svg": square.replace("6", "5") } }).ask(["solid"]);
    expect(worked).toContain("drawings");
    expect(worked).not.toContain("fonts");
  });
});

describe("the table of stages", () => {
  it("lists each stage after those that it reads", () => {
    for (const [i, name] of NAMES.entries()) {
      const stage = stages[name];
      if (stage.kind === "choice") continue;
      for (const read of stage.reads) {
        const [first, second] = read.split(".");
        if (first === "option") expect(RING_DEFAULTS).toHaveProperty(second);
        if (first === "design" || first === "option") continue;
        expect(NAMES.slice(0, i), `${name} reads ${read}`).toContain(first === "cast" ? second : first);
      }
    }
  });

  it("has a case here for each stage that works, and one that leaves it alone", () => {
    const names = NAMES.filter((name) => stages[name].kind !== "choice" && !name.endsWith("Files"));
    const options = ["deviation", "fonts", "images"];
    for (const name of names.filter((one) => !options.includes(one))) {
      const works = cases.filter(([, , list]) => list.includes(name) || list.includes(`cast.${name}`));
      expect(works.length, name).toBeGreaterThan(0);
      expect(works.length, name).toBeLessThan(cases.length);
    }
  });
});
