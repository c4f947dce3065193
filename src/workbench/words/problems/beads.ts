/** German for problems of bead runs, of lettering and the hallmark. One sentence a code, without numbers. */
import type { ProblemCode } from "../../../index.js";

export const beadProblems = {
  "bead-count": "Eine Zahl von Perlen lässt sich nicht halten, wo Ecken oder Treffpunkte die Reihe teilen.",
  "bead-line-too-short": "Eine Linie der Perlreihe ist zu kurz.",
  "bead-sizes": "Die Perlen einer Reihe können nicht zugleich zunehmen und abwechseln.",
  "beads-cleared": "Im Punzenfeld sind Perlen weggelassen.",
  "beads-crowded": "Perlen überlappen Perlen einer anderen Reihe zu weit.",
  "beads-gap": "Zwischen den Perlen der Reihe klaffen Lücken.",
  "beads-in-wall": "Die Wand neben der Perlreihe steht in ihren Perlen.",
  "beads-off-region": "So weit innerhalb der Figur liegt keine Linie für die Perlen.",
  "beads-off-seat": "Die Perlreihe liegt außerhalb der Musterfläche.",
  "beads-overlap": "Die Perlen der Reihe überlappen sich.",
  "beads-pinched": "Die Perlreihe biegt so scharf ab, dass sich die Perlen an der Ecke überlappen.",
  "beads-uneven": "Die Perlen lassen sich auf dieser Strecke nicht gleichmäßig verteilen.",
  "bore-narrowed": "Erhabene Schrift an der Innenseite verengt den Ring.",
  "lettering-on-hallmark": "Die Schrift steht im Punzenfeld, das glatt bleiben soll.",
  "mark-in-filling": "Die Schrift reicht in die glatte Zone, die gefüllt ist.",
  "mark-too-long": "Die Schrift ist länger als der Umfang.",
  "mark-too-wide": "Die Schrift ist breiter als ihre Fläche.",
  "no-bore-face": "Die gerundeten Innenkanten lassen von der Innenseite nichts, worauf Schrift stehen kann.",
  "no-centre-line": "Eine gefüllte Figur hat keine Mittellinie für Perlen.",
  "no-rail": "Die Ringschiene hat keinen Randsteg mit flacher Oberseite.",
  "no-rails": "Die Ringschiene hat keine Randstege.",
  "no-step": "Die Ringschiene hat keinen Absatz an den Rändern, in dem Perlen stehen könnten.",
  "stroke-thin": "Ein Strich der Schrift ist sehr dünn und kommt vielleicht nicht heraus.",
  "too-many-beads": "Der Entwurf verlangt zu viele Perlen.",
} as const satisfies Partial<Record<ProblemCode, string>>;
