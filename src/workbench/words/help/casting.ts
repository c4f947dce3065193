/** German for what the schema says of materials, rules, costs, casting, the sprue and printing, by the English without ranges and defaults. */
import type { Phrases } from "../phrasebook.js";

export const castingHelp: Phrases = {
  "what it is weighed in: a symbol, built in or of alloys":
    "woraus gewogen wird: ein Kürzel, eingebaut oder aus alloys",
  "materials of your own, for material, casting.pattern and prices":
    "eigene Werkstoffe, für material, casting.pattern und prices",
  "1 to 40 small letters, digits, hyphens; not built in":
    "1 bis 40 kleine Buchstaben, Ziffern, Bindestriche; kein eingebautes Kürzel",
  "in tables": "in Tabellen",
  "g/cm³; give this or a mix": "g/cm³; dies oder eine Mischung angeben",
  "shares that sum to 1; the mixing rule gives the density":
    "Anteile, die zusammen 1 ergeben; die Mischungsregel gibt die Dichte",
  "densities of its kind, g/cm³": "Dichten dieser Art, g/cm³",
  "parts of precious metal in 1000": "Feingehalt: Teile Edelmetall in 1000",
  "metal it is hallmarked as; pattern: burns out": "Metall, als das gepunzt wird; pattern: brennt aus",
  "where its figures come from": "woher die Werte stammen",
  "limits for annulet check": "Grenzen für die Prüfung auf Gießbarkeit",
  "rule set that limits are taken from": "Regelsatz, aus dem die Grenzen stammen",
  "your own in place of the set's": "eigene Grenzen statt derer des Satzes",
  "metal from the bore straight out, at least, mm": "Metall von der Innenseite gerade nach außen, mindestens, mm",
  "metal between any two faces, at least, mm": "Metall zwischen zwei beliebigen Flächen, mindestens, mm",
  "height of the band's sides, 0.1 mm in from them, at least, mm":
    "Höhe der Seiten der Ringschiene, 0,1 mm von außen gemessen, mindestens, mm",
  "largest ball within the band's section, at most, mm": "größte Kugel im Querschnitt der Ringschiene, höchstens, mm",
  "height of what is raised, at least, mm": "Höhe des Erhabenen, mindestens, mm",
  "depth of what is sunk, at least, mm": "Tiefe des Vertieften, mindestens, mm",
  "raised line, at least, mm": "erhabene Linie, mindestens, mm",
  "gap between raised parts, and to the rails, at least, mm":
    "Lücke zwischen erhabenen Teilen und zu den Randstegen, mindestens, mm",
  "raised part that stands alone, diameter by area, at least, mm":
    "freistehendes erhabenes Teil, Durchmesser nach Fläche, mindestens, mm",
  "height of a raised part that stands alone over its diameter, at most, ×":
    "Höhe eines freistehenden erhabenen Teils, geteilt durch seinen Durchmesser, höchstens, ×",
  "sunk line, at least, mm": "vertiefte Linie, mindestens, mm",
  "depth of a gap or a sunk line over its width, at most, ×":
    "Tiefe einer Lücke oder vertieften Linie, geteilt durch ihre Breite, höchstens, ×",
  "hole, at the bore or at the seat, at least, mm":
    "Durchbruch, an der Innenseite oder an der Musterfläche, mindestens, mm",
  "way through a hole over its width, at most, ×":
    "Weg durch einen Durchbruch, geteilt durch seine Breite, höchstens, ×",
  "bead, at least, mm": "Perle, mindestens, mm",
  "radius of the band's inner corners, at least, mm": "Radius der inneren Ecken der Ringschiene, mindestens, mm",
  "radius of the band's outer edges, at least, mm": "Radius der äußeren Kanten der Ringschiene, mindestens, mm",
  "room between texts, marks and the pattern, at least, mm": "Platz zwischen Schrift, Punze und Muster, mindestens, mm",
  "handles that the design does not imply, at most, ": "Öffnungen, die der Entwurf nicht vorsieht, höchstens",
  "gap between girdles, at least, mm": "Abstand zwischen Rondisten, mindestens, mm",
  "metal between hollows, at least, mm": "Metall zwischen den Mulden der Steine, mindestens, mm",
  "metal under a closed hollow, at least, mm": "Metall unter einer geschlossenen Mulde, mindestens, mm",
  "metal beside a hollow or groove, at least, mm": "Metall neben einer Mulde oder Rille, mindestens, mm",
  "bezel, at least, mm": "Zarge, mindestens, mm",
  "ledge under a stone, at least, mm": "Auflage unter einem Stein, mindestens, mm",
  "prong at its foot, at least, mm": "Krappe an ihrem Fuß, mindestens, mm",
  "grain, at least, mm": "Korn, mindestens, mm",
  "prongs or grains of a stone, at least, ": "Krappen oder Körner eines Steins, mindestens",
  "table off the surface, at most, mm": "Abstand der Tafel von der Fläche, höchstens, mm",
  "gems unfit for flush setting, at most, ": "Steine, die sich nicht einreiben lassen, höchstens",
  "lean of outside faces over the radius, at most, °": "Neigung äußerer Flächen über den Radius, höchstens, °",
  "prices, and what is melted with it": "Preise, und was mitgeschmolzen wird",
  "% of the casting's weight": "% des Gussgewichts",
  "metal left in the cup, g": "Metall, das im Gusskegel bleibt, g",
  "price of a gram by material": "Preis je Gramm nach Werkstoff",
  "what prices are in": "Währung der Preise",
  "what the master is larger by": "um wie viel das Modell größer ist",
  "shrinkage from pattern to casting; ask your caster, linear, %, or {axial, radial}; the master is 1/(1 − s) as large":
    "Schwindung vom Modell zum Guss; die Gießerei fragen; linear, %, oder {axial, radial}; das Modell ist 1/(1 − s) so groß",
  "shrinkage from file to cured print; ask the resin's maker, linear, %, or {axial, radial}; the master is 1/(1 − s) as large":
    "Schwindung von der Datei zum gehärteten Druck; den Hersteller des Harzes fragen; linear, %, oder {axial, radial}; das Modell ist 1/(1 − s) so groß",
  "what finishing takes off faces, mm, or {bore, rails, relief}; not off side walls, floors, beads":
    "was das Versäubern von Flächen abnimmt, mm, oder {bore, rails, relief}; nicht von Seitenwänden, Böden, Perlen",
  "its own for each group of faces": "für jede Gruppe von Flächen eigens",
  "off the bore, mm": "von der Innenseite, mm",
  "off the rails' tops; of a plain band, all its outside, mm":
    "von der Oberseite der Randstege; bei einer glatten Ringschiene von der ganzen Außenseite, mm",
  "off the tops of what is raised, mm": "von der Oberseite des Erhabenen, mm",
  "material of the master: resin, wax or wax-bees":
    "Material des Modells: resin (Harz), wax (Wachs) oder wax-bees (Bienenwachs)",
  "a stem for casting, cut off later": "ein Stiel zum Gießen, der später abgetrennt wird",
  "of the stem at the band, without its fillet, mm; ask your caster":
    "Durchmesser des Stiels an der Ringschiene, ohne Hohlkehle, mm; die Gießerei fragen",
  "from the band to its end, mm": "von der Ringschiene bis zum Ende, mm",
  "diameter there, mm": "Durchmesser dort, mm",
  "where it stands, degrees, the top is 90": "wo er steht, Grad, oben ist 90",
  "mm from the middle, + towards +z": "mm von der Mitte, + nach +z",
  "radius where it joins the band, mm": "Radius, mit dem er in die Ringschiene übergeht, mm",
  "stance and layers in a printer": "Lage und Schichten im Drucker",
  "built (not turned), or set on z = 0: lying (finger axis upright), standing (top up), tilted":
    "wie gebaut (built, nicht gedreht), oder auf z = 0 gesetzt: lying (liegend, Fingerachse senkrecht), standing (stehend, oben nach oben), tilted (gekippt)",
  "tilted: degrees, 0 (lying) to 90 (standing)": "tilted: Grad, 0 (liegend) bis 90 (stehend)",
  "thickness of a layer, mm": "Dicke einer Schicht, mm",
  "steep undersides lean further from upright, degrees":
    "steile Unterseiten neigen sich weiter gegen die Senkrechte, Grad",
  "relief may stand above the rails": "das Relief darf über die Randstege ragen",
  "in the rule's unit": "in der Einheit der Regel",
  "an error makes annulet check fail": "bei einem Fehler scheitert die Prüfung",
  "where it comes from": "woher sie stammt",
  "share of the mass": "Anteil am Gewicht",
  "one along the finger axis, one across": "eine entlang der Fingerachse, eine quer dazu",
  "along the finger axis, %": "entlang der Fingerachse, %",
  "across the finger axis, %": "quer zur Fingerachse, %",
  "where it stands, degrees, the top is 90, the back": "wo er steht, Grad, oben ist 90, hinten",
};
