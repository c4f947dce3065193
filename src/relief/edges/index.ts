/** The catalogue of edges. A new one is a file here, its line in this list and its name in design/pattern/edge.ts. */
import type { EdgeName } from "../../design/pattern/edge.js";
import type { EdgeForm } from "./edge-form.js";
import { scallopEdge } from "./scallop.js";
import { stepsEdge } from "./steps.js";
import { teethEdge } from "./teeth.js";
import { waveEdge } from "./wave.js";

export const EDGES: Readonly<Record<EdgeName, EdgeForm>> = {
  scallop: scallopEdge,
  wave: waveEdge,
  teeth: teethEdge,
  steps: stepsEdge,
};
