/** German for what the schema says of patterns, bead runs, lettering and the hallmark, by the English without ranges and defaults. */
import type { Phrases } from "../phrasebook.js";

export const patternHelp: Phrases = {
  "what is drawn in a tile and how it repeats": "was in einer Kachel gezeichnet ist und wie es sich wiederholt",
  "tiles round the band and what gives way": "Kacheln rund um den Ring, und was nachgibt",
  "what stays: tile (the band's width follows) or band (the tile stretches)":
    "was bleibt: tile (die Ringbreite richtet sich danach) oder band (die Kachel wird gedehnt)",
  "where the band tapers, tiles narrow or keep their size: art is cut off at the seat's edge, with slivers too narrow for its edges; not with lanes, weaves, images, textures":
    "wo sich die Ringschiene verjüngt, werden Kacheln schmaler oder behalten ihre Größe: dann wird die Zeichnung am Rand der Musterfläche abgeschnitten, samt Splittern, die für ihre Kanten zu schmal sind; nicht mit Bahnen, Geflechten, Bildern, Texturen",
  "degrees that carry the pattern, centred on the top": "wie viele Grad das Muster einnimmt, oben in der Mitte",
  "the plain zone of a channel: open (its floor lies bare) or filled up to the rails":
    "die glatte Zone einer Nut: offen (der Boden liegt frei) oder bis zu den Randstegen gefüllt",
  'shapes by name, which others take as {"shape": name}': 'Formen mit Namen, die andere mit {"shape": Name} verwenden',
  "frieze group (IUC name) that completes the art": "Friesgruppe (IUC-Name), die die Zeichnung ergänzt",
  "patterns side by side, lowest (-z) first, instead of one art; they share cover, shapes, gap, fit.hold, fit.taper":
    "Bahnen nebeneinander, die unterste (−z) zuerst, statt einer Zeichnung; gemeinsam sind cover, shapes, gap, fit.hold, fit.taper",
  "what messages call it": "wie Meldungen es nennen",
  "share of the seat beside the others'": "Anteil an der Musterfläche im Verhältnis zu den anderen",
  "tiles round the band": "Kacheln rund um den Ring",
  "plain seat between lanes, mm": "glatte Fläche zwischen den Bahnen, mm",
  "bead runs": "Perlreihen",
  "rail (both tops), seat-edge (both edges), step (both ledges), {v} (a circle round the band), {path} or {shape} in every tile":
    "rail (auf beiden Randstegen), seat-edge (an beiden Rändern der Musterfläche), step (in beiden Absätzen), {v} (ein Kreis rund um den Ring), {path} oder {shape} in jeder Kachel",
  "mm from the seat's middle along its section, arc length and not w; + towards +z":
    "mm von der Mitte der Musterfläche, entlang des Querschnitts gemessen, nicht w; + nach +z",
  "its outlines and lines carry beads": "ihre Umrisse und Linien tragen Perlen",
  "rail, seat-edge, step, {v}: all round the band, or over the pattern's cover alone":
    "rail, seat-edge, step, {v}: rundum, oder nur so weit, wie das Muster reicht",
  "seat-edge: mm from it to the beads' centres": "seat-edge: mm vom Rand bis zu den Mitten der Perlen",
  "height under the beads, mm above the seat": "Höhe unter den Perlen, mm über der Musterfläche",
  texts: "Texte",
  "seat, rail (its flat top) or bore (read from inside)":
    "Musterfläche, Randsteg (seine flache Oberseite) oder Innenseite (von innen zu lesen)",
  "where its middle stands, degrees from +x towards +y": "wo die Mitte steht, Grad von +x nach +y",
  "height of capitals, mm": "Höhe der Großbuchstaben, mm",
  "where the letters' tops point": "wohin die Buchstaben oben zeigen",
  "raised, or sunk through all that stands there": "erhaben, oder vertieft durch alles, was dort steht",
  "sunk: depth, mm": "vertieft: Tiefe, mm",
  "raised: height, mm": "erhaben: Höhe, mm",
  "radius of the edge of top or floor, mm, to half the narrowest stroke":
    "Radius der Kante oben oder am Grund, mm, bis zum halben dünnsten Strich",
  "how far walls lean, degrees; letters grow at the surface":
    "wie weit die Wände geneigt sind, Grad; die Buchstaben werden an der Oberfläche breiter",
  "a field for a hallmark, clear of pattern and beads": "ein Feld für eine Punze, frei von Muster und Perlen",
  "seat, rail (its flat top) or bore": "Musterfläche, Randsteg (seine flache Oberseite) oder Innenseite",
  "round the band, mm": "rund um den Ring, mm",
  "across the band, mm": "quer zur Ringschiene, mm",
  "depth below the surface, mm; 0 keeps it plain": "Tiefe unter der Oberfläche, mm; 0 lässt das Feld glatt",
  "radius of its corners, mm, to half its width and height": "Radius der Ecken, mm, bis zur halben Breite und Höhe",
  "tiles round the band: auto (nearest to the drawn band) or 1 to 1000":
    "Kacheln rund um den Ring: auto (am nächsten an der gezeichneten Ringschiene) oder 1 bis 1000",
  "rows of tiles across the band": "Reihen von Kacheln quer zur Ringschiene",
  "height of a tile over its width": "Höhe einer Kachel, geteilt durch ihre Breite",
  "what is drawn in the tile": "was in der Kachel gezeichnet ist",
  "SVG path data in the tile: x 0 to 1 along the band, y from its middle towards +z":
    "SVG-Pfaddaten in der Kachel: x 0 bis 1 entlang der Ringschiene, y von ihrer Mitte nach +z",
  "of path, shape or place: tile (1 wide, `aspect` high) or mm":
    "für Pfad, Form oder Lage: tile (1 breit, `aspect` hoch) oder mm",
  "lane it is drawn in": "Bahn, in der es gezeichnet ist",
  "bead diameter, mm; milgrain: 0.3 to 0.6": "Durchmesser der Perlen, mm; Millegriffes: 0,3 bis 0,6",
  "diameter at an open line's end, half way round a closed one, mm":
    "Durchmesser am Ende einer offenen Linie, auf halbem Weg einer geschlossenen, mm",
  "diameter of every second bead, mm; not with `to`": "Durchmesser jeder zweiten Perle, mm; nicht mit `to`",
  "spacing over diameter; the nearest that comes out even":
    "Teilung: Abstand geteilt durch Durchmesser; der nächste Wert, der aufgeht",
  "beads in each run, instead of a pitch": "Perlen in jeder Reihe, statt einer Teilung",
  "share of it below the surface": "Anteil unter der Oberfläche",
  "at corners: pass (beads take no notice), on (a bead on each), split (equal gaps beside each)":
    "an Ecken: pass (Perlen beachten sie nicht), on (eine Perle auf jeder), split (gleiche Lücken neben jeder)",
  "corners turn by more than this, degrees": "Ecken biegen um mehr als dies ab, Grad",
  "where it meets another that shares: leave, or share one bead":
    "wo sie auf eine andere trifft, die teilt: leave (nichts tun), oder share (eine Perle gemeinsam)",
  "one line of one direction": "eine Zeile in einer Richtung",
  "OpenType, TrueType or WOFF file beside the design, or package: and its path in an npm package":
    "OpenType-, TrueType- oder WOFF-Datei neben dem Entwurf, oder package: und der Weg in einem npm-Paket",
  "mm added between letters": "mm zusätzlich zwischen den Buchstaben",
  "rail: the one towards +z or -z": "Randsteg: der zu +z oder zu −z",
  "mm from the surface's middle, + towards +z": "mm von der Mitte der Fläche, + nach +z",
  "where its middle stands, degrees from +x towards +y, the top": "wo die Mitte steht, Grad von +x nach +y, oben",
  "where its middle stands, degrees from +x towards +y, opposite the top":
    "wo die Mitte steht, Grad von +x nach +y, gegenüber von oben",
};
