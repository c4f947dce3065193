/** German for what is told of drawn art: paths, shapes, SVG files, images, textures, motifs. */
import type { Phrases } from "../phrasebook.js";

export const artPhrases: Phrases = {
  // Paths and shapes.
  "the path draws nothing": "Der Pfad zeichnet nichts.",
  "at least one open line of some length, or a closed one about some area":
    "mindestens eine offene Linie von einiger Länge, oder eine geschlossene um einige Fläche",
  "the path is too tangled: its lines lie across each other":
    "Der Pfad ist zu verworren: Seine Linien liegen übereinander.",
  "at most {0#} near pairs": "höchstens {0} nahe Paare",
  "at most {0#} near pairs, counted in each step": "höchstens {0} nahe Paare, in jedem Schritt gezählt",
  "draw it more simply: a tile is a few millimetres wide":
    "einfacher zeichnen: eine Kachel ist wenige Millimeter breit",
  "{0} leaves its tile at x {1#}, y {2#}": "{0} verlässt die Kachel bei x {1}, y {2}.",
  "the path": "der Pfad",
  "the drawing": "die Zeichnung",
  "the text": "der Text",
  "the shape": "die Form",
  "x from {0#} to {1#}, y within ±{2#} (unit {3})": "x von {0} bis {1}, y innerhalb ±{2} (Einheit {3})",
  'a tile is 1 wide and `aspect` high; say "unit": "mm" where the path is in millimetres':
    'eine Kachel ist 1 breit und „aspect“ hoch; bei Pfaden in Millimetern "unit": "mm" angeben',
  'say "unit": "tile" where the path is in tile widths': 'bei Pfaden in Kachelbreiten "unit": "tile" angeben',
  "the path holds a number too large to draw with": "Der Pfad enthält eine Zahl, die zum Zeichnen zu groß ist.",
  "finite coordinates": "endliche Koordinaten",
  "a piece of the path would take more than {0#} arcs to stay within {1#} of its curve":
    "Ein Stück des Pfades bräuchte mehr als {0} Bögen, um innerhalb {1} seiner Kurve zu bleiben.",
  "at most {0#} arcs a piece": "höchstens {0} Bögen je Stück",
  "draw it smaller, or allow a larger tolerance": "kleiner zeichnen oder eine größere Toleranz erlauben",
  "a piece of the path would take {0#} chords to stay within {1#} of its curve":
    "Ein Stück des Pfades bräuchte {0} Sehnen, um innerhalb {1} seiner Kurve zu bleiben.",
  "at most {0#} chords a piece": "höchstens {0} Sehnen je Stück",
  "SVG path data that begins with M, e.g. M 0 0 L 1 0 L 1 1 Z":
    "SVG-Pfaddaten, die mit M beginnen, z. B. M 0 0 L 1 0 L 1 1 Z",
  "the path crosses itself; it was united by the fill rule {0}, leaving {1#} outline":
    "Der Pfad kreuzt sich selbst; er wurde nach der Füllregel {0} vereinigt, es bleibt {1} Umriss.",
  "the path crosses itself; it was united by the fill rule {0}, leaving {1#} outlines":
    "Der Pfad kreuzt sich selbst; er wurde nach der Füllregel {0} vereinigt, es bleiben {1} Umrisse.",
  'draw it without crossings, or choose "fill": "evenodd" where crossings should cut holes':
    'ohne Kreuzungen zeichnen, oder mit "fill": "evenodd" Löcher daraus machen',
  "what is drawn is too tangled to be worked: its lines, or what is drawn about them, lie across each other":
    "Die Zeichnung ist zu verworren: Ihre Linien, oder was um sie herum gezeichnet ist, liegen übereinander.",
  "at most {0#} crossings at a time": "höchstens {0} Kreuzungen auf einmal",
  "draw it more simply, or make ribbons, offsets and rounded edges narrower":
    "einfacher zeichnen, oder Bänder, Versatz und gerundete Kanten schmaler machen",
  "the shape {0}": "Die Form {0}.",
  "draws more than {0#} parts": "zeichnet mehr als {0} Teile",
  "comes to {0#} open lines": "ergibt {0} offene Linien",
  "comes to more than {0#} corners, counted in each step": "hat mehr als {0} Ecken, in jedem Schritt gezählt",
  "is too tangled: its lines lie across each other": "ist zu verworren: Ihre Linien liegen übereinander",
  "is nested more than {0#} shapes deep": "ist mehr als {0} Formen tief geschachtelt",
  "at most {0#} shapes deep": "höchstens {0} Formen tief",
  "a copy reaches more than {0#} mm from the tile": "Eine Kopie reicht mehr als {0} mm von der Kachel weg.",
  "within {0#} mm": "innerhalb {0} mm",
  "check its centre, its lines and their unit": "Mittelpunkt, Linien und ihre Einheit prüfen",
  "there is no shape of the name {0}": "Eine Form mit dem Namen {0} gibt es nicht.",
  "none: pattern.shapes is empty": "keine: pattern.shapes ist leer",
  'name it in "pattern": {"shapes": {…}}': 'sie in "pattern": {"shapes": {…}} benennen',
  "the shape is made of itself: {0}": "Die Form ist aus sich selbst gemacht: {0}.",
  "shapes that do not lead back to themselves": "Formen, die nicht auf sich selbst zurückführen",
  "half-drop columns only match the next tile's where their number is even":
    "Halb versetzte Spalten passen nur an die nächste Kachel, wenn ihre Zahl gerade ist.",
  "brick rows only match those of the tile above where their number is even":
    "Versetzte Reihen passen nur an die Kachel darüber, wenn ihre Zahl gerade ist.",
  "the copies miss the tile": "Die Kopien verfehlen die Kachel.",
  "nothing of the shape lies {0#} inside its outline": "Nichts von der Form liegt {0} innerhalb ihres Umrisses.",
  "an open line has no inside, so it {0}": "Eine offene Linie hat keine Innenseite: Sie {0}.",
  "shapes whose paths all end in Z": "Formen, deren Pfade alle mit Z enden",
  "end the path with Z": "den Pfad mit Z abschließen",
  "shapes that leave something": "Formen, die etwas übrig lassen",
  "check their places and their unit": "ihre Lage und ihre Einheit prüfen",
  "a shape is cut along one open line": "Eine Form wird entlang einer einzigen offenen Linie geschnitten.",
  "path data with one M and no Z": "Pfaddaten mit einem M und ohne Z",
  "the line crosses itself, or would where it goes on beyond its ends, so that it has no two sides":
    "Die Linie kreuzt sich selbst, oder täte es über ihre Enden hinaus; so hat sie keine zwei Seiten.",
  "a line whose straight prolongations do not meet it or each other":
    "eine Linie, deren gerade Verlängerungen weder sie noch einander treffen",
  "draw the line on until its ends point apart": "die Linie weiterzeichnen, bis ihre Enden auseinander zeigen",
  "the file {0} was not loaded": "Die Datei {0} wurde nicht geladen.",
  "hand it to build as files, name → bytes; the command line looks beside the design":
    "die Datei neben den Entwurf legen oder dazu öffnen",
  "hand it to build as files, name → text; the command line looks beside the design":
    "die Datei neben den Entwurf legen oder dazu öffnen",
  "hand its bytes to build as files, name → bytes; the command line looks beside the design, and in packages for names that begin with package:":
    "die Schriftdatei neben den Entwurf legen oder dazu öffnen; Namen mit package: stehen für Schriften aus Paketen",
  "the file {0} cannot be read: {1}": "Die Datei {0} lässt sich nicht lesen: {1}",
  "there is no file {0}": "Eine Datei {0} gibt es nicht.",
  // Images and textures.
  "the {0} of {1} do not meet: their heights differ by up to {2#}, {3#} of {4#} pixels along them":
    "Die {0} von {1} passen nicht aneinander: Ihre Höhen unterscheiden sich um bis zu {2}, bei {3} von {4} Bildpunkten.",
  "left and right sides": "linke und rechte Seite",
  ends: "Enden",
  "a step of at most {0#} beyond those beside it": "eine Stufe, höchstens {0} größer als die daneben",
  'draw the image so that it repeats, say "seam": {"blend": 0.5} to let its ends overlap and blend, or take a symmetry with mirrors':
    'das Bild so zeichnen, dass es sich wiederholt, mit "seam": {"blend": 0.5} die Enden ineinander übergehen lassen, oder eine Symmetrie mit Spiegeln nehmen',
  "{0} is stretched: it is {1#} by {2#} pixels and fills {3#} by {4#}, so its pixels are {5#} times as long as wide":
    "{0} wird verzerrt: Das Bild hat {1} × {2} Bildpunkte und füllt {3} × {4}; ein Bildpunkt wird {5}-mal so lang wie breit.",
  "{0#} by {1#} pixels would be true": "{0} × {1} Bildpunkte wären unverzerrt",
  "samples every {0#} would be more than {1#} round the band":
    "Abtastpunkte alle {0} wären mehr als {1} rund um die Ringschiene.",
  "a caster shows a few hundredths of a millimetre at best": "ein Guss zeigt bestenfalls einige Hundertstel Millimeter",
  "the image {0}": "Das Bild {0}.",
  "was handed over as text, not as bytes": "wurde als Text übergeben, nicht als Bytes",
  "cannot be read: {0}": "lässt sich nicht lesen: {0}",
  "has pixels whose number is not in its palette": "hat Bildpunkte, die in seiner Palette fehlen",
  "says that it has no pixels": "gibt an, keine Bildpunkte zu haben",
  "says that it is of a kind that PNG does not know": "gibt eine Art an, die PNG nicht kennt",
  "is interlaced with {0#} bits a sample, which is not read":
    "ist mit {0} Bit verschränkt gespeichert; so wird es nicht gelesen",
  "file has {0#} bytes": "ist eine Datei von {0} Bytes",
  "has no header": "hat keinen Kopf",
  "has no palette, though its pixels are numbers in one": "hat keine Palette, obwohl es eine braucht",
  "is no PNG file": "ist keine PNG-Datei",
  "has too many pieces": "besteht aus zu vielen Stücken",
  "ends before it is whole": "endet, bevor es vollständig ist",
  "has a piece {0} that PNG does not know": "enthält ein Stück {0}, das PNG nicht kennt",
  "holds pixels that cannot be unpacked": "enthält Bildpunkte, die sich nicht entpacken lassen",
  "a sound PNG file": "eine unbeschädigte PNG-Datei",
  "save the image again as PNG": "das Bild neu als PNG speichern",
  "scale it down: a pixel every few hundredths of a millimetre is finer than a caster can show":
    "verkleinern: ein Bildpunkt alle paar Hundertstel Millimeter ist feiner, als ein Guss zeigen kann",
  "nothing of {0} is there: no place is higher than {1#}": "Von {0} bleibt nichts: Keine Stelle ist höher als {1}.",
  "give the map a base, invert it, or make it less transparent":
    "dem Höhenbild einen Sockel geben („base“), es umkehren („invert“) oder weniger durchsichtig machen",
  "samples of the texture stand {0#} apart, which is too far for a size of {1#}":
    "Die Abtastpunkte der Textur stehen {0} auseinander; das ist zu weit für eine Größe von {1}.",
  "make it larger, or give the map a finer resolution": "gröber machen oder dem Höhenbild eine feinere Abtastung geben",
  "the {0} texture is {1#} {2} from one to the next, and comes again after {3#} along and {4#} across":
    "Die Textur „{0}“ misst {1} von einem zum nächsten ({2}) und kehrt nach {3} der Länge und {4} der Breite nach wieder.",
  along: "der Länge nach",
  across: "der Breite nach",
  'give it a shorter "length"': 'eine kürzere Länge ("length") angeben',
  'make it smaller, or say "map": {"over": "band"}': 'feiner machen oder "map": {"over": "band"} angeben',
  "nothing of the texture is there: no place is higher, or deeper, than {0#}":
    "Von der Textur bleibt nichts: Keine Stelle ist höher oder tiefer als {0}.",
  "make it deeper, the design's tolerance smaller, or the map's edge narrower":
    "tiefer machen, die Toleranz des Entwurfs verkleinern oder den Auslauf des Höhenbilds schmaler machen",
  // Motifs.
  "the motif {0} is not made for tiles {1#} times as high as wide":
    "Das Motiv {0} ist nicht für Kacheln gemacht, die {1}-mal so hoch wie breit sind.",
  "an aspect from {0#} to {1#}": "ein Seitenverhältnis von {0} bis {1}",
  'set "fit": {"aspect": {0#}}, or more rows': '"fit": {"aspect": {0}} angeben (mit Punkt), oder mehr Reihen',
};
