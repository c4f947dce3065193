/** German for problems of ranges, many rings of one design. One sentence a code, without numbers. */
import type { ProblemCode } from "../../../index.js";

export const rangeProblems = {
  "axes-alike": "Zwei Achsen der Reihe heißen gleich.",
  "axes-uneven": "Achsen, die paarweise gehen, haben nicht gleich viele Werte.",
  "design-file-missing": "Die Entwurfsdatei wurde nicht geladen.",
  "design-file-unreadable": "Die Entwurfsdatei lässt sich nicht lesen.",
  "folder-taken": "In diesem Ordner liegt, was keine Reihe gemacht hat.",
  "maker-lost": "Der Prozess, der den Ring machte, ging verloren.",
  "manifest-damaged": "Das Verzeichnis der Reihe ist beschädigt.",
  "name-unsafe": "Der Name taugt nicht auf jedem System als Dateiname.",
  "names-alike": "Zwei Varianten hießen gleich.",
  "parts-differ": "Die Teile gehören nicht zu einer Reihe.",
  "queue-away": "Redis ist nicht erreichbar.",
  "queue-busy": "Ein früherer Lauf ist noch bei der Arbeit.",
  "queue-invalid": "Das ist keine Adresse eines Redis-Servers.",
  "queue-taken-over": "In diesem Ordner hat ein anderer Lauf begonnen.",
  "rows-file-missing": "Die Tabelle wurde nicht geladen.",
  "rows-file-unreadable": "Die Tabelle lässt sich nicht lesen.",
  "rows-malformed": "Die Tabelle ist fehlerhaft.",
  "size-step-invalid": "So lassen sich die Größen nicht durchgehen.",
  "store-failed": "Der Speicher der Reihe hat versagt.",
  "store-invalid": "Das Modul ergibt keinen Speicher für Reihen.",
  "too-many-variants": "Der Plan ergibt zu viele Varianten.",
  "variant-stuck": "Die Variante endete nicht und wurde abgebrochen.",
} as const satisfies Partial<Record<ProblemCode, string>>;
