/** German for problems of woven ribbons. One sentence a code, without numbers. */
import type { ProblemCode } from "../../../index.js";

export const weaveProblems = {
  "weave-curl": "Ein Strang kreuzt nur sich selbst; eine solche Schlinge lässt sich noch nicht flechten.",
  "weave-mirror": "Die Symmetrie des Musters vertauscht, was oben und was unten liegt.",
  "weave-mixed": "Dieses Band soll anders geflochten werden als die Bänder vor ihm in seiner Gruppe.",
  "weave-no-order": "Der Strang kann nicht abwechselnd oben und unten liegen.",
  "weave-own": "Der Strang kreuzt sich selbst; die Reihenfolge sagt nicht, welcher Teil oben liegt.",
  "weave-too-fine": "Die geflochtenen Linien haben zu viele Punkte oder Kreuzungen.",
  "weave-too-flat": "Zwei Stränge kreuzen sich in einem zu flachen Winkel.",
  "weave-too-long": "Ein Strang läuft über zu viele Kacheln, ohne unter einem anderen durchzugehen.",
  "weave-too-low": "Der obere Strang liegt an einer Kreuzung nicht hoch genug.",
  "weave-too-tight": "Zwischen zwei Kreuzungen bleibt dem Strang zu wenig Platz, um herabzukommen.",
  "weave-triple": "An einer Stelle kreuzen sich mehr als zwei Stränge.",
} as const satisfies Partial<Record<ProblemCode, string>>;
