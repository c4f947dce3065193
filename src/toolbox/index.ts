/** What the command line needs beside the public names. Not part of the package's interface. */

export { sampleDesign } from "../art/motifs/sample.js";
export { describeProblem } from "../base/errors.js";
export { materialsOf } from "../design/materials.js";
export { PRINT_DEFAULTS, PRINT_STANCES, type PrintSettings } from "../design/print-settings.js";
export { exampleOf } from "../design/reference/example-of.js";
export { type CrossingCheck, checkCrossings } from "../judge/check-crossings.js";
export { describeFault } from "../judge/gate.js";
export { findAlloy } from "../measure/alloys/catalogue.js";
export { lookOf } from "../measure/alloys/look.js";
export { drawFindings } from "../output/drawing/findings-drawing.js";
export { drawFriezeGroups } from "../output/drawing/frieze-drawing.js";
export { drawMotifs } from "../output/drawing/motif-drawing.js";
export { readableEndings, requireReadable } from "../output/files/read-mesh.js";
export { facing } from "../output/picture/aim.js";
export { PICTURE_DEFAULTS } from "../output/picture/options.js";
export { printFigures } from "../output/print/figures.js";
export { printSettings } from "../output/print/settings.js";
export { showJson } from "../output/reference/show-json.js";
export { allowanceRows } from "../output/report/allowance-rows.js";
export { fontOfMark, nameMark, placeMark, workOfMark } from "../output/report/mark-lines.js";
export { nameStance } from "../output/report/name-stance.js";
export { densitySpan, showGrams } from "../output/report/show-grams.js";
export { BENCH_SHEET_DEFAULTS } from "../ring/bench-sheet.js";
export { BUILD_DEFAULTS } from "../ring/build.js";
export { namedFiles } from "../ring/named-files.js";
export { KERNEL_NAMES } from "../union/kernels/catalogue.js";
