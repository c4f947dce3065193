/**
 * German for every problem that the library tells, by its code: what stands where a message has no German of its own
 * (`german-phrases.ts`). A code without an entry here does not compile.
 *
 * Terms, one for one thing: band Ringschiene, its width Ringbreite, its thickness Stärke; cross-section Querschnitt; bore
 * Innenseite (comfort: innen bombiert); outside Außenseite; rail Randsteg, channel Nut, seat Musterfläche, step Absatz,
 * bevel Fase, dip Kehlung, taper Verjüngung; tile Kachel, repeats Wiederholungen, lane Bahn, plain zone glatte Zone; region
 * Figur, shape Form, ribbon Band, strand Strang, weave Geflecht; raised erhaben, sunk vertieft, pierced durchbrochen; bead
 * Perle, bead run Perlreihe, pitch Teilung; lettering Schrift, hallmark Punze; casting Guss, master Modell, shrinkage
 * Schwindung, sprue Gusskanal, finishing Versäubern, investment Einbettmasse; mesh Netz; rule set Regelsatz, finding Befund; stone
 * Stein, gem Edelstein, cut Schliff, table Tafel, crown Oberteil, girdle Rundiste, pavilion Unterteil, culet Kalette.
 */
import type { ProblemCode } from "../../index.js";
import { artProblems } from "./problems/art.js";
import { bandProblems } from "./problems/band.js";
import { beadProblems } from "./problems/beads.js";
import { castingProblems } from "./problems/casting.js";
import { documentProblems } from "./problems/document.js";
import { gemProblems } from "./problems/gems.js";
import { outputProblems } from "./problems/output.js";
import { rangeProblems } from "./problems/range.js";
import { solidProblems } from "./problems/solid.js";
import { svgProblems } from "./problems/svg.js";
import { weaveProblems } from "./problems/weave.js";

/** One plain sentence a code. */
export const germanProblems: Readonly<Record<ProblemCode, string>> = {
  ...artProblems,
  ...bandProblems,
  ...beadProblems,
  ...castingProblems,
  ...documentProblems,
  ...gemProblems,
  ...outputProblems,
  ...rangeProblems,
  ...solidProblems,
  ...svgProblems,
  ...weaveProblems,
};
