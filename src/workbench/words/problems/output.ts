/** German for problems of files, pictures and drawings. One sentence a code, without numbers. */
import type { ProblemCode } from "../../../index.js";

export const outputProblems = {
  "file-is-folder": "Das ist ein Ordner, keine Datei.",
  "file-missing": "Die Datei gibt es nicht.",
  "file-not-readable": "Die Datei lässt sich nicht lesen.",
  "file-outside-folder": "Die Datei liegt außerhalb des Ordners des Entwurfs.",
  "file-too-large": "Die Datei ist zu groß.",
  "folder-missing": "Der Ordner ist nicht zugänglich.",
  "format-unknown": "Dieses Dateiformat gibt es nicht.",
  "mesh-file-broken": "Die Netzdatei ist beschädigt.",
  "no-such-part": "Diesen Teil hat das Muster nicht.",
  "output-failed": "Die Datei lässt sich nicht schreiben.",
  "output-folder-missing": "Den Ordner für die Datei gibt es nicht.",
  "output-is-folder": "Das Ziel ist ein Ordner, keine Datei.",
  "output-is-input": "Das Ziel ist eine Datei, die der Entwurf braucht; sie ginge verloren.",
  "output-not-writable": "In diese Datei lässt sich nicht schreiben.",
  "output-twice": "Dieselbe Datei ist zweimal verlangt.",
  "package-font-invalid": "So lässt sich keine Schrift aus einem Paket benennen.",
  "package-missing": "Das Paket mit der Schrift ist nicht da.",
  "pdf-not-printed": "Das PDF konnte nicht gedruckt werden.",
  "pdf-printer-missing": "Es gibt hier kein Programm, das PDF druckt.",
  "picture-invalid": "Das Bild hat nicht vier Bytes je Bildpunkt.",
  "report-without-files": "Das ist kein Bericht, der seine Netzdateien nennt.",
  "scale-out-of-range": "So lässt sich die Zeichnung nicht vergrößern.",
  "tiles-out-of-range": "So viele Kacheln lassen sich nicht zeigen.",
  "view-unknown": "Diese Ansicht gibt es nicht.",
} as const satisfies Partial<Record<ProblemCode, string>>;
