/** German for problems of casting, materials, weights and rules. One sentence a code, without numbers. */
import type { ProblemCode } from "../../../index.js";

export const castingProblems = {
  "allowance-invalid": "Das ist keine Menge.",
  "alloy-known": "Einen Werkstoff dieses Kürzels gibt es schon.",
  "alloy-unclear": "Die Dichte der Legierung fehlt oder ist doppelt angegeben.",
  "finishing-out-of-range": "So viel nimmt das Versäubern von einer Fläche nicht ab.",
  "finishing-too-deep": "Das Versäubern nimmt mehr ab, als die Buchstaben hoch sind.",
  "mass-density": "Das ist keine Dichte.",
  "mass-volume": "Das ist kein Volumen eines Körpers.",
  "material-unknown": "Diesen Werkstoff gibt es nicht.",
  "mix-density": "Ein Teil der Mischung hat keine brauchbare Dichte.",
  "mix-shares": "Die Anteile der Mischung ergeben kein Ganzes.",
  "rules-unknown": "Diesen Regelsatz gibt es nicht.",
  "shrinkage-out-of-range": "Das ist keine Schwindung eines Gusses.",
  "sprue-too-wide": "Der Gusskanal ist für diese Stelle der Ringschiene zu breit.",
  "wax-density": "Das ist keine Dichte.",
  "wax-mass": "Das ist kein Gewicht.",
} as const satisfies Partial<Record<ProblemCode, string>>;
