/** German for problems of cuts and gems. One sentence a code, without numbers. */
import type { ProblemCode } from "../../../index.js";

export const gemProblems = {
  "cut-unknown": "Diesen Schliff gibt es nicht.",
  "gem-known": "Einen Edelstein dieses Kürzels gibt es schon.",
  "gem-unknown": "Diesen Edelstein gibt es nicht.",
  "proportions-cannot-close": "Mit diesen Proportionen schließen sich die Facetten nicht.",
  "proportions-invalid": "Das ist keine Proportion dieses Schliffs.",
  "stone-size": "Das ist keine Größe dieses Steins.",
  "no-cover": "Dafür braucht es ein Muster, das nicht ganz herum geht.",
  "stone-off-seat": "Der Stein steht neben der Musterfläche.",
  "stone-outside-tile": "Der Stein steht außerhalb der Kachel.",
  "stone-too-deep": "Der Stein reicht bis in die Bohrung des Rings.",
  "stones-close": "Steine stehen sehr nah beieinander.",
  "stones-left-out": "Einige Steine sind weggelassen.",
  "stones-near-bore": "Steine kommen der Bohrung des Rings sehr nah.",
  "stones-overlap": "Steine stehen ineinander.",
  "stones-row-full": "So viele Steine passen nicht in die Reihe.",
  "too-many-stones": "Es sind zu viele Steine.",
  "stones-unheld": "Einige Steine haben zu wenige Körner oder Krappen.",
} as const satisfies Partial<Record<ProblemCode, string>>;
