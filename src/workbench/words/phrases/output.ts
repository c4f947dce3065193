/** German for what is told of files, pictures, drawings and prints. */
import type { Phrases } from "../phrasebook.js";

export const outputPhrases: Phrases = {
  "the file {0} lies outside the design's folder": "Die Datei {0} liegt außerhalb des Ordners des Entwurfs.",
  "a file in the design's folder or below, by a name relative to it":
    "eine Datei im Ordner des Entwurfs oder darunter, mit einem Namen von dort aus",
  "copy the file beside the design": "die Datei neben den Entwurf kopieren",
  "there is no package {0} in the node_modules of the design's folders or of annulet's":
    "Ein Paket {0} gibt es in node_modules bei den Ordnern des Entwurfs und bei annulet nicht.",
  "npm install {0} beside the design, or put the font file there and name that":
    "npm install {0} neben dem Entwurf, oder die Schriftdatei dorthin legen und diese nennen",
  "The package {0} has no file {1}.": "Das Paket {0} hat keine Datei {1}.",
  "package:, the package's name, and the path in it of a .ttf, .otf or .woff file":
    "package:, der Name des Pakets und der Weg darin zu einer Datei .ttf, .otf oder .woff",
  "{0} is a device or a pipe, not a file.": "{0} ist ein Gerät oder eine Röhre, keine Datei.",
  "{0} is a folder, not a file.": "{0} ist ein Ordner, keine Datei.",
  "There is no file {0}.": "Eine Datei {0} gibt es nicht.",
  "Cannot read {0}: {1}.": "{0} lässt sich nicht lesen: {1}.",
  "{0} is too large.": "{0} ist zu groß.",
  "{0} is too large: {1#}.": "{0} ist zu groß: {1}.",
  "no format goes by this file name's ending": "Zu dieser Endung gehört kein Dateiformat.",
  "{0} cannot be written as {1}": "{0} lässt sich nicht als {1} schreiben.",
  "{name, colour, metal}; the colour is three numbers from 0 to 1":
    "{name, colour, metal}; die Farbe sind drei Zahlen von 0 bis 1",
  "what is given is no format": "Das ist kein Dateiformat.",
  "one of `formats`, what `formatForFile` gives, or any value of the Format interface":
    "eines aus „formats“, was „formatForFile“ gibt, oder ein Wert der Schnittstelle Format",
  "no mesh is read from files of this ending": "Aus Dateien dieser Endung wird kein Netz gelesen.",
  "what is given is no file": "Das ist keine Datei.",
  "the pattern has no {0} to show": "Das Muster hat kein „{0}“, das sich zeigen ließe.",
  "tile, or a medallion or an ornament that the design has":
    "Kachel (tile), oder ein Medaillon oder Ornament, das der Entwurf hat",
  "{0#} tiles cannot be shown of a pattern with {1#}": "{0} Kacheln lassen sich von einem Muster mit {1} nicht zeigen.",
  "the design has no pattern, so there is no tile to show":
    "Der Entwurf hat kein Muster, also keine Kachel zum Zeigen.",
  "a drawing cannot be enlarged so": "So lässt sich die Zeichnung nicht vergrößern.",
  "the picture looks at a place where nothing of the mesh is":
    "Das Bild blickt auf eine Stelle, an der nichts vom Netz ist.",
  "an angle round the axis z at which there is metal, and from inside a bore round that axis":
    "ein Winkel um die Achse z, bei dem Metall ist",
  "at most {0#} samples in all; there would be {1#}": "höchstens {0} Abtastpunkte; es wären {1}",
  "is too fine for a picture of this size": "Das ist für ein Bild dieser Größe zu fein.",
  "There is no such view.": "Diese Ansicht gibt es nicht.",
  "a Uint8Array, one entry a triangle": "ein Uint8Array, ein Eintrag je Dreieck",
  "there is nothing to be seen: the mesh has no triangles, or all of it is one point":
    "Es gibt nichts zu sehen: Das Netz hat keine Dreiecke oder ist ein einziger Punkt.",
  "the picture's marks are not those of this mesh": "Die Markierungen des Bildes gehören nicht zu diesem Netz.",
  "{0#} entries, one for each triangle": "{0} Einträge, einer je Dreieck",
  "the picture has not four bytes for each pixel": "Das Bild hat nicht vier Bytes je Bildpunkt.",
  "width and height, whole and above 0, and pixels, a Uint8Array of 4 · width · height bytes":
    "Breite und Höhe, ganz und über 0, und Bildpunkte, ein Uint8Array von 4 · Breite · Höhe Bytes",
  "the print's {0} is off": "Beim Druck stimmt ein Wert nicht: {0}.",
  "a coordinate of vertex {0#} is too large for a single-precision file":
    "Eine Koordinate von Eckpunkt {0} ist für diese Datei zu groß.",
  "less than 3.4e38 mm": "weniger als 3,4e38 mm",
  "a GLB file holds no mesh without triangles": "Eine GLB-Datei braucht ein Netz mit Dreiecken.",
  "a 3MF file holds no mesh of fewer triangles than a solid has":
    "Eine 3MF-Datei braucht so viele Dreiecke, wie ein Körper mindestens hat.",
  "triangle {0#} repeats a vertex, which a 3MF file may not":
    "Dreieck {0} nennt einen Eckpunkt zweimal; das darf eine 3MF-Datei nicht.",
  "weldMesh leaves such triangles out": "weldMesh lässt solche Dreiecke weg",
  "the thumbnail is no PNG file": "Das Vorschaubild ist keine PNG-Datei.",
  "the bytes of a PNG": "die Bytes eines PNG",
  "{0} is too large for a zip package": "{0} ist für ein ZIP-Paket zu groß.",
  "4 GB": "4 GB",
};
