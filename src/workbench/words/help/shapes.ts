/** German for what the schema says of shapes and drawings, by the English without ranges and defaults. */
import type { Phrases } from "../phrasebook.js";

export const shapesHelp: Phrases = {
  "a drawing, or shapes combined, copied": "eine Zeichnung, oder Formen zusammengesetzt, kopiert",
  "of this path or place": "für diesen Pfad oder diese Lage",
  "what is inside where paths cross, as in SVG": "was innen ist, wo Pfade sich kreuzen, wie in SVG",
  "SVG file in the design's folder or below": "SVG-Datei im Ordner des Entwurfs oder darunter",
  "name in pattern.shapes": "Name in pattern.shapes",
  "shapes that become one": "Formen, die eine werden",
  "what all of them cover; the first may be lines": "was alle davon bedecken; die erste darf aus Linien bestehen",
  "the first without the others": "die erste ohne die anderen",
  "mm it is grown; below 0 it shrinks": "mm, um die sie wächst; unter 0 schrumpft sie",
  corners: "Ecken",
  "the shape it is done to": "die Form, mit der es geschieht",
  "cuts it along a line": "schneidet sie entlang einer Linie",
  "one open line as SVG path data, region's unit; it goes on straight at its ends":
    "eine offene Linie als SVG-Pfaddaten, in der Einheit der Figur; an ihren Enden geht sie gerade weiter",
  "side that is kept, walking along the line": "Seite, die bleibt, wenn man der Linie folgt",
  "copies in a full turn": "Kopien in einer ganzen Drehung",
  "point they turn about, region's unit": "Punkt, um den gedreht wird, in der Einheit der Figur",
  "two points of the mirror line, region's unit": "zwei Punkte der Spiegellinie, in der Einheit der Figur",
  "two points of the glide line, region's unit": "zwei Punkte der Gleitlinie, in der Einheit der Figur",
  "how far it moves along the line, towards the second point, region's unit":
    "wie weit entlang der Linie verschoben wird, zum zweiten Punkt hin, in der Einheit der Figur",
  "copies in the tile's cells, going on into its neighbours":
    "Kopien in den Feldern der Kachel, die in die Nachbarn weiterlaufen",
  "cells along the tile; even for half-drop": "Felder der Länge nach; gerade Zahl bei half-drop",
  "cells across the tile; even for brick in several rows of tiles":
    "Felder der Breite nach; gerade Zahl bei brick in mehreren Reihen von Kacheln",
  "half-drop: second columns half a cell lower; brick: second rows half along":
    "half-drop: jede zweite Spalte ein halbes Feld tiefer; brick: jede zweite Reihe um ein halbes versetzt",
  "point set in each cell's middle, region's unit":
    "Punkt, der in die Mitte jedes Feldes kommt, in der Einheit der Figur",
  "factor on it": "Faktor darauf",
  "what of the svg file counts: colours (white, #fff), id:NAME, layer:NAME":
    "was von der SVG-Datei gilt: Farben (white, #fff), id:NAME, layer:NAME",
  "what alone is taken": "was allein genommen wird",
  "what is left out, not cut out": "was weggelassen, nicht ausgeschnitten wird",
  "where it stands in the tile": "wo sie in der Kachel steht",
  "page (the file's width, height and viewBox) or art (the box round all that is painted); without a page the art":
    "page (Breite, Höhe und viewBox der Datei) oder art (das Rechteck um alles Gemalte); ohne Seite gilt art",
  "width and height of the box it fills in its proportions, region's unit, or drawn (its own size, px being 1/96 inch)":
    "Breite und Höhe des Rechtecks, das sie in ihren Proportionen füllt, in der Einheit der Figur, oder drawn (ihre eigene Größe, ein px ist 1/96 Zoll)",
  "its point that stands at `at`": "ihr Punkt, der bei `at` steht",
  "factor on the fitted size": "Faktor auf die eingepasste Größe",
  "where the anchor stands, region's unit": "wo der Ankerpunkt steht, in der Einheit der Figur",
  "degrees counter-clockwise about it": "Grad gegen den Uhrzeigersinn darum",
  "whether left and right change places, before turning": "ob links und rechts vertauscht sind, vor dem Drehen",
  "a motif with its parameters": "ein Motiv mit seinen Werten",
};
