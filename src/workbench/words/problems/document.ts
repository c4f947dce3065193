/** German for problems of the document, of options and of the worker. One sentence a code, without numbers. */
import type { ProblemCode } from "../../../index.js";

export const documentProblems = {
  "change-invalid": "Diese Änderung passt nicht zum Entwurf.",
  "document-too-large": "Der Entwurf ist zu groß.",
  "document-version": "Die Version des Entwurfs fehlt oder ist unbekannt.",
  "duplicate-key": "Ein Name steht zweimal im selben Teil.",
  "field-unknown": "Dieses Feld gibt es nicht.",
  internal: "Das ist ein Fehler des Programms, nicht des Entwurfs.",
  "json-malformed": "Der Text ist kein gültiges JSON.",
  "more-problems": "Es gibt noch mehr Fehler.",
  "not-a-design": "Das ist kein Entwurf.",
  "option-invalid": "Diese Einstellung passt hier nicht.",
  "option-missing": "Eine Einstellung fehlt.",
  "option-unknown": "Diese Einstellung gibt es nicht.",
  "question-unknown": "Danach kann ein Ring nicht gefragt werden.",
  "ring-closed": "Der Ring wurde geschlossen, bevor er gefragt wurde.",
  "unknown-key": "Diesen Namen gibt es hier nicht.",
  usage: "Der Befehl ist falsch geschrieben.",
  "value-invalid": "Dieser Wert passt hier nicht.",
  "value-missing": "Hier fehlt ein Wert.",
  "worker-lost": "Der Hintergrundprozess, der Ringe rechnet, antwortet nicht mehr.",
} as const satisfies Partial<Record<ProblemCode, string>>;
