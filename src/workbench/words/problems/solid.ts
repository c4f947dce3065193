/** German for problems of the finished solid: whether it is closed, as drawn, and how it was made. One sentence a code. */
import type { ProblemCode } from "../../../index.js";

export const solidProblems = {
  "border-tangled": "Der Rand eines offenen Netzes zerfällt nicht in einfache Schleifen.",
  "broken-too-large": "Die gebrochenen Kanten treffen sich in der Wand.",
  crossing: "Dreiecke des Netzes durchdringen sich.",
  "decimation-refused": "Mit weniger Dreiecken wäre der Ring nicht geschlossen: Er behält alle.",
  empty: "Es gibt keine Dreiecke.",
  "genus-differs": "Der Ring hat nicht so viele Öffnungen, wie der Entwurf vorsieht.",
  headroom: "Das Relief ragt über die Randstege und würde zuerst abgenutzt.",
  "height-too-large": "Das Relief ist für diese Höhlung der Musterfläche zu hoch.",
  "hollow-filled": "Eingeschlossene Hohlräume unter Perlen wurden gefüllt.",
  "kernel-failed": "Das Vereinigen der Körper ist gescheitert. Das ist ein Fehler des Programms, nicht des Entwurfs.",
  "kernel-replaced": "Ein anderes Rechenverfahren hat die Körper vereinigt.",
  "kernel-unavailable": "Das Rechenverfahren, das die Körper vereinigt, ließ sich nicht laden.",
  "loose-pieces": "Teile des Ringes hängen an nichts.",
  "mesh-malformed": "Das Netz ist fehlerhaft.",
  "mesh-open": "Das Netz ist nicht geschlossen.",
  "mesh-without-extent": "Es gibt nichts zu sehen: Das Netz hat keine Ausdehnung.",
  "mesh-without-volume": "Das Netz umschließt kein Volumen.",
  "not-as-drawn": "Der Ring ist geschlossen, aber nicht der, der gezeichnet wurde.",
  "not-closed": "Das Netz ist nicht die Oberfläche eines Körpers.",
  "seam-mismatch": "Die beiden Enden eines Abschnitts passen nicht aneinander.",
  "too-long": "Die Rechnung dauert zu lange.",
  "too-many-corners": "Die Zeichnung hat in allen Kopien zu viele Ecken.",
  "too-many-triangles": "Der Ring bekäme zu viele Dreiecke.",
  "transform-invalid": "Die Matrix ist keine brauchbare Abbildung des Raumes.",
  "triangulation-failed":
    "Ein flacher Teil des Reliefs ließ sich nicht mit Dreiecken bedecken: Seine Umrisse berühren oder kreuzen sich.",
} as const satisfies Partial<Record<ProblemCode, string>>;
