/** German for problems of cuts and gems. One sentence a code, without numbers. */
import type { ProblemCode } from "../../../index.js";

export const gemProblems = {
  "cut-unknown": "Diesen Schliff gibt es nicht.",
  "gem-known": "Einen Edelstein dieses Kürzels gibt es schon.",
  "gem-unknown": "Diesen Edelstein gibt es nicht.",
  "proportions-cannot-close": "Mit diesen Proportionen schließen sich die Facetten nicht.",
  "proportions-invalid": "Das ist keine Proportion dieses Schliffs.",
  "stone-size": "Das ist keine Größe dieses Steins.",
  "stones-unheld": "Einige Steine haben zu wenige Körner oder Krappen.",
} as const satisfies Partial<Record<ProblemCode, string>>;
