/**
 * German for the sentences of the library, by their English form: messages of problems, what they allow, how to mend them.
 * The terms stand in `german-problems.ts`, the form of blanks in `phrasebook.ts`.
 */
import type { Phrases } from "./phrasebook.js";
import { artPhrases } from "./phrases/art.js";
import { bandPhrases } from "./phrases/band.js";
import { beadPhrases } from "./phrases/beads.js";
import { castingPhrases } from "./phrases/casting.js";
import { commonPhrases } from "./phrases/common.js";
import { documentPhrases } from "./phrases/document.js";
import { outputPhrases } from "./phrases/output.js";
import { reliefPhrases } from "./phrases/relief.js";
import { solidPhrases } from "./phrases/solid.js";
import { svgPhrases } from "./phrases/svg.js";

export const germanPhrases: Phrases = {
  ...commonPhrases,
  ...documentPhrases,
  ...bandPhrases,
  ...artPhrases,
  ...svgPhrases,
  ...reliefPhrases,
  ...beadPhrases,
  ...castingPhrases,
  ...solidPhrases,
  ...outputPhrases,
};
