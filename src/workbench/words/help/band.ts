/** German for what the schema says of the document, sizes and the cross-section, by the English without ranges and defaults. */
import type { Phrases } from "../phrasebook.js";

export const bandHelp: Phrases = {
  "address of this schema, for editors": "Adresse dieses Schemas, für Editoren",
  "version of the document": "Version des Entwurfs",
  "name of the ring": "Name des Ringes",
  "A label, or inner diameter or circumference. Of a comfort bore that of its narrowest circle":
    "Eine Ringweite nach einem System, oder Innendurchmesser oder Innenumfang. Bei einem innen bombierten Ring gilt der engste Kreis",
  "A label": "Eine Ringweite nach einem System",
  "iso: ISO 8653; us: US, Canada (formula); us-gauge: US (trade gauge); uk: UK, Ireland, Australia; japan: Japan (customary number); swiss: Switzerland, Italy, Spain; german: Germany; india: India":
    "iso: ISO 8653; us: USA, Kanada (Formel); us-gauge: USA (Handelslehre); uk: Großbritannien, Irland, Australien; japan: Japan (übliche Nummer); swiss: Schweiz, Italien, Spanien; german: Deutschland; india: Indien",
  "Its label. iso: the inner circumference in mm, or ISO 8653-54; us: 0 to 16, with quarters: 7¼, 7 1/2; us-gauge: 0 to 13, with quarters: 7¼, 7 1/2; uk: A to Z, with quarters: N¼, N 1/2, N.75; past Z: Z+1 to Z+6; japan: 1 to 30, whole numbers by custom; swiss: 0 to 40: the inner circumference in mm less 40; german: 11 to 26: the inner diameter in mm, 17.2 or 17,2; india: 1 to 30, whole numbers by custom":
    "Die Ringweite. iso: Innenumfang in mm, oder ISO 8653-54; us: 0 bis 16, mit Vierteln: 7¼, 7 1/2; us-gauge: 0 bis 13, mit Vierteln: 7¼, 7 1/2; uk: A bis Z, mit Vierteln: N¼, N 1/2, N.75; nach Z: Z+1 bis Z+6; japan: 1 bis 30, üblich ganze Zahlen; swiss: 0 bis 40: Innenumfang in mm weniger 40; german: 11 bis 26: Innendurchmesser in mm, 17,2 oder 17.2; india: 1 bis 30, üblich ganze Zahlen",
  "An inner diameter": "Ein Innendurchmesser",
  "Inner diameter in mm": "Innendurchmesser in mm",
  "An inner circumference": "Ein Innenumfang",
  "Inner circumference in mm": "Innenumfang in mm",
  "farthest that flat facets lie off the true surface, mm":
    "wie weit flache Facetten höchstens von der wahren Oberfläche abweichen, mm",
  "The cross-section": "Der Querschnitt der Ringschiene",
  "Width along the finger axis, mm; of a band that tapers, at the top":
    "Ringbreite, entlang der Fingerachse, mm; bei einer Verjüngung die Breite oben",
  "From the bore's narrowest circle to the highest point, mm":
    "Stärke: vom engsten Kreis der Innenseite bis zum höchsten Punkt, mm",
  "The inside": "Die Innenseite",
  "A cylindrical bore": "Eine gerade, zylindrische Innenseite",
  "Radius of its edges, mm": "Radius der Kanten, mm",
  "A bore that widens towards its edges": "Innen bombiert: die Innenseite weitet sich zu den Kanten hin",
  "How much wider its radius gets, mm": "Um wie viel der Innenradius zu den Kanten hin wächst, mm",
  "Its outside": "Die Außenseite",
  "Cylindrical, pattern between the edges": "Gerade, zylindrisch; das Muster liegt zwischen den Kanten",
  "A dome, pattern between the edges": "Gewölbt; das Muster liegt zwischen den Kanten",
  "Height of the dome above the side walls, mm, to half the width":
    "Höhe der Wölbung über den Seitenwänden, mm, bis zur halben Ringbreite",
  "Two rails, pattern on the floor between them":
    "Nut zwischen zwei Randstegen; das Muster liegt auf dem Boden dazwischen",
  "Width of each rail, mm, under half the band's": "Breite jedes Randstegs, mm, unter der halben Ringbreite",
  "From the rails' top down to the floor's edges, mm":
    "Tiefe der Nut: von der Oberkante der Randstege bis zum Rand des Bodens, mm",
  "How far its middle stands above its edges, mm, to the depth":
    "Wie weit die Mitte des Bodens über seinen Rändern steht, mm, höchstens die Tiefe",
  "Radius of their top corners, mm, to half the rail":
    "Radius der oberen Kanten der Randstege, mm, bis zur halben Stegbreite",
  "Fillet from floor to rails, mm": "Hohlkehle vom Boden zu den Randstegen, mm",
  "A bevel on each side, pattern on the flat middle":
    "Eine Fase auf jeder Seite; das Muster liegt auf der flachen Mitte",
  "Width of each bevel, mm, under half the band's": "Breite jeder Fase, mm, unter der halben Ringbreite",
  "How far each bevel falls, mm": "Wie weit jede Fase abfällt, mm",
  "Radius of its corners, mm": "Radius der Kanten, mm",
  "A hollow, pattern between the edges": "Gekehlt; das Muster liegt zwischen den Kanten",
  "How far the middle lies under the edges, mm, to half the width":
    "Wie tief die Mitte unter den Kanten liegt, mm, bis zur halben Ringbreite",
  "Two slopes to a ridge, pattern on both and over the nose":
    "Zwei Schrägen zu einem Grat; das Muster liegt auf beiden und über der Kuppe",
  "Height of the ridge above the side walls, mm": "Höhe des Grates über den Seitenwänden, mm",
  "Radius of the nose, mm; it lowers the ridge": "Radius der Kuppe, mm; er macht den Grat niedriger",
  "Drawn freely; its highest point is the thickness": "Frei gezeichnet; der höchste Punkt gibt die Stärke",
  "SVG path data in (w, height above the bore's narrowest circle), mm, y up: one open run from −w to +w, stretched to the width. Or give points":
    "SVG-Pfaddaten in (w, Höhe über dem engsten Kreis der Innenseite), mm, y nach oben: ein offener Zug von −w nach +w, auf die Ringbreite gedehnt. Oder Punkte angeben",
  "[w, height] in mm, joined by straight lines": "[w, Höhe] in mm, durch gerade Linien verbunden",
  "From w to w of what carries the pattern, mm, as drawn": "Von w bis w: was das Muster trägt, mm, wie gezeichnet",
  "Radius at the side walls, mm": "Radius an den Seitenwänden, mm",
  'A step cut along both edges, for beads "along": "step"':
    'Ein Absatz entlang beider Kanten, für Perlen mit "along": "step"',
  "Width of each ledge, mm, within the outside's first curve":
    "Breite jedes Absatzes, mm, innerhalb der ersten Kurve der Außenseite",
  "From the outside there, or the band's side where that is lower, down to the ledge, mm":
    "Tiefe: von der Außenseite dort, oder von der Seite der Schiene, wo sie niedriger ist, bis zum Absatz, mm",
  "Radius of its three corners, mm; at the sides it stands for the outside's edge":
    "Radius seiner drei Kanten, mm; an den Seiten gilt er statt des Radius der Außenseite",
  "How the band narrows and thins from the top to the back, smoothly; the bore stays":
    "Wie die Ringschiene von oben nach hinten schmaler und dünner wird, stetig; die Innenseite bleibt",
  "Sizes between; given on one side alone, the other mirrors it":
    "Maße dazwischen; nur auf einer Seite angegeben, gelten sie gespiegelt auch auf der anderen",
  "degrees from +x towards +y; the top is 90": "Grad von +x nach +y; oben ist 90",
};
