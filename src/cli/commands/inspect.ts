/**
 * annulet inspect: whether a mesh file holds a solid, and what that solid measures, weighs and fits.
 */
import { basename } from "node:path";
import {
  type Alloy,
  AnnuletError,
  alloys,
  type Bore,
  checkWalls,
  findBore,
  type Measure,
  type Mesh,
  massOf,
  measureMesh,
  type SizeRow,
  sizeTable,
  type Wall,
} from "../../index.js";
import { type CrossingCheck, checkCrossings, describeFault, readMetal, showGrams } from "../../toolbox/index.js";
import { type Command, JSON_OPTION } from "../command.js";
import { EXIT } from "../exit.js";
import { type Io, print, printJson } from "../io.js";
import { readMeshBytes } from "../read-mesh-file.js";
import { isReported } from "../reported-mesh.js";
import { fixed, NOTHING, showPairs, signed } from "../show.js";
import { type Column, showTable } from "../table.js";
import { tint } from "../tint.js";

interface InspectOptions {
  readonly components?: number;
  readonly report?: string;
  readonly json?: boolean;
}

export const inspectCommand: Command<InspectOptions> = {
  name: "inspect",
  details: [
    "Lengths in STL and OBJ are taken as mm; 3MF and GLB say their unit. Exit code 1 when the mesh is not the surface of a solid.",
  ],
  examples: [
    { line: "annulet inspect ring.stl", does: "is it closed, what is its volume, what does it weigh" },
    { line: "annulet inspect ring.stl --report report.json", does: "is it the mesh that the report was written with" },
  ],
  args: [{ name: "<file>", description: "mesh file: .stl, .obj, .3mf or .glb" }],
  options: [
    {
      flags: "--components <count>",
      description: "how many separate pieces there should be, sealed hollows among them (default: 1)",
      number: true,
    },
    {
      flags: "-r, --report <file>",
      description: "say whether the mesh is one that this report of make was written with",
    },
    JSON_OPTION,
  ],
  async run({ args: [path], options }, io) {
    const bytes = readMeshBytes(path);
    const reported = options.report === undefined ? undefined : isReported(bytes, options.report);
    const { mesh, stones } = await readMetal(bytes, basename(path));
    const check = await checkCrossings(mesh, { components: options.components });
    const measure = measureAny(mesh);
    const found: Inspection = {
      check,
      measure,
      bore: findBore(mesh, { inertia: check.closed ? measure?.inertia : undefined }),
      wall: check.closed ? checkWalls(mesh, { places: 1 }).thinnest[0] : undefined,
      reported,
      stones,
    };
    if (options.json) printJson(io, toJson(found));
    else printInspection(found, io);
    return check.closed && reported !== false ? EXIT.done : EXIT.check;
  },
};

interface Inspection {
  readonly check: CrossingCheck;
  /** Undefined for a mesh so flat that it has no volume at all. */
  readonly measure: Measure | undefined;
  /** Undefined where no hole goes through. */
  readonly bore: Bore | undefined;
  /** The thinnest; undefined where the mesh is not closed, or no two faces make a wall. */
  readonly wall: Wall | undefined;
  /** Whether the report was written with this mesh; undefined where none was named. */
  readonly reported: boolean | undefined;
  /** Stones of the file, which are no part of what is judged. */
  readonly stones: number;
}

/** Area and bounds of any mesh; undefined for one so flat that it has no volume at all. */
function measureAny(mesh: Mesh): Measure | undefined {
  try {
    return measureMesh(mesh);
  } catch (error) {
    if (error instanceof AnnuletError && error.code === "mesh-without-volume") return undefined;
    throw error;
  }
}

/** Volume and masses are null where the mesh is not closed: they would mean nothing. */
function toJson({ check, measure, bore, wall, reported, stones }: Inspection) {
  const { closed, vertices, edges, triangles, components, voids, genus, volume, faults, float32 } = check;
  return {
    closed,
    reported,
    ...(stones === 0 ? {} : { stones }),
    triangles,
    vertices,
    edges,
    components,
    voids,
    genus: genus ?? null,
    volume: closed ? volume : null,
    area: measure?.area ?? null,
    bounds: measure?.bounds ?? null,
    bore: bore === undefined ? null : { ...bore, sizes: sizesOf(bore) },
    thinnestWall: wall ?? null,
    smallestAngle: check.smallestAngle ?? null,
    shortestEdge: check.shortestEdge ?? null,
    faults,
    float32Faults: float32.faults,
    crossings: check.crossings ?? null,
    mass: closed ? Object.fromEntries(alloys.map((alloy) => [alloy.symbol, massOf(volume, alloy)])) : null,
  };
}

function printInspection({ check, measure, bore, wall, reported, stones }: Inspection, io: Io): void {
  const { closed, volume } = check;
  const yes = tint(io, io.stdout, "green", "yes");
  const no = tint(io, io.stdout, "red", "no");
  print(
    io,
    showPairs([
      ["closed", closed ? yes : no],
      ...(reported === undefined
        ? []
        : [["reported", reported ? yes : `${no}: the report is another mesh's`] as const]),
      ...(stones === 0 ? [] : [["stones", `${stones}, left out: only the metal is judged`] as const]),
      ["triangles", String(check.triangles)],
      ["vertices", String(check.vertices)],
      ["components", String(check.components)],
      ["genus", check.genus === undefined ? NOTHING : String(check.genus)],
      ["crossings", describeCrossings(check)],
      ["volume", closed ? `${fixed(volume)} mm³` : NOTHING],
      ["area", measure === undefined ? NOTHING : `${fixed(measure.area)} mm²`],
      ...describeBounds(measure),
      ["bore", bore === undefined ? NOTHING : describeBore(bore)],
      ["wall", wall === undefined ? NOTHING : `${fixed(wall.thickness)} mm at the thinnest, at ${place(wall.from)}`],
    ]),
  );
  if (bore !== undefined) printSizes(bore, io);
  if (closed) printMasses(volume, io);
  else printFaults(check, io);
}

/** Pairs of triangles that meet where they do not hang together. */
function describeCrossings({ crossings }: CrossingCheck): string {
  if (crossings === undefined) return NOTHING;
  const { count, deepest, complete } = crossings;
  const found = count === 0 ? "none" : `${count} by up to ${deepest.toPrecision(2)} mm`;
  return complete ? found : `${found}; too many triangles lie over each other to look at all`;
}

function describeBounds(measure: Measure | undefined): [string, string][] {
  if (measure === undefined) return [["size", NOTHING]];
  const { min, max } = measure.bounds;
  return [
    ["size", `${min.map((low, axis) => fixed(max[axis] - low)).join(" × ")} mm`],
    ["from", place(min)],
    ["to", place(max)],
  ];
}

function place(point: readonly number[]): string {
  return `(${point.map((value) => fixed(value)).join(", ")})`;
}

function describeBore({ diameter, circumference, axis, through }: Bore): string {
  const [along] = ["x", "y", "z"].filter((_, k) => axis[k] === 1);
  return `${fixed(diameter)} mm across, ${fixed(circumference)} mm round, along ${along ?? place(axis)} through ${place(through)}`;
}

/** The nearest label in every system; none where the hole is too small or too wide to be a ring's. */
function sizesOf({ circumference }: Bore): readonly SizeRow[] {
  try {
    return sizeTable(circumference);
  } catch (error) {
    if (error instanceof AnnuletError && error.code === "size-out-of-range") return [];
    throw error;
  }
}

function printSizes(bore: Bore, io: Io): void {
  const rows = sizesOf(bore).flatMap(({ title, label, difference }) =>
    label === undefined || difference === undefined ? [] : [[title, label, signed(difference)]],
  );
  if (rows.length === 0) return;
  const columns: readonly Column[] = [
    { head: "finger size" },
    { head: "nearest", align: "right" },
    { head: "larger by mm round", align: "right" },
  ];
  print(io, `\n${showTable(columns, rows)}`);
}

function printMasses(volume: number, io: Io): void {
  const columns: readonly Column[] = [{ head: "material" }, { head: "" }, { head: "g", align: "right" }];
  const rows = alloys.map((alloy) => [alloy.symbol, alloy.name, showGrams(massOf(volume, alloy), spanOf(alloy))]);
  print(io, `\n${showTable(columns, rows)}`);
}

/** Of the published densities, over the density. */
function spanOf({ density, range }: Alloy): number {
  return range === undefined ? 0 : (range[1] - range[0]) / density;
}

function printFaults({ faults, float32 }: CrossingCheck, io: Io): void {
  print(io, "\nIt is not the surface of a solid (places in mm):");
  for (const fault of faults) print(io, `  ${describeFault(fault)}`);
  const known = new Set(faults.map((fault) => `${fault.code} ${fault.count}`));
  // What is wrong already before rounding need not be told twice.
  const added = float32.faults.filter((fault) => !known.has(`${fault.code} ${fault.count}`));
  for (const fault of added) print(io, `  rounded to float32: ${describeFault(fault)}`);
}
