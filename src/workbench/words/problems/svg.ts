/** German for problems of SVG files. One sentence a code, without numbers. */
import type { ProblemCode } from "../../../index.js";

export const svgProblems = {
  "svg-cleaned": "Die Zeichnung wurde bereinigt.",
  "svg-colours": "Die Zeichnung hat mehrere Farben: Alle werden gleich hoch, auch Weiß.",
  "svg-cycle": "Ein Teil der Zeichnung verweist auf etwas, das ihn selbst enthält; sie würde nie enden.",
  "svg-empty": "Die SVG-Datei zeichnet nichts, das verwendet werden kann.",
  "svg-encoding": "Die Zeichenkodierung der SVG-Datei ist nicht lesbar.",
  "svg-entities": "Die SVG-Datei erklärt eigene Entitäten in ihrem DOCTYPE; sie werden nicht aufgelöst.",
  "svg-file-missing": "Die SVG-Datei wurde nicht geladen.",
  "svg-file-unreadable": "Die SVG-Datei lässt sich nicht lesen.",
  "svg-length": "Eine Angabe der SVG-Datei ist keine Länge.",
  "svg-malformed": "Die SVG-Datei ist fehlerhaft.",
  "svg-more-warnings": "In der SVG-Datei wird noch mehr nicht befolgt.",
  "svg-not-drawn": "Ein Teil der Zeichnung ist weggelassen.",
  "svg-not-geometry": "Etwas in der Zeichnung ist keine Form, die Metall werden kann.",
  "svg-not-svg": "Die Datei ist kein SVG.",
  "svg-part-unknown": "Diese Farbe, dieses Element oder diese Ebene gibt es in der Zeichnung nicht.",
  "svg-points": "Die Punkte eines Vielecks sind keine Zahlenpaare.",
  "svg-style-unread": "Einige Stilregeln der SVG-Datei werden nicht befolgt.",
  "svg-too-complex": "Die SVG-Datei ist zu verwickelt.",
  "svg-too-far": "Ein Teil der Zeichnung liegt zu weit von der Kachel entfernt.",
  "svg-transform": "Eine Transformation in der SVG-Datei ist fehlerhaft.",
  "svg-viewbox": "Die viewBox der SVG-Datei ist kein Rechteck.",
  "svg-zero-scale": "Ein Teil der Zeichnung ist auf nichts oder ins Maßlose skaliert.",
} as const satisfies Partial<Record<ProblemCode, string>>;
