/**
 * Asks two independent programs whether an STL is one closed solid, and compares volume and triangles with the report:
 * `node .ci/check-solid.mjs ring.stl report.json`. A program that is not installed is said to be skipped.
 */
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";

/** Largest relative difference of volumes: coordinates in the file are float32, and the programs sum in float32. */
const VOLUME_TOLERANCE = 1e-4;

const [stl, reportFile] = process.argv.slice(2);
const report = JSON.parse(readFileSync(reportFile, "utf8"));
let failures = 0;

function check(what, met, wanted, fits = met === wanted) {
  if (!fits) failures++;
  console.log(`${fits ? "ok  " : "FAIL"} ${what}: ${met}${fits ? "" : `, wanted ${wanted}`}`);
}

function checkVolume(program, volume) {
  const off = Math.abs(volume / report.volume - 1);
  check(`${program} volume`, volume, `${report.volume} within ${VOLUME_TOLERANCE}`, off <= VOLUME_TOLERANCE);
}

/** What the program prints, or undefined if it is not installed. */
function ask(program, args) {
  const { error, stdout, stderr, status } = spawnSync(program, args, { encoding: "utf8", timeout: 120_000 });
  if (error?.code === "ENOENT") {
    console.log(`skipped: ${program} is not installed`);
    return undefined;
  }
  if (error !== undefined || status !== 0) throw new Error(`${program} failed: ${error ?? stderr}`);
  return stdout;
}

/** The number after a label, NaN where the label is missing. */
function numberAfter(text, label) {
  return Number(new RegExp(`${label}\\s*[:=]\\s*(-?[\\d.]+)`).exec(text)?.[1] ?? Number.NaN);
}

check("report: closed", report.closed, true);
check("report: components", report.components, 1);

// admesh exits with 0 on a broken mesh too, so what it prints is read.
const admesh = ask("admesh", [stl]);
if (admesh !== undefined) {
  check("admesh triangles", numberAfter(admesh, "Number of facets"), report.triangles);
  check("admesh parts", numberAfter(admesh, "Number of parts"), 1);
  const faults = ["Total disconnected facets", "Degenerate facets", "Edges fixed", "Facets removed", "Facets added"];
  for (const fault of [...faults, "Facets reversed", "Backwards edges"]) {
    check(`admesh ${fault.toLowerCase()}`, numberAfter(admesh, fault), 0);
  }
  checkVolume("admesh", numberAfter(admesh, "Volume"));
}

const slicer = ask("prusa-slicer", ["--info", stl]);
if (slicer !== undefined) {
  check("prusa-slicer manifold", /manifold = (\w+)/.exec(slicer)?.[1], "yes");
  check("prusa-slicer triangles", numberAfter(slicer, "number_of_facets"), report.triangles);
  check("prusa-slicer parts", numberAfter(slicer, "number_of_parts"), 1);
  checkVolume("prusa-slicer", numberAfter(slicer, "volume"));
}

process.exitCode = failures === 0 ? 0 : 1;
