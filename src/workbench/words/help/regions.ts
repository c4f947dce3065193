/** German for what the schema says of regions, ribbons, sections, the medallion and ends, by the English without ranges and defaults. */
import type { Phrases } from "../phrasebook.js";

export const regionsHelp: Phrases = {
  "tiles after which the art comes again, or round; all round they divide the tiles":
    "Zahl der Kacheln, nach der die Zeichnung wiederkehrt, oder round; rundum teilt sie die Zahl der Kacheln",
  "SVG file in the design's folder or below; all that is painted counts; fill does not apply":
    "SVG-Datei im Ordner des Entwurfs oder darunter; alles Gemalte zählt; fill gilt nicht",
  "drawings combined or copied": "Zeichnungen, zusammengesetzt oder kopiert",
  "a text; fill does not apply": "ein Text; fill gilt nicht",
  "height of capitals, mm, instead of `fit` and `scale`": "Höhe der Großbuchstaben, mm, statt `fit` und `scale`",
  "PNG file in the design's folder or below, a height map; height or depth is from black to white":
    "PNG-Datei im Ordner des Entwurfs oder darunter, ein Höhenbild; Höhe oder Tiefe reicht von Schwarz bis Weiß",
  "from image or texture to relief": "vom Bild oder von der Textur zum Relief",
  "height or depth of the least raised or sunk pixel or place, mm":
    "Höhe oder Tiefe des niedrigsten erhabenen oder vertieften Bildpunkts oder Ortes, mm",
  "whether dark, not light, is high, also of a sunk image":
    "ob Dunkles statt Hellem hoch ist, auch bei einem vertieften Bild",
  "tile (repeats, completed by the symmetry) or band (once over the pattern)":
    "tile (wiederholt sich, von der Symmetrie ergänzt) oder band (einmal über das Muster)",
  "mm from sample to sample": "mm von einem Abtastpunkt zum nächsten",
  "image: standard deviation of the Gaussian it is smoothed by, mm":
    "Bild: Standardabweichung der Gaußkurve, mit der es geglättet wird, mm",
  "image: where it meets itself: exact (left and right match or are mirrored) or {blend} (its ends go over into each other)":
    "Bild: wo es sich selbst trifft: exact (links und rechts passen oder sind gespiegelt) oder {blend} (seine Enden gehen ineinander über)",
  "width of the blend, mm": "Breite des Übergangs, mm",
  "mm over which it falls to nothing at the seat's edges and ends, 0 (upright) to 20":
    "mm, über die es am Rand und an den Enden der Musterfläche auf nichts abfällt, 0 (aufrecht) bis 20",
  "on the seat, into it, or through the wall; what is sunk or pierced also cuts raised regions before it":
    "auf der Musterfläche, in sie hinein, oder durch die Wand; Vertieftes und Durchbrochenes schneidet auch erhabene Figuren davor",
  "raised: height of a level top, mm; short for a flat section":
    "erhaben: Höhe einer ebenen Oberseite, mm; kurz für einen flachen Schnitt",
  "sunk: depth of a level floor, mm; short for a flat section":
    "vertieft: Tiefe eines ebenen Grundes, mm; kurz für einen flachen Schnitt",
  "radius of the edge of top or floor, mm, to the height or depth and half the width":
    "Radius der Kante oben oder am Grund, mm, bis zur Höhe oder Tiefe und zur halben Breite",
  "the region cut across, instead of height and round; if sunk turned over, its height the depth":
    "der Schnitt quer durch die Figur, statt Höhe und Rundung; vertieft umgekehrt, seine Höhe ist die Tiefe",
  "raised: goes on beneath the rails, cut off as it stands; may leave the tile across":
    "erhaben: geht unter den Randstegen weiter, abgeschnitten, wie es steht; darf die Kachel quer verlassen",
  "raised or sunk: walls along the radius: none leans over, nor out at the band's edge":
    "erhaben oder vertieft: Wände entlang des Radius: keine hängt über, auch nicht am Rand der Ringschiene",
  "pierced: radius of the hole's edges, which widen it, mm":
    "durchbrochen: Radius der Kanten des Durchbruchs, die ihn weiter machen, mm",
  "mm the completed region or ribbon is grown; below 0 it shrinks":
    "mm, um die die ergänzte Figur oder das Band wächst; unter 0 schrumpft es",
  "regions, as completed, in any of which it is kept, and 0.02 mm beyond, so that bodies join":
    "Figuren, wie ergänzt, in deren einer sie bleibt, und 0,02 mm darüber hinaus, damit die Körper zusammenhängen",
  "regions, as completed, taken away from it; without a gap they overlap by 0.02 mm, so that bodies join":
    "Figuren, wie ergänzt, die von ihr abgezogen werden; ohne Abstand überlappen sie um 0,02 mm, damit die Körper zusammenhängen",
  "name of a region": "Name einer Figur",
  "clearance kept from it, mm": "Abstand, der davon gehalten wird, mm",
  "a bead run on it": "eine Perlreihe darauf",
  "centre (the ribbon's line), border (the outline), or mm inside it":
    "centre (die Linie des Bandes), border (der Umriss), oder mm innerhalb davon",
  "a height map from a seed, the same on every machine; height or depth is from its lowest to its highest place":
    "ein Höhenbild aus einer Startzahl, auf jedem Rechner gleich; Höhe oder Tiefe reicht vom niedrigsten zum höchsten Ort",
  "hammered (facets), bark (plates), brushed (fine lines), stippled (round pits; raised dots by map.invert)":
    "hammered (Hammerschlag), bark (Rinde), brushed (feine Striche), stippled (runde Gruben; erhabene Punkte mit map.invert)",
  "mm from one facet, plate, line or pit to the next; the nearest that comes out even":
    "mm von einer Facette, Platte, Linie oder Grube zur nächsten; der nächste Wert, der aufgeht",
  "bark, brushed: length of a plate or line, mm": "bark, brushed: Länge einer Platte oder Linie, mm",
  "bark, brushed: which way the grain runs": "bark, brushed: in welche Richtung die Struktur läuft",
  "0 (evenly set) to 1": "0 (gleichmäßig gesetzt) bis 1",
  "another gives another of the same kind": "eine andere Zahl gibt ein anderes derselben Art",
  "tiles of the cycle that carry this, from 0": "Kacheln des Zyklus, die dies tragen, gezählt ab 0",
  "tiles from one to the next": "Kacheln von einer zur nächsten",
  "the first of them, 0 up": "die erste davon, ab 0",
  "a ribbon along the path, not a filled region": "ein Band entlang des Pfades, keine gefüllte Figur",
  "width, mm; of a tapering ribbon at its start": "Breite, mm; bei einer Verjüngung am Anfang",
  "width at the line's end, mm, 0 (a point) or more, to which it tapers evenly; half way on a line that closes or that its images carry on":
    "Breite am Ende der Linie, mm, 0 (eine Spitze) oder mehr, zu der es sich gleichmäßig verjüngt; auf halbem Weg bei einer Linie, die sich schließt oder die ihre Bilder fortsetzen",
  "widths along it, instead of `to`, [share of the line's length, mm], shares rising; straight between them, the last to the end":
    "Breiten entlang der Linie, statt `to`, [Anteil der Länge, mm], Anteile steigend; dazwischen gerade, die letzte gilt bis zum Ende",
  "share of the line's length": "Anteil der Länge der Linie",
  "width there, mm": "Breite dort, mm",
  "side of a closed border": "Seite eines geschlossenen Umrisses",
  "ribbons side by side, centred on an open line or with side centre, else in from the border":
    "Bänder nebeneinander, auf einer offenen Linie oder mit side centre mittig, sonst vom Rand nach innen",
  "ribbons side by side": "Bänder nebeneinander",
  "gap between neighbours, mm": "Abstand zwischen Nachbarn, mm",
  "weaves it with others and itself: it bridges what it passes over":
    "verflicht es mit anderen und sich selbst: es überbrückt, worüber es geht",
  "mm by which its top rises where it passes over another":
    "mm, um die die Oberseite steigt, wo es über ein anderes geht",
  "mm along the ribbon over which it rises": "mm entlang des Bandes, über die es steigt",
  "ribbons of one set are woven with each other": "Bänder einer Gruppe werden miteinander verflochten",
  "alternate: over and under by turns; at the tile's leftmost, lowest crossing the later region is over, of one region the line at the smaller angle from the band; later: the later region is over; one for a set":
    "alternate: abwechselnd oben und unten; an der linken, untersten Kreuzung der Kachel liegt die spätere Figur oben, bei einer einzigen die Linie mit dem kleineren Winkel zur Ringschiene; later: die spätere Figur liegt oben; eines für die ganze Gruppe",
  "corners; where it tapers always round": "Ecken; wo es sich verjüngt, immer rund",
  "ends of open lines": "Enden offener Linien",
  "lobes along the outline, both sides of a ribbon": "Bögen entlang des Umrisses, bei einem Band auf beiden Seiten",
  "scallop: round lobes; teeth: points; steps: square": "scallop: runde Bögen; teeth: Zähne; steps: eckig",
  "width of a lobe, mm; the nearest that comes out even": "Breite eines Bogens, mm; der nächste Wert, der aufgeht",
  "how far lobes stand out, mm, to half their width (scallop), once (wave, steps), twice (teeth)":
    "wie weit Bögen vorstehen, mm, bis zur halben Breite (scallop), zur ganzen (wave, steps), zur doppelten (teeth)",
  "lobes are set on the outline or bitten out of it": "Bögen sitzen auf dem Umriss oder sind aus ihm herausgeschnitten",
  "lobes end where it turns by more than this, degrees": "Bögen enden, wo er um mehr als dies abbiegt, Grad",
  "the region cut across, instead of height and round": "der Schnitt quer durch die Figur, statt Höhe und Rundung",
  "A level top": "Eine ebene Oberseite",
  "height of the top, mm": "Höhe der Oberseite, mm",
  "radius of the top edge, mm, to the height and half the width":
    "Radius der oberen Kante, mm, bis zur Höhe und zur halben Breite",
  "bevel instead, mm wide and high; limits as of `round`":
    "stattdessen eine Fase, mm breit und hoch; Grenzen wie bei `round`",
  "A pillow that rises from the outline": "Ein Kissen, das vom Umriss an aufsteigt",
  "height where the dome ends, mm": "Höhe, auf der die Wölbung endet, mm",
  "Flanks that meet in a line along the middle": "Flanken, die sich in der Mitte in einer Linie treffen",
  "height at the widest place, mm; narrower ones are lower; or give slope":
    "Höhe an der breitesten Stelle, mm; schmalere sind niedriger; oder slope angeben",
  "slope of the flanks, degrees, instead of height": "Steigung der Flanken, Grad, statt der Höhe",
  "radius along the middle at the widest place, mm; narrower ones stay sharp":
    "Radius entlang der Mitte an der breitesten Stelle, mm; schmalere bleiben scharf",
  "A dish behind a rim": "Eine Mulde hinter einem Rand",
  "height of the rim, mm": "Höhe des Randes, mm",
  "how much lower the middle is, mm, below the height": "wie viel tiefer die Mitte liegt, mm, unter der Höhe",
  "radius of its outer edge, mm, to the height": "Radius der äußeren Kante, mm, bis zur Höhe",
  "width of the level rim, mm": "Breite des ebenen Randes, mm",
  "takes the place of tiles at the top, with art of its own": "ersetzt oben Kacheln durch eine eigene Zeichnung",
  "tiles it takes the place of": "Kacheln, die es ersetzt",
  "frieze group that completes its art": "Friesgruppe, die seine Zeichnung ergänzt",
  "its art, in one tile 1 wide and as high as the rows":
    "seine Zeichnung, in einer Kachel 1 breit und so hoch wie die Reihen",
  "how it ends at its plain zone and medallion": "wie es an glatter Zone und Medaillon endet",
  "cut off straight": "gerade abgeschnitten",
  "a line across the seat": "eine Linie quer über die Musterfläche",
  "width of the line, mm; its outer side is the end": "Breite der Linie, mm; ihre äußere Seite ist das Ende",
  "its height, mm": "ihre Höhe, mm",
  "radius of its top edges, mm": "Radius der oberen Kanten, mm",
  "sinks into the seat; holes are cut, beads keep clear":
    "sinkt in die Musterfläche; Durchbrüche werden abgeschnitten, Perlen halten Abstand",
  "mm over which the relief sinks to the seat": "mm, über die das Relief zur Musterfläche sinkt",
  "art beyond each end where cover is under 360": "Zeichnung jenseits beider Enden, wo cover unter 360 liegt",
  "its width in tiles": "Breite in Kacheln",
  "its art beyond the end, in one tile, x = 0 at the end; the other end mirrors it":
    "Zeichnung jenseits des Endes, in einer Kachel, x = 0 am Ende; das andere Ende spiegelt sie",
  "At the back, mm": "Hinten, mm",
  mm: "mm",
  "how far walls lean in, degrees; the foot grows":
    "wie weit die Wände nach innen geneigt sind, Grad; der Fuß wird breiter",
  "height of the wall it stands on, mm, under the height": "Höhe der Wand, auf der es steht, mm, unter der Höhe",
  "radius of the edge above the wall, mm": "Radius der Kante über der Wand, mm",
  "mm inside the outline where it levels out": "mm innerhalb des Umrisses, wo es eben wird",
  "Radius of its edges, mm, above the 0.125 castings need": "Radius der Kanten, mm, über den 0,125, die Güsse brauchen",
};
