/** German for what is told of SVG files. */
import type { Phrases } from "../phrasebook.js";

export const svgPhrases: Phrases = {
  "{0} was cleaned: {1}": "{0} wurde bereinigt: {1}",
  "{0#} repeated point dropped": "{0} doppelter Punkt entfernt",
  "{0#} repeated points dropped": "{0} doppelte Punkte entfernt",
  "{0#} loop below 0.0001 mm² dropped": "{0} Schleife unter 0,0001 mm² entfernt",
  "{0#} loops below 0.0001 mm² dropped": "{0} Schleifen unter 0,0001 mm² entfernt",
  "{0#} outline that crosses itself united by its fill rule":
    "{0} Umriss, der sich kreuzt, nach seiner Füllregel vereinigt",
  "{0#} outlines that cross themselves united by their fill rules":
    "{0} Umrisse, die sich kreuzen, nach ihren Füllregeln vereinigt",
  "nothing of the SVG file {0} shows: it is clipped away, lies off its page, or covers no area":
    "Von der SVG-Datei {0} ist nichts zu sehen: Es ist weggeschnitten, liegt neben der Seite oder hat keine Fläche.",
  "shapes on the page": "Formen auf der Seite",
  "the SVG file {0}": "Die SVG-Datei {0}.",
  "is declared to be in {0}, which is not read": "gibt die Kodierung {0} an, die nicht gelesen wird",
  "is not text in {0}": "ist kein Text in {0}",
  "UTF-8, UTF-16, US-ASCII, ISO-8859 or windows-125x, as the file declares":
    "UTF-8, UTF-16, US-ASCII, ISO-8859 oder windows-125x, wie die Datei angibt",
  "save the drawing again in UTF-8": "die Zeichnung neu in UTF-8 speichern",
  "the packed SVG file (.svgz) is damaged: {0}": "Die gepackte SVG-Datei (.svgz) ist beschädigt: {0}",
  "gzip that holds one SVG file": "gzip mit einer SVG-Datei darin",
  "save the drawing again": "die Zeichnung neu speichern",
  "{0} is no length": "{0} ist keine Länge.",
  "a finite number, alone or with px, mm, cm, in, pt, pc, em, ex or %":
    "eine endliche Zahl, allein oder mit px, mm, cm, in, pt, pc, em, ex oder %",
  "the SVG file declares entities of its own in its DOCTYPE, which are not expanded":
    "Die SVG-Datei erklärt eigene Entitäten in ihrem DOCTYPE; sie werden nicht aufgelöst.",
  "no DOCTYPE, one without [ … ], or one whose entities are names in xmlns alone":
    "kein DOCTYPE, einer ohne [ … ], oder einer, dessen Entitäten nur Namen in xmlns sind",
  "save the drawing as plain SVG, or take the DOCTYPE away":
    "die Zeichnung als einfaches SVG speichern oder den DOCTYPE entfernen",
  "{0} is scaled to nothing or beyond all measure": "{0} ist auf nichts oder ins Maßlose skaliert.",
  "transforms that keep a shape's width and height": "Transformationen, die Breite und Höhe einer Form erhalten",
  "{0} reaches more than {1#} mm from the tile": "{0} reicht mehr als {1} mm von der Kachel weg.",
  "within {0#} mm, what the page hides too": "innerhalb {0} mm, auch was die Seite verdeckt",
  "check the drawing's transforms, or place it smaller":
    "die Transformationen der Zeichnung prüfen oder sie kleiner einsetzen",
  "the transform of {0} flattens it to nothing: it is left out":
    "Die Transformation von {0} drückt es zu nichts zusammen: Es ist weggelassen.",
  "the transform of {0} {1}": "Die Transformation von {0} ist fehlerhaft ({1}).",
  "matrix, translate, scale, rotate, skewX, skewY with finite numbers":
    "matrix, translate, scale, rotate, skewX, skewY mit endlichen Zahlen",
  "the file is not SVG: it begins with <{0}>": "Die Datei ist kein SVG: Sie beginnt mit <{0}>.",
  "a file whose outermost element is <svg>": "eine Datei, deren äußerstes Element <svg> ist",
  "the SVG file is not well formed: {0}": "Die SVG-Datei ist kein gültiges XML: {0}",
  "the SVG file is not well formed, line {0#}: {1}": "Die SVG-Datei ist kein gültiges XML, Zeile {0}: {1}",
  "well-formed XML": "gültiges XML",
  "save the drawing again as plain SVG": "die Zeichnung neu als einfaches SVG speichern",
  "the SVG file {0} draws nothing that can be used": "Die SVG-Datei {0} zeichnet nichts, das verwendet werden kann.",
  "at least one shape with a fill or a stroke": "mindestens eine Form mit Füllung oder Kontur",
  "{0#} style rule is not followed: {1}": "{0} Stilregel wird nicht befolgt: {1}",
  "{0#} style rule is not followed ({1}): {2}": "{0} Stilregel wird nicht befolgt ({1}): {2}",
  "{0#} style rules are not followed: {1}": "{0} Stilregeln werden nicht befolgt: {1}",
  "{0#} style rules are not followed ({1}): {2}": "{0} Stilregeln werden nicht befolgt ({1}): {2}",
  "rules by element, .class, #id and *": "Regeln nach Element, .class, #id und *",
  "the drawing is painted in {0#} colours ({1}): all of them are raised alike, white too":
    "Die Zeichnung hat {0} Farben ({1}): Alle werden gleich hoch, auch Weiß.",
  'leave a ground out by its colour, e.g. "take": { "without": [{0}] }; cut light shapes out of dark ones in your drawing program':
    'einen Untergrund nach seiner Farbe weglassen, z. B. "take": { "without": [{0}] }; helle Formen im Zeichenprogramm aus dunklen ausschneiden',
  "{0#} more things in the SVG file are not followed": "{0} weitere Dinge in der SVG-Datei werden nicht befolgt.",
  "the points of {0} are not pairs of numbers": "Die Punkte von {0} sind keine Zahlenpaare.",
  "x and y of each point, finite": "x und y jedes Punktes, endlich",
  "nothing that {0} draws is {1}": "Nichts, was {0} zeichnet, ist {1}.",
  "write a colour as CSS does, an element as id:NAME, a layer as layer:NAME":
    "eine Farbe wie in CSS schreiben, ein Element als id:NAME, eine Ebene als layer:NAME",
  "the viewBox of {0} is no box": "Die viewBox von {0} ist kein Rechteck.",
  "four finite numbers: left, top, width and height, the last two above 0":
    "vier endliche Zahlen: links, oben, Breite und Höhe, die letzten beiden über 0",
  "{0} is painted with {1}, which is no geometry: the shape counts as filled all over":
    "{0} ist mit {1} gemalt; das ist keine Form: Die Fläche gilt als ganz gefüllt.",
  "give it a plain colour, or none where it should not be raised":
    "eine einfache Farbe geben, oder keine, wo nichts erhaben sein soll",
  "{0} points outside the file, which is never fetched: it is left out":
    "{0} verweist aus der Datei hinaus; das wird nie geholt: Es ist weggelassen.",
  "{0} points to {1}, which is not in the file: it is left out":
    "{0} verweist auf {1}; das fehlt in der Datei: Es ist weggelassen.",
  "{0} points to {1}, which contains it: the drawing would never end":
    "{0} verweist auf {1}, worin es selbst enthalten ist: Die Zeichnung würde nie enden.",
  "references that do not lead back to themselves": "Verweise, die nicht auf sich selbst zurückführen",
  "{0} is no geometry: it is left out": "{0} ist keine Form: Es ist weggelassen.",
  "trace the picture into paths in your drawing program": "das Bild im Zeichenprogramm in Pfade umwandeln",
  "turn the text into outlines in your drawing program": "den Text im Zeichenprogramm in Umrisse umwandeln",
  "take it out of the drawing, or draw it as paths": "aus der Zeichnung entfernen oder als Pfade zeichnen",
  "{0} of {1} is not followed: the shape is taken without it":
    "{0} von {1} wird nicht befolgt: Die Form gilt ohne das.",
  "apply it in your drawing program, so that only shapes are left":
    "im Zeichenprogramm anwenden, so dass nur Formen bleiben",
};
