/** German for rules between fields: what does not go together in a document. */
import type { Phrases } from "../phrasebook.js";

export const betweenPhrases: Phrases = {
  'belongs to "at": "rail", not {0}': 'Das gehört zu "at": "rail", nicht zu {0}.',
  "belongs to an image or a texture, and none is given":
    "Das gehört zu einem Bild oder einer Textur, und keines ist angegeben.",
  "belongs to an image: a texture is drawn as smooth as it is":
    "Das gehört zu einem Bild: Eine Textur ist so glatt, wie sie gezeichnet ist.",
  "belongs to an image: a texture meets itself exactly":
    "Das gehört zu einem Bild: Eine Textur trifft sich selbst genau.",
  "belongs to an svg file or a text, and none is given":
    "Das gehört zu einer SVG-Datei oder einem Text, und keines ist angegeben.",
  "belongs to an svg file, and none is given": "Das gehört zu einer SVG-Datei, und keine ist angegeben.",
  'cannot be a side of the border where the ribbon tapers: say "centre"':
    'Wo sich das Band verjüngt, kann es nicht innen oder außen am Umriss liegen: "centre" angeben.',
  "cannot be grown or shrunk: give the region a ribbon instead":
    "Das lässt sich nicht wachsen oder schrumpfen lassen: die Figur stattdessen als Band zeichnen.",
  "cannot be shared by a run that stops with the cover":
    "Eine Reihe, die mit dem Muster endet, kann keine Perle teilen.",
  "cannot be where the ribbon tapers": "Das geht nicht, wo sich das Band verjüngt.",
  "cannot follow a woven ribbon, which hides them where it passes under":
    "Perlen können keinem geflochtenen Band folgen: Es verdeckt sie, wo es unter anderen durchgeht.",
  "cannot stand on a pierced region; draw a run beside the hole":
    "Auf einer durchbrochenen Figur können keine Perlen stehen; eine Reihe neben dem Durchbruch zeichnen.",
  "cannot stand side by side where the ribbon tapers":
    "Wo sich das Band verjüngt, können keine Bänder nebeneinander liegen.",
  "do not belong to {0} over the band, which fills all of them":
    "Das passt nicht dazu: {0} über die ganze Ringschiene füllt alle Kacheln.",
  "do not belong to {0}; draw a run of their own": "Perlen passen nicht dazu ({0}); eine eigene Reihe zeichnen.",
  "does not belong to {0}": "Das passt nicht dazu: {0}.",
  "does not belong to {0}, which has no outline": "Das passt nicht dazu: {0} hat keinen Umriss.",
  "does not belong to {0}, which is its own": "Das passt nicht dazu: {0} hat einen eigenen Schnitt.",
  "does not belong to {0}: smooth its map": "Das passt nicht dazu: {0} wird durch sein Höhenbild geglättet.",
  "does not belong to a pierced region": "Das gehört nicht zu einer durchbrochenen Figur.",
  "does not belong to a pierced region, whose walls stand along the radius":
    "Das gehört nicht zu einer durchbrochenen Figur: Ihre Wände stehen entlang des Radius.",
  "does not belong to a region that carries beads, which stand along the surface's normal: put them in the design's beads, along the same path":
    "Das gehört nicht zu einer Figur mit Perlen, die senkrecht zur Fläche stehen: sie als Perlreihe des Entwurfs auf denselben Pfad setzen.",
  "does not belong to a run in tiles, which ends with them":
    "Das gehört nicht zu einer Reihe in Kacheln: Sie endet mit ihnen.",
  "does not belong to a shape by {0}": "Das gehört nicht zu einer Form mit {0}.",
  "does not belong to a woven ribbon": "Das gehört nicht zu einem geflochtenen Band.",
  "does not belong to a woven ribbon, which bridges others along the surface's normal: leave it out":
    "Das gehört nicht zu einem geflochtenen Band, das andere senkrecht zur Fläche überbrückt: weglassen.",
  "does not belong to a woven ribbon, which is worked strand by strand":
    "Das gehört nicht zu einem geflochtenen Band: Es wird Strang für Strang gearbeitet.",
  "does not belong to a {0} region": "Das gehört nicht zu einer Figur, die {0} ist.",
  "does not belong to a {0} texture, which has no grain": "Das gehört nicht zur Textur „{0}“: Sie hat keine Richtung.",
  "does not belong to an image, a texture or a woven ribbon":
    "Das gehört nicht zu einem Bild, einer Textur oder einem geflochtenen Band.",
  "does not belong to raised lettering; say relief": "Das gehört nicht zu erhabener Schrift; relief angeben.",
  "does not belong to sunk lettering; say depth": "Das gehört nicht zu vertiefter Schrift; depth angeben.",
  "does not name a font": "Das benennt keine Schrift.",
  'goes through the plain zone, which is filled: say "over": "cover"':
    'Das läuft durch die glatte Zone, die gefüllt ist: "over": "cover" angeben.',
  "has a fit or a scale beside the text's height: keep one of them":
    "Neben der Höhe des Textes stehen fit oder scale: nur eines davon behalten.",
  "is below the size: the grain runs along it": "Die Länge liegt unter der Größe: Die Struktur läuft der Länge nach.",
  "is given beside a section, which has its own": "Das steht neben einem Schnitt, der sein eigenes hat.",
  "is given beside {0}: keep one of them": "Daneben steht schon anderes ({0}): nur eines davon behalten.",
  "is more than half of the width or the height": "Das ist mehr als die halbe Breite oder Höhe.",
  "is the cover, which needs a pattern with a cover under 360":
    "Das braucht ein Muster, das weniger als 360° einnimmt.",
  "is too large to draw with": "Das ist zum Zeichnen zu groß.",
  "is {0#} characters long": "Das ist {0} Zeichen lang.",
  "says nothing yet: it needs one of {0}": "Hier steht noch nichts: Nötig ist eines von {0}.",
  "an image": "ein Bild",
  "a path": "ein Pfad",
  "an svg file": "eine SVG-Datei",
  "a shape": "eine Form",
  "a motif": "ein Motiv",
  "of {0} is raised or sunk": "Das ist erhaben oder vertieft: {0}.",
  raised: "erhaben",
  sunk: "vertieft",
  pierced: "durchbrochen",
  "beads along an open ribbon would stand in the air at its ends, where its {0} section changes its height":
    "Perlen auf einem offenen Band stünden an dessen Enden in der Luft, wo sein Schnitt „{0}“ die Höhe ändert.",
  "beads beside the centre lines of several ribbons would stand in the gaps between them":
    "Perlen neben den Mittellinien mehrerer Bänder stünden in den Lücken zwischen ihnen.",
  "beads on a tapering ribbon would not follow its {0} section, whose height changes with the width":
    "Perlen auf einem sich verjüngenden Band folgten seinem Schnitt „{0}“ nicht, dessen Höhe sich mit der Breite ändert.",
  '"centre"; "border" on ribbons inside or outside of it': '"centre"; "border" bei Bändern innen oder außen daran',
  "a flat section, or a line that closes or runs round":
    "ein flacher Schnitt, oder eine Linie, die sich schließt oder rundum läuft",
  "a flat section, or a ribbon of one width": "ein flacher Schnitt, oder ein Band von gleicher Breite",
  "make the section flat, let the ribbon run round, or {0}":
    "den Schnitt flach machen, das Band rundum laufen lassen, oder {0}",
  "make the section flat, or {0}": "den Schnitt flach machen, oder {0}",
  'say "on": "centre", or {0}': '"on": "centre" angeben, oder {0}',
  'draw the beads as a run of their own with "along": {"path": …}':
    'die Perlen mit "along": {"path": …} als eigene Reihe zeichnen',
  "nothing of the shape lies {0} of the line": "Nichts von der Form liegt {0} von der Linie.",
  left: "links",
  right: "rechts",
  "the document cannot be read": "Der Entwurf lässt sich nicht lesen.",
  "cannot be read at {0}": "Das lässt sich bei {0} nicht lesen.",
  "is the closing quote missing?": "Fehlt das schließende Anführungszeichen?",
  "write \\t for a tab": "für einen Tabulator \\t schreiben",
  // Texts and fonts.
  "give each direction a text of its own": "jeder Richtung einen eigenen Text geben",
  "give each line, and each direction, a text of its own": "jeder Zeile und jeder Richtung einen eigenen Text geben",
  "give each script a text of its own": "jeder Schriftart einen eigenen Text geben",
  "say what is to be set": "angeben, was gesetzt werden soll",
  "the text has nothing to see": "Der Text hat nichts zu sehen.",
  "no font": "keine Schrift",
  "its check sum is another": "ihre Prüfsumme stimmt nicht",
  "its directory of {0} tables does not fit it": "ihr Verzeichnis von {0} Tabellen passt nicht",
  "its em has {0} units": "ihr Geviert hat {0} Einheiten",
  "its table {0} does not fit it": "ihre Tabelle {0} passt nicht",
  "its table {0} does not unpack": "ihre Tabelle {0} lässt sich nicht entpacken",
  "its table {0} goes beyond its end": "ihre Tabelle {0} reicht über ihr Ende hinaus",
  "it has no table {0}": "ihr fehlt die Tabelle {0}",
  "it is cut short": "sie ist abgeschnitten",
  "it is not as long as it says": "sie ist nicht so lang, wie sie angibt",
  "it names no characters": "sie nennt keine Zeichen",
  "it cannot be read: {0}": "sie lässt sich nicht lesen: {0}",
  "is a link that leads out of its folder": "ist ein Verweis, der aus seinem Ordner hinausführt",
  "leads out of its package": "führt aus seinem Paket hinaus",
  "names no package": "nennt kein Paket",
  // Paths and drawings.
  "the path cannot be read: {0}": "Der Pfad lässt sich nicht lesen: {0}",
  "the path does not begin with a move (M), at position 1": "Der Pfad beginnt nicht mit einem Sprung (M), an Stelle 1.",
  "the path is empty": "Der Pfad ist leer.",
  "the drawing reaches out to w = {0#}": "Die Zeichnung reicht bis w = {0}.",
  "the drawing runs from w = {0#} to {1#}": "Die Zeichnung läuft von w = {0} bis {1}.",
  "clip path in clipPathUnits objectBoundingBox": "der Beschneidungspfad in clipPathUnits objectBoundingBox",
  "paint url(#{0}), which is not in the file": "die Farbe url(#{0}), die in der Datei fehlt,",
  "comes to more than {0#} corners at this tolerance": "hat bei dieser Toleranz mehr als {0} Ecken",
  "declares too many entities": "erklärt zu viele Entitäten",
  "uses too many entities": "verwendet zu viele Entitäten",
  "draws more than {0#} characters of path data, counting what use repeats":
    "zeichnet mehr als {0} Zeichen Pfaddaten, mit dem, was use wiederholt",
  "draws more than {0#} elements, counting what use repeats":
    "zeichnet mehr als {0} Elemente, mit dem, was use wiederholt",
  "draws more than {0#} lines and curves, counting what use repeats":
    "zeichnet mehr als {0} Linien und Kurven, mit dem, was use wiederholt",
  "has a stroke of more than {0#} dashes": "hat eine Kontur mit mehr als {0} Strichen",
  "has an element with too many attributes": "hat ein Element mit zu vielen Attributen",
  "has more than {0#} elements": "hat mehr als {0} Elemente",
  "has too many style rules": "hat zu viele Stilregeln",
  "nests elements deeper than {0#}": "schachtelt Elemente tiefer als {0}",
  "nests elements deeper than {0#}, counting what use repeats":
    "schachtelt Elemente tiefer als {0}, mit dem, was use wiederholt",
  "unpacks to more than {0#} bytes": "ergibt entpackt mehr als {0} Bytes",
  "this is no transform: {0}": "das ist keine Transformation: {0}",
  "says that it has {0#} by {1#} pixels": "gibt {0} × {1} Bildpunkte an",
  "at most {0#} pixels": "höchstens {0} Bildpunkte",
  "holds {0} pixels than it says": "enthält {0} Bildpunkte, als es angibt",
  more: "mehr",
  fewer: "weniger",
};
