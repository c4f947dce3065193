/** German for what is told of the document, its text, options and the worker. */
import type { Phrases } from "../phrasebook.js";

export const documentPhrases: Phrases = {
  // The text.
  "the document is empty": "Der Entwurf ist leer.",
  "the document ends too early": "Der Text endet zu früh.",
  "there is a comma before the closing {0}": "Vor dem schließenden {0} steht ein Komma.",
  "JSON knows no comments": "JSON kennt keine Kommentare.",
  "{0} is no quote in JSON": "{0} ist in JSON kein Anführungszeichen.",
  "{0} is not expected here": "{0} gehört hier nicht hin.",
  'begin with {"annulet": 1}': 'mit {"annulet": 1} anfangen',
  "close every {, [ and quote": "jede {, jede [ und jedes Anführungszeichen schließen",
  "take the comma away": "das Komma streichen",
  "take the comment away": "den Kommentar streichen",
  'write keys and texts in " quotes': 'Namen und Texte in "-Anführungszeichen schreiben',
  'keys and texts stand in " quotes; {0}': 'Namen und Texte stehen in "-Anführungszeichen; {0}',
  "a missing comma, colon or bracket before this is the usual reason":
    "meist fehlt davor ein Komma, ein Doppelpunkt oder eine Klammer",
  JSON: "JSON",
  "the document has {0#} characters; the limit is {1#}": "Der Entwurf hat {0} Zeichen; die Grenze ist {1}.",
  "the document holds more than {0#} values": "Der Entwurf enthält mehr als {0} Werte.",
  "lists and objects are nested more than {0#} deep": "Listen und Objekte sind mehr als {0} Ebenen tief geschachtelt.",
  "leave out what is not part of the design, or draw paths with fewer points":
    "weglassen, was nicht zum Entwurf gehört, oder Pfade mit weniger Punkten zeichnen",
  "{0} is written twice, at {1}": "{0} steht zweimal da: {1}.",
  "line {0#} and line {1#}": "in Zeile {0} und in Zeile {1}",
  "each key once": "jeder Name einmal",
  "take one of the two away": "einen von beiden streichen",
  // What it says.
  "a design is an object": "Ein Entwurf ist ein Objekt, {…}.",
  "a design document, JSON": "ein Entwurf, JSON",
  "there are more than these {0#} problems": "Es gibt noch mehr Fehler als diese {0}.",
  "mend these first": "zuerst diese beheben",
  "the document does not say which version it is written in":
    "Der Entwurf sagt nicht, in welcher Version er geschrieben ist.",
  "there is no such version of the document": "Diese Version des Entwurfs gibt es nicht.",
  "the document is written in version {0}; this tool reads version 1":
    "Der Entwurf ist in Version {0} geschrieben; hier wird Version 1 gelesen.",
  "the document is written in version {0}; this tool reads versions 1 to {1#}":
    "Der Entwurf ist in Version {0} geschrieben; hier werden die Versionen 1 bis {1} gelesen.",
  "a whole number from 1 to {0#}": "eine ganze Zahl von 1 bis {0}",
  'add "annulet": {0#}': '"annulet": {0} hinzufügen',
  'write "annulet": {0#}': '"annulet": {0} schreiben',
  "take a later version of the tool": "eine neuere Version des Programms nehmen",
  "is missing": "Hier fehlt ein Wert.",
  "says nothing yet": "Hier steht noch nichts.",
  "is not what belongs here": "Dieser Wert gehört nicht hierher.",
  "is not a number": "Das ist keine Zahl.",
  "is not a number, but {0}": "Das ist keine Zahl, sondern {0}.",
  "is too large a number": "Die Zahl ist zu groß.",
  "is too far below 0": "Die Zahl liegt zu weit unter 0.",
  "must be a whole number": "Hier gehört eine ganze Zahl hin.",
  "must be one of {0}": "Erlaubt ist eines von: {0}.",
  "must be {0}": "Erlaubt ist: {0}.",
  "must be {0}, not {1}": "Erlaubt ist: {0}; hier steht {1}.",
  "must not be empty": "Das darf nicht leer sein.",
  "must have at least {0#} characters": "Nötig sind mindestens {0} Zeichen.",
  "must have at most {0#} characters": "Erlaubt sind höchstens {0} Zeichen.",
  "must have at least {0#} entries": "Nötig sind mindestens {0} Einträge.",
  "must have at most {0#} entries": "Erlaubt sind höchstens {0} Einträge.",
  "must be empty": "Das muss leer sein.",
  "must be above {0#}": "Der Wert muss über {0} liegen.",
  "must be below {0#}": "Der Wert muss unter {0} liegen.",
  "must be at least {0#}": "Der Wert muss mindestens {0} sein.",
  "must be at most {0#}": "Der Wert darf höchstens {0} sein.",
  "a text": "ein Text",
  "a boolean": "ja oder nein",
  null: "null",
  nothing: "nichts",
  "is given in {0#} ways at once, {1}": "Das ist auf {0} Arten zugleich angegeben: {1}.",
  "keep one of them": "nur eine davon behalten",
  "there is no {0} here": "{0} gibt es hier nicht.",
  "is filled, which needs a cover under 360":
    "Eine gefüllte glatte Zone braucht ein Muster, das weniger als 360° einnimmt.",
  "is another lane's name too": "So heißt schon eine andere Bahn.",
  "is given beside lanes: put it in a lane": "Das steht neben Bahnen: Es gehört in eine Bahn.",
  "are ornaments beyond the pattern, which needs a cover under 360":
    "Ornamente jenseits des Musters brauchen ein Muster, das weniger als 360° einnimmt.",
  "are described, but the pattern goes all the way round": "Enden sind beschrieben, aber das Muster läuft ganz herum.",
  "give either round or bevel": "Entweder „round“ oder „bevel“ angeben, nicht beides.",
  "an object, a list, text, a number, true, false or null":
    "ein Objekt, eine Liste, Text, eine Zahl, true, false oder null",
  "is a text of {0#} characters": "Das ist ein Text von {0} Zeichen.",
  "is nested more than {0#} deep": "Das ist mehr als {0} Ebenen tief geschachtelt.",
  "holds itself": "Das enthält sich selbst.",
  "cannot be read": "Das lässt sich nicht lesen.",
  "is not a plain object": "Das ist kein einfaches Objekt.",
  "is {0}, which a document cannot hold": "Das ist {0}; so etwas kann ein Entwurf nicht enthalten.",
  // Changes.
  "{0} is no path in a document": "{0} ist kein Ort in einem Entwurf.",
  "{0} is no list": "{0} ist keine Liste.",
  "{0} has no entry {1}": "{0} hat keinen Eintrag {1}.",
  "{0} has no fields": "{0} hat keine Felder.",
  "a key of it": "ein Name darin",
  "an entry of it, as [0]": "ein Eintrag davon, wie [0]",
  "{0}, or [{1#}] to add one": "{0}, oder [{1}] für einen neuen",
  "the path to it": "der Weg dorthin",
  // Fields and options.
  "a field is named by a text": "Ein Feld wird durch einen Text benannt.",
  "text, e.g. profile.outside; empty for the whole document":
    "Text, z. B. profile.outside; leer für den ganzen Entwurf",
  "{0} has no field {1}": "{0} hat kein Feld {1}.",
  "the document": "der Entwurf",
  "nothing: it is a plain value": "nichts: es ist ein einfacher Wert",
  "the options are no object": "Die Einstellungen sind kein Objekt.",
  "the options: {0}": "Die Einstellungen: {0}",
  "there is no such option": "Diese Einstellung gibt es nicht.",
  "a tilt is for a tilted ring, and this one is not":
    "Eine Neigung gilt für einen gekippten Ring, und dieser ist es nicht.",
  'a tilt only where the stance is "tilted"': 'eine Neigung nur, wo die Lage "tilted" ist',
  "a Uint8Array": "ein Uint8Array",
  "a function": "eine Funktion",
  "the signal of an AbortController": "das Signal eines AbortController",
  "the file's address, as text or URL, or its bytes, as Uint8Array or ArrayBuffer":
    "die Adresse der Datei, als Text oder URL, oder ihre Bytes, als Uint8Array oder ArrayBuffer",
  "names no file": "Das benennt keine Datei.",
  "are no files": "Das sind keine Dateien.",
  "is no text and no bytes": "Das ist weder Text noch Bytes.",
  "there is no kernel {0}": "Ein Rechenverfahren {0} gibt es nicht.",
  "is no kernel: {0} is missing": "Das ist kein Rechenverfahren: {0} fehlt.",
  "{0}, or an object with name, union, subtract and cut": "{0}, oder ein Objekt mit name, union, subtract und cut",
  "an object of names with text or bytes (Uint8Array), or a function that gives one":
    "ein Objekt aus Namen mit Text oder Bytes (Uint8Array), oder eine Funktion, die eines davon gibt",
  // Limits of the work.
  "the work took longer than {0#} s": "Die Rechnung hat länger als {0} s gedauert.",
  "the art comes to about {0#} corners in all its copies": "Die Zeichnung hat in allen Kopien rund {0} Ecken.",
  "the ring comes to about {0#} triangles": "Der Ring bekäme rund {0} Dreiecke.",
  "simplify what it names, or raise the limit": "vereinfachen, was genannt ist, oder die Grenze heben",
  "draw with fewer corners, cover fewer tiles, or raise the limit":
    "mit weniger Ecken zeichnen, weniger Kacheln bedecken oder die Grenze heben",
  "repeat less often, draw with fewer corners, or raise the limit":
    "seltener wiederholen, mit weniger Ecken zeichnen oder die Grenze heben",
  // The worker.
  "a ring in a worker cannot be asked for {0}": "Einen Ring im Hintergrund kann man nicht nach {0} fragen.",
  "page and worker must be of the same version of annulet":
    "Seite und Hintergrundprozess müssen dieselbe Version von annulet sein",
  "the worker that makes rings answers no more": "Der Hintergrundprozess, der Ringe rechnet, antwortet nicht mehr.",
  "the worker that makes rings answers no more: {0}":
    "Der Hintergrundprozess, der Ringe rechnet, antwortet nicht mehr: {0}",
  "start another worker and open the design again; nothing of the document is lost":
    "einen neuen Hintergrundprozess starten und den Entwurf wieder öffnen; vom Entwurf geht nichts verloren",
  "the ring was closed before it was asked": "Der Ring wurde geschlossen, bevor er gefragt wurde.",
  "ask first, or open it again": "vorher fragen oder ihn wieder öffnen",
  "a kernel of your own cannot be passed to a worker":
    "Ein eigenes Rechenverfahren lässt sich nicht in den Hintergrund geben.",
  "manifold, bvh": "manifold, bvh",
  "open the ring inside the worker with openRing, or name a built-in kernel":
    "den Ring im Hintergrundprozess mit openRing öffnen oder ein eingebautes Verfahren nennen",
  "a cut region does not close": "Eine geschnittene Figur schließt sich nicht. Das ist ein Fehler des Programms.",
};
