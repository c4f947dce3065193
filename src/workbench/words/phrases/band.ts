/** German for what is told of the band: its cross-section, taper, fit and size. */
import type { Phrases } from "../phrasebook.js";

export const bandPhrases: Phrases = {
  // Cross-section.
  "the bevels leave no flat middle between them": "Die Fasen lassen keine flache Mitte zwischen sich.",
  "the rails leave no channel between them": "Die Randstege lassen keine Nut zwischen sich.",
  "the channel's floor {0}": "Der Boden der Nut {0}.",
  "stands above the rails": "steht über den Randstegen",
  "rises more than half its width": "wölbt sich um mehr als die halbe Breite der Nut",
  "the hollow is deeper than half the band's width": "Die Kehlung ist tiefer als die halbe Ringbreite.",
  "the dome rises more than half the band's width": "Die Wölbung ist höher als die halbe Ringbreite.",
  "the bore rises more than half the band's width": "Die innere Wölbung ist höher als die halbe Ringbreite.",
  "the outside reaches into the bore": "Die Außenseite reicht in die Innenseite hinein.",
  "the bore {0}; the model needs {1#} of metal between them":
    "Die Innenseite {0}; dazwischen braucht das Modell {1} Metall.",
  "comes within {0#} of the outside": "kommt der Außenseite bis auf {0} nahe",
  "reaches the outside": "erreicht die Außenseite",
  "where the outside meets the bore without a side wall, the only edge is the bore's":
    "Wo Außenseite und Innenseite ohne Seitenwand zusammentreffen, gibt es nur die Kante der Innenseite.",
  "the steps reach beyond the curve of the outside that they are cut into":
    "Die Absätze reichen über die Rundung der Außenseite hinaus, in die sie geschnitten sind.",
  "the rounded corners do not fit between their neighbours":
    "Die gerundeten Kanten passen nicht zwischen ihre Nachbarn.",
  "the rounded corners leave nothing of the outside for a pattern":
    "Die gerundeten Kanten lassen von der Außenseite nichts für ein Muster übrig.",
  "the band leaves no room for a pattern": "Die Ringschiene lässt keinen Platz für ein Muster.",
  "a size of the cross-section is not a length that can be drawn":
    "Ein Maß des Querschnitts lässt sich nicht zeichnen.",
  "the cross-section's sizes do not give finite coordinates":
    "Die Maße des Querschnitts ergeben keine brauchbaren Punkte.",
  "every length must be a number of mm": "jede Länge muss eine Zahl in mm sein",
  "the cross-section crosses or touches itself at {0}": "Der Querschnitt kreuzt oder berührt sich bei {0}.",
  "make the rounded edges smaller or the band thicker": "die Kanten weniger runden oder die Ringschiene stärker machen",
  "several radii are too large at once; this is the largest with every other corner sharp":
    "mehrere Radien sind zugleich zu groß; dies ist der größte, wenn alle anderen Kanten scharf sind",
  "make the band thicker": "die Ringschiene stärker machen",
  "no single value mends this: make the band thicker or wider, or several of its features smaller":
    "kein einzelner Wert behebt das: die Ringschiene stärker oder breiter machen, oder mehrere ihrer Teile kleiner",
  "the outside is not one open run": "Die Außenseite ist kein einzelner offener Zug.",
  "one M, then L, H, V, C, S, Q, T or A; no Z": "ein M, dann L, H, V, C, S, Q, T oder A; kein Z",
  "draw only the outside: bore and side walls are added":
    "nur die Außenseite zeichnen: Innenseite und Seitenwände kommen von selbst dazu",
  "the outside does not run from one side to the other": "Die Außenseite läuft nicht von einer Seite zur anderen.",
  "from −w to +w, the same on both sides": "von −w nach +w, auf beiden Seiten gleich weit",
  "draw it from left to right with w = 0 in the middle": "von links nach rechts zeichnen, mit w = 0 in der Mitte",
  "at most {0#} on either side, where it begins and ends": "höchstens {0} auf jeder Seite, wo sie beginnt und endet",
  "draw no overhang past the ends": "nichts über die Enden hinausragen lassen",
  "the drawing's highest point is {0#} above the bore":
    "Der höchste Punkt der Zeichnung liegt {0} über der Innenseite.",
  "set the thickness to the drawing's highest point": "die Stärke auf den höchsten Punkt der Zeichnung setzen",
  "the seat is not a stretch of the outside": "Die Musterfläche ist kein Stück der Außenseite.",
  "[w0, w1] with w0 below w1, both on the drawing": "[w0, w1] mit w0 kleiner als w1, beide auf der Zeichnung",
  "lines and arcs in (w, r), at least one": "Linien und Bögen in (w, r), mindestens einer",
  "the seat has a corner at w {0#} mm, so a pattern on it has no direction to stand in":
    "Die Musterfläche hat bei w {0} mm eine Ecke; ein Muster darauf hat keine Richtung, in der es stehen kann.",
  "a seat without corners": "eine Musterfläche ohne Ecken",
  "round the corner (a knife edge: give it a ridge radius), or keep the pattern off it with a narrower seat":
    "die Ecke runden (bei einem Grat mit „ridge“) oder das Muster mit einer schmaleren Musterfläche davon fernhalten",
  "the seat leans by more than 60° at v {0#}, where a hole towards the finger would only graze it":
    "Die Musterfläche neigt sich bei v {0} um mehr als 60°; ein Durchbruch zum Finger hin würde sie dort nur streifen.",
  "keep pierced regions to where the seat faces outward":
    "Durchbrüche nur setzen, wo die Musterfläche nach außen zeigt",
  "the seat leans by more than 60° at v {0#}, where upright walls would hardly stand on it":
    "Die Musterfläche neigt sich bei v {0} um mehr als 60°; aufrechte Wände stünden dort kaum auf ihr.",
  'keep upright regions to where the seat faces outward, or leave "upright" out':
    "aufrechte Figuren nur setzen, wo die Musterfläche nach außen zeigt, oder „upright“ weglassen",
  // Taper.
  "at {0#}° the band is {1#} wide and {2#} thick, and there {3}":
    "Bei {0}° ist die Ringschiene {1} breit und {2} stark; dort gilt: {3}",
  "at least {0#} at {1#}°": "mindestens {0} bei {1}°",
  "at most {0#} at {1#}°": "höchstens {0} bei {1}°",
  "at least {0#} at {1#}°, with the width of the top": "mindestens {0} bei {1}°, mit der Breite von oben",
  "at most {0#} at {1#}°, with the width of the top": "höchstens {0} bei {1}°, mit der Breite von oben",
  "taper its {0} less, or make {1} smaller all round": "{0} weniger verjüngen oder {1} rundum kleiner machen",
  width: "die Breite",
  thickness: "die Stärke",
  "at {0#}° the cross-section is made of other curves than at the top, so that one cannot go over into the other":
    "Bei {0}° besteht der Querschnitt aus anderen Kurven als oben; der eine lässt sich nicht in den anderen überführen.",
  "a rounded corner just fits there, or the outside is drawn freely with curves: make edges smaller, taper less, or draw it with points":
    "eine gerundete Kante passt dort gerade noch, oder die Außenseite ist frei mit Kurven gezeichnet: Kanten kleiner machen, weniger verjüngen oder mit Punkten zeichnen",
  // Fit.
  "the band is {0#} wide instead of {1#}, so that {2#} tiles fit":
    "Die Ringschiene ist {0} statt {1} breit, damit {2} Kacheln aufgehen.",
  'see `annulet fit` for other numbers of repeats, or say "hold": "band" to keep the width':
    'eine andere Zahl von Wiederholungen wählen, oder mit "hold": "band" die Breite behalten',
  "the tile is stretched across the band by {0#} %": "Die Kachel wird quer zur Ringschiene um {0} % gedehnt.",
  "the tile of {0} is stretched across the band by {1#} %":
    "Die Kachel von {0} wird quer zur Ringschiene um {1} % gedehnt.",
  "within ±{0#} %": "innerhalb ±{0} %",
  'choose other repeats, another band width, or "hold": "tile"':
    'andere Wiederholungen, eine andere Ringbreite oder "hold": "tile" wählen',
  "the gaps between the lanes leave nothing of the seat":
    "Die Abstände zwischen den Bahnen lassen nichts von der Musterfläche übrig.",
  "make the gaps narrower, or the band wider": "die Abstände schmaler oder die Ringschiene breiter machen",
  "no band makes lanes of {0} true tiles fill its seat":
    "Keine Ringschiene hat eine Musterfläche, die Bahnen von {0} unverzerrten Kacheln füllen.",
  'change the repeats, rows or aspects, or say "hold": "band" in the pattern\'s fit, so that the tiles stretch':
    'Wiederholungen, Reihen oder Seitenverhältnisse ändern, oder mit "hold": "band" die Kacheln dehnen lassen',
  "no band between {0#} and {1#} wide makes {2#} tiles of aspect {3#} in {4#} row meet":
    "Keine Ringschiene von {0} bis {1} Breite lässt {2} Kacheln mit dem Seitenverhältnis {3} in {4} Reihe aufgehen.",
  "no band between {0#} and {1#} wide makes {2#} tiles of aspect {3#} in {4#} rows meet":
    "Keine Ringschiene von {0} bis {1} Breite lässt {2} Kacheln mit dem Seitenverhältnis {3} in {4} Reihen aufgehen.",
  "of the numbers near it and near the drawn band: {0}":
    "von den Zahlen in der Nähe und nahe an der gezeichneten Ringschiene: {0}",
  'change the repeats, rows or aspect, or say "hold": "band" so that the tile stretches':
    'Wiederholungen, Reihen oder Seitenverhältnis ändern, oder mit "hold": "band" die Kachel dehnen lassen',
  "the design has no pattern, so there is nothing to fit": "Der Entwurf hat kein Muster; es gibt nichts einzupassen.",
  'add "pattern": {} for square tiles': 'mit "pattern": {} quadratische Kacheln anlegen',
  // Size.
  "This is no ring's bore.": "Das ist kein Innenmaß eines Ringes.",
  "Lengths are in mm: an inch is 25.4 mm. Check whether a diameter was meant or a circumference.":
    "Längen sind in mm; ein Zoll sind 25,4 mm. Ist der Durchmesser gemeint oder der Umfang?",
  "There is no size system {0}.": "Ein Größensystem {0} gibt es nicht.",
  "a list of size systems, such as sizeSystems and what scaleSystem makes": "eine Liste von Größensystemen",
  "{0} has no size {1}.": "{0}: Eine Größe {1} gibt es nicht.",
  'Write it like {0}, or give the bore itself: {"diameter": mm} or {"circumference": mm}.':
    'So schreiben: {0}, oder das Innenmaß selbst angeben: {"diameter": mm} oder {"circumference": mm}.',
  "A band has a width.": "Ein Ring hat eine Breite.",
  "A band {0#} wide fits tighter: many makers {1}. Sources disagree on how much; the size was left as it is.":
    "Ein {0} breiter Ring sitzt enger: Viele nehmen {1}. Die Quellen sind sich nicht einig, wie viel; die Größe wurde nicht geändert.",
  "A comfort bore often fits looser: {0}. Sources disagree on whether and how much; the size was left as it is.":
    "Ein innen bombierter Ring sitzt oft lockerer, eher wie {0}. Die Quellen sind sich nicht einig, ob und wie viel; die Größe wurde nicht geändert.",
  "take {0#} to {1#} mm more round the finger": "{0} bis {1} mm mehr Umfang",
  "like {0#} to {1#} mm less round the finger": "{0} bis {1} mm weniger Umfang",
  "take {0} instead of {1}, {2#} to {3#} mm more round the finger": "{0} statt {1}, also {2} bis {3} mm mehr Umfang",
  "like {0} and not {1}, {2#} to {3#} mm less round the finger": "{0} statt {1}, also {2} bis {3} mm weniger Umfang",
  "Try on a sample of the same width and bore.": "Ein Muster gleicher Breite und Innenform anprobieren.",
  "The step leads to no label of this size system.": "Dieser Schritt führt zu keiner Größe des Systems.",
  "{0}, or a multiple of it": "{0} oder ein Vielfaches davon",
  "The size {0} is larger than {1}.": "Die Größe {0} liegt über {1}.",
  "begin with the smaller one": "mit der kleineren beginnen",
  "The size is not given.": "Die Größe ist nicht angegeben.",
  "The size is given in {0#} ways.": "Die Größe ist auf {0} Arten angegeben.",
  "one of {system, value}, {diameter}, {circumference}": "eines von {system, value}, {diameter}, {circumference}",
  'Write one of them, for example {"system": "iso", "value": 54}.':
    'Eines davon schreiben, zum Beispiel {"system": "iso", "value": 54}.',
};
