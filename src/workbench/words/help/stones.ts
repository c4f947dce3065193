/** German for what the schema says of stones and their settings, by the English without ranges and defaults. */
import type { Phrases } from "../phrasebook.js";

export const stonesHelp: Phrases = {
  "groups of stones": "Gruppen von Steinen",
  "in tables and messages": "in Tabellen und Meldungen",
  "shape of the stones": "Schliff der Steine",
  "across a round or square one, length of a long one, mm":
    "Durchmesser eines runden, Breite eines quadratischen, Länge eines länglichen Steins, mm",
  "of a long one, mm": "Breite eines länglichen Steins, mm",
  "tapered baguette: width at its narrow end, mm": "Baguette, verjüngt: Breite am schmalen Ende, mm",
  "what they are: a symbol, built in or of gems": "Edelstein: ein eingebautes Kürzel oder eines aus gems",
  "usual, tolkowsky (round), or measured, what is left out as usual":
    "usual (wie üblich), tolkowsky (rund) oder gemessen; was fehlt, ist wie üblich",
  "table, share of the width": "Tafel, Anteil der Breite",
  "of the crown's main facets, degrees": "Winkel der Hauptfacetten des Oberteils, Grad",
  "instead of that: height of the crown, of a cabochon its dome, share of the width":
    "statt dessen: Höhe des Oberteils, beim Cabochon der Wölbung, Anteil der Breite",
  "height of the girdle, share of the width": "Höhe der Rundiste, Anteil der Breite",
  "of the pavilion's main facets, degrees": "Winkel der Hauptfacetten des Unterteils, Grad",
  "instead of that: depth of the pavilion, share of the width": "statt dessen: Tiefe des Unterteils, Anteil der Breite",
  "culet, share of the width": "Kalette, Anteil der Breite",
  "where they stand": "wo sie stehen",
  "[x, y] in the tile: x along the band, y from its middle towards +z; the symmetry completes it":
    "[x, y] in der Kachel: x entlang der Ringschiene, y von ihrer Mitte nach +z; die Symmetrie ergänzt die übrigen",
  "its outlines and lines carry stones; instead of a path": "Ihre Umrisse und Linien tragen Steine; statt eines Pfades",
  "middle (of the seat), rail (both tops) or {v}":
    "middle (die Mitte der Musterfläche), rail (beide Oberseiten der Randstege) oder {v}",
  "mm from the seat's middle, + towards +z": "mm von der Mitte der Musterfläche, + nach +z",
  "round, cover (the pattern's) or {from, to}": "round (rundum), cover (so weit wie das Muster) oder {from, to}",
  "angle of its first stone, degrees, the top is 90": "Winkel des ersten Steins, Grad, oben ist 90",
  "angle of its last one, degrees, more than the first": "Winkel des letzten Steins, Grad, größer als der des ersten",
  "degrees, the top is 90": "Grad, oben ist 90",
  "turned about its own axis, degrees counter-clockwise from outside":
    "um die eigene Achse gedreht, Grad, von außen gesehen gegen den Uhrzeigersinn",
  "clear between girdles in space, mm, the nearest above that comes out even":
    "Abstand der Rundisten im Raum, mm; der nächstgrößere, der aufgeht",
  "how many, instead of a gap": "Anzahl, statt eines Abstands",
  "size at an open row's ends, half way round one all round, mm":
    "Größe an den Enden einer offenen Reihe, bei einer geschlossenen gegenüber, mm",
  "of the table over the surface, mm": "Höhe der Tafel über der Oberfläche, mm",
  "how they are held": "wie sie gefasst sind",
  "how much is cast: pilot (hole alone), bearing (without grains and notches), full":
    "wie viel gegossen wird: pilot (nur die Bohrung), bearing (ohne Körner und Kerben), full (alles)",
  "width of the hole below the bearing, share of the stone's":
    "Weite der Bohrung unter der Auflage, Anteil der Steinbreite",
  "grains a stone": "Körner je Stein",
  "diameter of a grain, share of the stone's width": "Durchmesser eines Korns, Anteil der Steinbreite",
  "whether neighbours share grains": "ob Nachbarn sich Körner teilen",
  "width of the bright cut beside the stones, mm; 0 for none":
    "Breite des Glanzschnitts neben den Steinen, mm; 0 für keinen",
  "how far each wall reaches over the stone, share of its width":
    "wie weit jede Wand über den Stein reicht, Anteil seiner Breite",
  "angle between the two faces of the seat's notch, degrees":
    "Winkel zwischen den beiden Flächen der Kerbe für den Stein, Grad",
  "height of walls raised over the surface, mm; 0 for none":
    "Höhe von Wänden, die über der Oberfläche stehen, mm; 0 für keine",
  "thickness of raised walls, mm": "Stärke dieser Wände, mm",
  "thickness of its wall, mm": "Stärke der Zarge, mm",
  "height over the girdle, share of the crown's": "Höhe über der Rundiste, Anteil des Oberteils",
  "width of the ledge that the stone rests on, mm": "Breite der Auflage des Steins, mm",
  "prongs of a stone": "Krappen je Stein",
  "of a prong at its foot, mm": "Durchmesser einer Krappe am Fuß, mm",
  "width of its tip, share of its foot": "Breite ihrer Spitze, Anteil des Fußes",
  "how deep the girdle goes into it, share of its width there":
    "wie tief die Rundiste in sie greift, Anteil ihrer Breite dort",
  "whether neighbours share prongs": "ob Nachbarn sich Krappen teilen",
  "where the first stands, degrees from the stone's length":
    "wo die erste steht, Grad von der Längsrichtung des Steins",
  "whether each is open below, into the bore, and how":
    "ob jeder nach unten in die Bohrung des Rings offen ist, und wie",
  "round, or as the stone is cut": "rund oder in der Form des Steins",
  "share of the stone's": "Anteil der Steinbreite",
  "how far its edge in the bore is broken, mm": "wie weit die Kante innen gebrochen ist, mm",
  "gems of your own": "eigene Edelsteine",
  "g/cm³": "g/cm³",
  "by Mohs": "Härte nach Mohs",
};
