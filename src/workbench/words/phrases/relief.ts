/** German for what is told of regions: where they lie, ribbons, sections, edges, weaves, ends, holes. */
import type { Phrases } from "../phrasebook.js";

export const reliefPhrases: Phrases = {
  // Regions.
  "the region reaches {0#} beyond the edge of the seat": "Die Figur ragt {0} über den Rand der Musterfläche.",
  "within {0#} of the seat's middle line": "innerhalb {0} um die Mittellinie der Musterfläche",
  "draw it lower, make its ribbon narrower, or make the band wider":
    "niedriger zeichnen, ihr Band schmaler oder die Ringschiene breiter machen",
  "parts of the region touch in a point at x {0#}, y {1#} (tile widths): {2}":
    "Teile der Figur berühren sich in einem Punkt bei x {0}, y {1} (Kachelbreiten): {2}.",
  "the region is {0#} mm wide at x {1#}, y {2#} (tile widths): {3}":
    "Die Figur ist nur {0} mm breit bei x {1}, y {2} (Kachelbreiten): {3}.",
  "parts of the region nearly touch: the gap is {0#} mm wide at x {1#}, y {2#} (tile widths): {3}":
    "Teile der Figur berühren sich fast: Die Lücke ist {0} mm breit bei x {1}, y {2} (Kachelbreiten): {3}.",
  "parts of the region are too small to be made: {0}": "Teile der Figur sind zu klein, um hergestellt zu werden: {0}.",
  "gaps and necks narrower than {0#} were closed or opened":
    "Lücken und Engstellen unter {0} wurden geschlossen oder geöffnet",
  "gaps and necks narrower than {0#} were closed or opened, and with them went {1}":
    "Lücken und Engstellen unter {0} wurden geschlossen oder geöffnet, dabei ging verloren: {1}",
  "{0#} % of the region": "{0} % der Figur",
  "let the parts overlap clearly or keep a clear gap between them":
    "die Teile deutlich überlappen lassen oder deutlich trennen",
  "nothing of the region is wider than {0#}, so nothing of it can be made":
    "Nichts von der Figur ist breiter als {0}; davon lässt sich nichts herstellen.",
  "parts wider than {0#}": "Teile, die breiter sind als {0}",
  "draw it larger, or look whether its unit is the one meant":
    "größer zeichnen oder prüfen, ob die Einheit die gemeinte ist",
  "nothing of the region is left within the edges of the seat and the ends of the pattern":
    "Innerhalb der Ränder der Musterfläche und der Enden des Musters bleibt von der Figur nichts.",
  "art that lies at least in part where the pattern is": "eine Zeichnung, die wenigstens zum Teil im Muster liegt",
  "move it inwards, or leave it out": "nach innen rücken oder weglassen",
  "no region has the name {0}": "Keine Figur heißt {0}.",
  "none: no region has a name": "keine: keine Figur hat einen Namen",
  'give the region meant a "name"': 'der gemeinten Figur einen Namen ("name") geben',
  "{0#} regions have the name {1}": "{0} Figuren heißen {1}.",
  "a name that one region has": "ein Name, den genau eine Figur hat",
  "rename all but one of {0}": "alle bis auf eine umbenennen: {0}",
  "the region is composed with itself: {0}": "Die Figur ist aus sich selbst zusammengesetzt: {0}.",
  "regions that do not lead back to this one": "Figuren, die nicht auf diese zurückführen",
  "the region {0} is a height map, which has no outline to compose with":
    "Die Figur {0} ist ein Höhenbild und hat keinen Umriss, mit dem sich etwas zusammensetzen ließe.",
  "a region that is drawn": "eine gezeichnete Figur",
  "the path is open, and its images under the symmetry do not close it, so it has no inside to fill":
    "Der Pfad ist offen, und seine Bilder unter der Symmetrie schließen ihn nicht; er hat keine Innenseite.",
  "the path is open, so it has no {0}": "Der Pfad ist offen; er hat kein „{0}“.",
  "a path that ends in Z, or one whose images close into a loop":
    "ein Pfad, der mit Z endet, oder einer, dessen Bilder sich zu einer Schleife schließen",
  "end the path with Z, or give the region a ribbon": "den Pfad mit Z abschließen oder die Figur als Band zeichnen",
  'end the path with Z, or put the ribbon on the "centre"':
    'den Pfad mit Z abschließen oder das Band auf die Mitte ("centre") setzen',
  "at least -{0#}": "mindestens −{0}",
  "nothing of the region {0}": "Nichts von der Figur {0}.",
  "lies within the regions named": "liegt in den genannten Figuren",
  "is left beside the regions named": "bleibt neben den genannten Figuren",
  "check which regions are named, and where they stand": "prüfen, welche Figuren genannt sind und wo sie stehen",
  "with casting.finishing added, before it is taken off: {0}":
    "mit der Zugabe für das Versäubern, bevor sie abgenommen wird: {0}",
  // Ribbons.
  "the line turns too tightly for {0#} ribbons side by side: the outermost one would fold over itself":
    "Die Linie biegt sich zu eng für {0} Bänder nebeneinander: Das äußerste würde sich falten.",
  "outermost centre lines at most {0#} from the middle": "äußerste Mittellinien höchstens {0} von der Mitte",
  "make the ribbons or the gaps narrower, take fewer of them, or let the line turn more gently":
    "Bänder oder Abstände schmaler machen, weniger davon nehmen oder die Linie sanfter biegen",
  "{0#} ribbons side by side fill their region: nothing is left inside":
    "{0} Bänder nebeneinander füllen ihre Figur: Innen bleibt nichts.",
  "a ribbon {0#} wide fills its region: nothing is left inside":
    "Ein {0} breites Band füllt seine Figur: Innen bleibt nichts.",
  "to reach at most {0#} in from the border": "höchstens {0} vom Rand nach innen",
  "make the ribbon narrower, draw the region larger, or leave the ribbon out to fill it":
    "das Band schmaler machen, die Figur größer zeichnen, oder das Band weglassen und sie füllen",
  "a tapering ribbon cannot lie inside or outside of a closed line":
    "Ein sich verjüngendes Band kann nicht innen oder außen an einer geschlossenen Linie liegen.",
  '"centre" on a closed line': '"centre" auf einer geschlossenen Linie',
  'say "side": "centre", draw an open line, or leave the taper out':
    '"side": "centre" angeben, eine offene Linie zeichnen oder die Verjüngung weglassen',
  // Holes and depths.
  "what is cut out comes within {0#} of the edge of the seat, where the rails or the band's edge stand":
    "Was ausgeschnitten wird, kommt dem Rand der Musterfläche bis auf {0} nahe; dort stehen Randstege oder Kante.",
  "what is cut out reaches the edge of the seat, where the rails or the band's edge stand":
    "Was ausgeschnitten wird, erreicht den Rand der Musterfläche; dort stehen Randstege oder Kante.",
  "within {0#} of the seat's middle line, its broken or drafted edge included":
    "innerhalb {0} um die Mittellinie der Musterfläche, gebrochene oder schräge Kante eingerechnet",
  "draw it lower, break its edges less, or make the band wider":
    "niedriger zeichnen, die Kanten weniger brechen oder die Ringschiene breiter machen",
  "the holes surround a piece of the band, which would fall out":
    "Die Durchbrüche umschließen ein Stück der Ringschiene; es würde herausfallen.",
  "leave a bridge that holds the inner piece": "einen Steg stehen lassen, der das innere Stück hält",
  "the hole runs all the way round and would cut the band in two":
    "Der Durchbruch läuft rundum und würde die Ringschiene in zwei Teile trennen.",
  "leave bridges between the holes": "Stege zwischen den Durchbrüchen stehen lassen",
  "edges broken by {0#} meet inside the wall, which is {1#} thick there":
    "Um {0} gebrochene Kanten treffen sich in der Wand, die dort {1} stark ist.",
  "break the edges less, or make the band thicker": "die Kanten weniger brechen oder die Ringschiene stärker machen",
  "a region sunk {0#} deep leaves too little metal below it; the model needs {1#}":
    "Eine {0} tiefe Figur lässt zu wenig Metall unter sich; das Modell braucht {1}.",
  "a region sunk {0#} deep leaves too little metal below it; the model needs {1#}, and {2#} is cut from the other side":
    "Eine {0} tiefe Figur lässt zu wenig Metall unter sich; das Modell braucht {1}, und {2} sind von der anderen Seite abgenommen.",
  "sink it less, or make the band thicker": "weniger vertiefen oder die Ringschiene stärker machen",
  "a region stands {0#} high in a hollow of the seat so tight that its walls meet below that height":
    "Eine Figur steht {0} hoch in einer so engen Höhlung der Musterfläche, dass ihre Wände sich darunter treffen.",
  "at most {0#} there": "dort höchstens {0}",
  "make it lower, keep it off the hollow, or make the hollow wider or flatter":
    "niedriger machen, von der Höhlung fernhalten, oder die Höhlung weiter oder flacher machen",
  "a region stands {0#} high on both sides of a hollow of the seat so tight that its walls meet over it":
    "Eine Figur steht {0} hoch zu beiden Seiten einer so engen Höhlung der Musterfläche, dass ihre Wände sich darüber treffen.",
  "a region is {0#} deep on both sides of a ridge of the seat so tight that its walls meet inside it":
    "Eine Figur ist {0} tief zu beiden Seiten eines so engen Grates der Musterfläche, dass ihre Wände sich darin treffen.",
  'make it lower, draw its two sides as regions of their own, or say "upright": true so that its walls stand along the radius':
    'niedriger machen, die beiden Seiten als eigene Figuren zeichnen, oder mit "upright": true die Wände zum Radius ausrichten',
  'make it less deep, draw its two sides as regions of their own, or say "upright": true so that its walls stand along the radius':
    'weniger tief machen, die beiden Seiten als eigene Figuren zeichnen, oder mit "upright": true die Wände zum Radius ausrichten',
  // Edges of lobes.
  "a stretch of the outline {0#} long takes {1#} of these lobes, each {2#} wide instead of {3#}":
    "Ein {0} langes Stück des Umrisses fasst {1} dieser Bögen, jeder {2} statt {3} breit.",
  "choose a width that divides the outline's stretches better, or a larger cornerAngle":
    "eine Breite wählen, die in den Stücken des Umrisses besser aufgeht, oder einen größeren Eckwinkel (cornerAngle)",
  "{0} {1#} deep does not fit on lobes that come out {2#} wide":
    "„{0}“ mit {1} Tiefe passt nicht auf Bögen, die {2} breit werden.",
  "make them shallower or wider, or raise the cornerAngle so that short stretches count as one":
    "flacher oder breiter machen, oder den Eckwinkel (cornerAngle) erhöhen, damit kurze Stücke als eines zählen",
  "the edge asks for {0#} lobes in one period": "Die Kante verlangt {0} Bögen in einer Wiederholung.",
  "make the lobes wider": "die Bögen breiter machen",
  // Sections.
  "a dome on a wall of {0#} cannot end {1#} high {2#} inside the outline: it would be more than a quarter circle":
    "Eine Wölbung auf einer Wand von {0} kann nicht {1} hoch und {2} innerhalb des Umrisses enden: Sie wäre mehr als ein Viertelkreis.",
  "a dome on a wall of {0#} cannot end {1#} high {2#} inside the outline: it would be no rise":
    "Eine Wölbung auf einer Wand von {0} kann nicht {1} hoch und {2} innerhalb des Umrisses enden: Sie stiege nicht an.",
  "make it lower, its wall higher, or the region wider": "niedriger, ihre Wand höher oder die Figur breiter machen",
  "an edge rounded by {0#} does not fit between a wall of {1#} and what rises from it":
    "Eine um {0} gerundete Kante passt nicht zwischen eine Wand von {1} und das, was von ihr aufsteigt.",
  "make it smaller, or the wall higher": "kleiner oder die Wand höher machen",
  "give the section a wall: without one there is no such edge":
    "dem Schnitt eine Wand geben: ohne sie gibt es diese Kante nicht",
  "a top edge rounded by {0#} does not fit: {1}": "Eine um {0} gerundete Oberkante passt nicht: {1}.",
  "a top edge bevelled by {0#} does not fit: {1}": "Eine um {0} gefaste Oberkante passt nicht: {1}.",
  "make the rounding smaller, or the region wider or higher":
    "weniger runden, oder die Figur breiter oder höher machen",
  "make the bevel smaller, or the region wider or higher": "die Fase kleiner, oder die Figur breiter oder höher machen",
  "the region is only so high": "die Figur ist nur so hoch",
  "the region is only {0#} wide at its narrowest, near x {1#}, y {2#} of the tile":
    "die Figur ist an der schmalsten Stelle nur {0} breit, bei x {1}, y {2} der Kachel",
  "the rim is only so high": "der Rand ist nur so hoch",
  "a hollow {0#} deep does not fit behind the rim: it has {1#} to fall in, and {2#} to the seat":
    "Eine {0} tiefe Mulde passt nicht hinter den Rand: Zum Abfallen hat sie {1}, bis zur Musterfläche {2}.",
  "above 0 to {0#}": "über 0 bis {0}",
  "make it shallower, the rim or its rounding narrower, or the region wider":
    "flacher machen, den Rand oder seine Rundung schmaler, oder die Figur breiter",
  "a ridge on a wall of {0#} does not rise": "Ein Grat auf einer Wand von {0} steigt nicht an.",
  "make it higher, or its wall lower": "höher oder die Wand niedriger machen",
  "a nose of {0#} does not fit between the flanks": "Eine Rundung von {0} passt nicht zwischen die Flanken.",
  "make it smaller, or the region wider": "kleiner oder die Figur breiter machen",
  // Weaves.
  "{0=} crosses another strand at too small an angle at u {1#}, v {2#}":
    "{0} kreuzt einen anderen Strang bei u {1}, v {2} in einem zu flachen Winkel.",
  "{0#}° or more between the two": "{0}° oder mehr zwischen beiden",
  "draw the lines so that they cross more steeply": "die Linien so zeichnen, dass sie sich steiler kreuzen",
  "{0=} crosses itself at u {1#}, v {2#} with nothing else crossed in between, and such a curl cannot be woven yet":
    "{0} kreuzt sich bei u {1}, v {2} selbst, ohne dazwischen anderes zu kreuzen; eine solche Schlinge lässt sich noch nicht flechten.",
  "loops that cross another strand between the two passes of their own crossing":
    "Schlingen, die zwischen ihrer eigenen Kreuzung einen anderen Strang kreuzen",
  "let the loop cross its neighbour, or draw its two halves as regions of one set":
    "die Schlinge ihren Nachbarn kreuzen lassen, oder ihre Hälften als Figuren einer Gruppe zeichnen",
  "{0=} crosses over and under within {1#}, which leaves it {2#} to come down":
    "{0} geht innerhalb {1} über und unter anderen durch; zum Herabkommen bleiben {2}.",
  "crossings farther apart": "Kreuzungen weiter auseinander",
  "make the ribbons narrower, their crossings steeper or farther apart, or the lift lower":
    "die Bänder schmaler, ihre Kreuzungen steiler oder weiter auseinander, oder den Hub niedriger machen",
  "the woven lines have more points or crossings than can be worked":
    "Die geflochtenen Linien haben zu viele Punkte oder Kreuzungen.",
  "at most {0#} crossings in a few tiles": "höchstens {0} Kreuzungen in einigen Kacheln",
  "draw the lines with fewer points, or fewer of them": "die Linien mit weniger Punkten zeichnen, oder weniger davon",
  "{0=} crosses itself at {1}, and the order of the list cannot say which part passes over":
    "{0} kreuzt sich bei {1} selbst; die Reihenfolge der Liste sagt nicht, welcher Teil oben liegt.",
  '"alternate", or regions that do not cross themselves': '"alternate", oder Figuren, die sich nicht selbst kreuzen',
  "draw the two parts as two regions of the set": "die beiden Teile als zwei Figuren der Gruppe zeichnen",
  "more than two strands cross at {0}": "Bei {0} kreuzen sich mehr als zwei Stränge.",
  "two strands at each crossing": "zwei Stränge an jeder Kreuzung",
  "move one of them aside, so that they cross two by two": "einen zur Seite rücken, damit sie sich paarweise kreuzen",
  "{0=} cannot pass over and under by turns: going round, it would have to do both at {1}":
    "{0} kann nicht abwechselnd oben und unten liegen: Rundum müsste es bei {1} beides zugleich.",
  "strands that cross an even number of times before they come again":
    "Stränge, die sich eine gerade Zahl von Malen kreuzen, bevor sie wiederkehren",
  'say "cycle": 2 in the pattern, so that the order comes again after two tiles, or "over": "later", so that the later region in the list passes over':
    'im Muster "cycle": 2 angeben, damit die Ordnung nach zwei Kacheln wiederkehrt, oder "over": "later", damit die spätere Figur der Liste oben liegt',
  "the pattern's symmetry {0} exchanges what passes over and what passes under at {1}":
    "Die Symmetrie {0} des Musters vertauscht bei {1}, was oben und was unten liegt.",
  "a symmetry that leaves the order of the strands as it is: here {0}":
    "eine Symmetrie, die die Ordnung der Stränge erhält: hier {0}",
  'say "symmetry": {0} and draw what the other images completed (motifs are whole already); a mirror across the band turns every weave over':
    '"symmetry": {0} angeben und selbst zeichnen, was die anderen Bilder ergänzt haben (Motive sind schon ganz); ein Spiegel quer zur Ringschiene kehrt jedes Geflecht um',
  "the ribbon is only {0#} wide": "das Band ist nur {0} breit",
  "{0=} bridges at {1#}, and {2=} below it is {3#} high": "{0} überbrückt auf {1}, und {2} darunter ist {3} hoch.",
  "lift it higher, or make the other one lower": "höher heben oder den anderen niedriger machen",
  "a strand of {0=} runs over more tiles than are worked at once without passing under another":
    "Ein Strang von {0} läuft über zu viele Kacheln, ohne unter einem anderen durchzugehen.",
  "strands that pass under another within two tiles":
    "Stränge, die innerhalb von zwei Kacheln unter einem anderen durchgehen",
  'say "over": "alternate", or draw more of the weave in one tile':
    '"over": "alternate" angeben oder mehr vom Geflecht in einer Kachel zeichnen',
  "{0=} is to be woven otherwise than the ribbons before it in its set":
    "{0} soll anders geflochten werden als die Bänder vor ihm in seiner Gruppe.",
  '"{0}", as the others': '"{0}", wie die anderen',
  'say the same of the whole set, or give it a "set" of its own':
    'für die ganze Gruppe dasselbe angeben, oder ihm eine eigene Gruppe ("set") geben',
  // Lanes, cycles, ends, plain zone.
  "there is no lane {0}": "Eine Bahn {0} gibt es nicht.",
  "none: the pattern has no lanes": "keine: das Muster hat keine Bahnen",
  "there is no tile {0#}: the cycle has one tile, counted from 0":
    "Eine Kachel {0} gibt es nicht: Der Zyklus hat eine Kachel, gezählt ab 0.",
  "there is no tile {0#}: the cycle has {1#} tiles, counted from 0":
    "Eine Kachel {0} gibt es nicht: Der Zyklus hat {1} Kacheln, gezählt ab 0.",
  'set "cycle" in the pattern to the number of tiles after which the art comes again, or to "round"':
    '"cycle" im Muster auf die Zahl der Kacheln setzen, nach der die Zeichnung wiederkehrt, oder auf "round"',
  "{0#} tiles are no whole number of cycles of {1#}, so the last would not meet the first":
    "{0} Kacheln sind keine ganze Zahl von Zyklen zu {1}; die letzte passte nicht an die erste.",
  "change the repeats or the cycle": "die Wiederholungen oder den Zyklus ändern",
  "a medallion of {0#} tiles leaves nothing of {1#}": "Ein Medaillon von {0} Kacheln lässt von {1} nichts übrig.",
  "a medallion of {0#} tiles is not in the middle of {1#}":
    "Ein Medaillon von {0} Kacheln sitzt nicht in der Mitte von {1}.",
  "more repeats, or a narrower medallion": "mehr Wiederholungen oder ein schmaleres Medaillon",
  "repeats and the medallion's tiles both odd or both even":
    "Wiederholungen und Kacheln des Medaillons beide gerade oder beide ungerade",
  "what is raised in {0=} and in {1=} meets between them": "Erhabenes in {0} und in {1} stößt zwischen ihnen zusammen.",
  "at least {0#} between them": "mindestens {0} dazwischen",
  "set a gap, or draw the art of one of them clear of its edge":
    "einen Abstand setzen oder die Zeichnung der einen von ihrem Rand fernhalten",
  "two ornaments of {0#} do not fit into the plain zone": "Zwei Ornamente von {0} passen nicht in die glatte Zone.",
  "1 to {0#}": "1 bis {0}",
  "none: the plain zone is narrower than two tiles": "keines: die glatte Zone ist schmaler als zwei Kacheln",
  "make the ornaments narrower, or cover less of the band": "die Ornamente schmaler oder das Muster kürzer machen",
  "the two ends of the pattern meet": "Die beiden Enden des Musters stoßen zusammen.",
  "under {0#}, half of what lies between the ends": "unter {0}, die Hälfte dessen, was zwischen den Enden liegt",
  "make the ends shorter, or cover more of the band": "die Enden kürzer oder das Muster länger machen",
  "the two ends of the pattern run into each other at the back: their slopes reach {0#} too far":
    "Die beiden Enden des Musters laufen hinten ineinander: Ihre Schrägen reichen {0} zu weit.",
  "360, or at least {0#}° less than now": "360, oder mindestens {0}° weniger als jetzt",
  "cover less of the band, or all of it; or make the walls at the ends steeper":
    "das Muster kürzer oder ganz herum machen, oder die Wände an den Enden steiler",
  "the plain zone cannot be filled: {0}": "Die glatte Zone lässt sich nicht füllen: {0}.",
  "beside the pattern stand no two rails": "neben dem Muster stehen keine zwei Randstege",
  "the rails change round the finger": "die Randstege ändern sich rund um den Finger",
  "the floor comes within {0#} of the rails' tops": "der Boden kommt der Oberkante der Randstege bis auf {0} nahe",
  "the ornaments leave nothing of the plain zone": "die Ornamente lassen von der glatten Zone nichts übrig",
  '"open"; "filled" wants {0}': '"open"; für "filled" nötig: {0}',
  "a channel band": "eine Nut als Außenseite",
  "a band that does not taper": "eine Ringschiene ohne Verjüngung",
  "at least {0#} to fill": "mindestens {0} zu füllen",
  "narrower ornaments": "schmalere Ornamente",
  "on a band that tapers {0} cannot be cut off at the seat's edge":
    "Auf einer sich verjüngenden Ringschiene lässt sich das am Rand der Musterfläche nicht abschneiden: {0}.",
  lanes: "Bahnen",
  "relief beneath the rails": "Relief unter den Randstegen",
  "a height map": "ein Höhenbild",
  "a texture": "eine Textur",
  "a weave": "ein Geflecht",
  '"narrow" in pattern.fit.taper; "keep" on one pattern without lanes, weaves, images and textures':
    '"narrow" in pattern.fit.taper; "keep" bei einem Muster ohne Bahnen, Geflechte, Bilder und Texturen',
  'say "taper": "narrow", or leave it out': '"taper": "narrow" angeben oder es weglassen',
  'say "taper": "narrow", or draw one pattern': '"taper": "narrow" angeben oder ein einziges Muster zeichnen',
  "beside the pattern stand no two rails for it to go on beneath":
    "Neben dem Muster stehen keine zwei Randstege, unter denen es weitergehen könnte.",
  "false; true on a channel band without lanes": "false; true bei einer Nut ohne Bahnen",
};
