/** German for what is told of the finished solid: whether it is closed, as drawn, and how it was made. */
import type { Phrases } from "../phrasebook.js";

export const solidPhrases: Phrases = {
  "the pattern's two ends of one tile do not match, so neighbouring tiles would not close":
    "Die beiden Enden einer Kachel passen nicht aneinander; benachbarte Kacheln schlössen nicht.",
  "the two ends of a relief tile have different vertices, so neighbouring tiles would not close":
    "Die beiden Enden einer Reliefkachel haben verschiedene Eckpunkte; benachbarte Kacheln schlössen nicht.",
  "the two ends of a unit are no images of each other":
    "Die beiden Enden eines Abschnitts sind keine Bilder voneinander.",
  "move art that only just touches the tile's border by a few hundredths of a millimetre":
    "was den Rand der Kachel nur eben berührt, um einige Hundertstel Millimeter verschieben",
  "{0}, by up to {1#} mm": "{0}, um bis zu {1} mm",
  "the mesh is not the surface of a solid:\n{0}": "Das Netz ist nicht die Oberfläche eines Körpers:\n{0}",
  "the mesh is not the surface of a solid{0}:\n{1}": "Das Netz ist nicht die Oberfläche eines Körpers{0}:\n{1}",
  "there are no triangles": "Es gibt keine Dreiecke.",
  "{0#} pair of triangles crosses": "{0} Paar Dreiecke durchdringt sich",
  "{0#} pairs of triangles cross": "{0} Paare von Dreiecken durchdringen sich",
  "with fewer triangles the ring would not be closed: it keeps them all":
    "Mit weniger Dreiecken wäre der Ring nicht geschlossen: Er behält alle.",
  "ask for a smaller deviation, or a coarser tolerance instead":
    "eine kleinere Abweichung verlangen, oder stattdessen eine gröbere Toleranz",
  "the deviation of decimation is not a length": "Die Abweichung beim Ausdünnen ist keine Länge.",
  "0 for none, or above, in mm": "0 für keine, oder mehr, in mm",
  "every edge between two triangles, no triangle without area, every piece facing outward":
    "jede Kante zwischen zwei Dreiecken, kein Dreieck ohne Fläche, jedes Stück nach außen gewandt",
  "the relief with its beads stands {0#} above the rails and would wear first":
    "Das Relief mit seinen Perlen steht {0} über den Randstegen und würde zuerst abgenutzt.",
  "relief no higher than the rails": "ein Relief, nicht höher als die Randstege",
  'lower the regions, sink the beads deeper, deepen the channel, or say "proud": true':
    'die Figuren niedriger, die Perlen tiefer, die Nut tiefer machen, oder "proud": true angeben',
  "the ring has no genus": "Die Zahl der Öffnungen des Ringes lässt sich nicht bestimmen.",
  "the ring has {0#} handles where the design implies {1#}: parts bridge a gap, which traps investment":
    "Der Ring hat {0} Öffnungen, der Entwurf sieht {1} vor: Teile überbrücken eine Lücke, in der Einbettmasse hängen bleibt.",
  "the ring has {0#} handles where the design implies {1#}: parts bridge a gap at {2}, which traps investment":
    "Der Ring hat {0} Öffnungen, der Entwurf sieht {1} vor: Teile überbrücken eine Lücke bei {2}, in der Einbettmasse hängen bleibt.",
  "the ring has {0#} handles where the design implies {1#}: parts close holes":
    "Der Ring hat {0} Öffnungen, der Entwurf sieht {1} vor: Teile verschließen Durchbrüche.",
  "a genus of {0#}": "{0} Öffnungen",
  "keep beads from touching across a gap: make them smaller, or move the runs apart":
    "Perlen nicht über eine Lücke hinweg berühren lassen: kleiner machen oder die Reihen auseinanderrücken",
  "keep raised regions and beads clear of the holes": "erhabene Figuren und Perlen von den Durchbrüchen fernhalten",
  "{0#} part of the ring touches nothing: beads or relief hang over a pit or a hole, or beside the band{1}":
    "{0} Teil des Ringes hängt an nichts: Perlen oder Relief über einer Vertiefung, einem Durchbruch oder neben der Ringschiene{1}.",
  "{0#} parts of the ring touch nothing: beads or relief hang over a pit or a hole, or beside the band{1}":
    "{0} Teile des Ringes hängen an nichts: Perlen oder Relief über einer Vertiefung, einem Durchbruch oder neben der Ringschiene{1}.",
  "{0#} part of the ring touches nothing: beads or relief hang over a pit or a hole, or beside the band":
    "{0} Teil des Ringes hängt an nichts: Perlen oder Relief über einer Vertiefung, einem Durchbruch oder neben der Ringschiene.",
  "{0#} parts of the ring touch nothing: beads or relief hang over a pit or a hole, or beside the band":
    "{0} Teile des Ringes hängen an nichts: Perlen oder Relief über einer Vertiefung, einem Durchbruch oder neben der Ringschiene.",
  "a ring in one piece": "ein Ring aus einem Stück",
  "move them on to the metal, make the pit or hole smaller, or set the beads lower":
    "auf das Metall rücken, Vertiefung oder Durchbruch kleiner machen, oder die Perlen tiefer setzen",
  "what is raised at the band's edge leans out beside it by {0#}: the ring is {1#} wide, its band {2#}":
    "Erhabenes am Rand ragt um {0} seitlich hinaus: Der Ring ist {1} breit, seine Schiene {2}.",
  "end the relief or the beads farther in, make them lower, or make the outside flatter towards its edges":
    "Relief oder Perlen weiter innen enden lassen, niedriger machen, oder die Außenseite zum Rand hin flacher machen",
  "{0#} hollow was sealed in between beads and what they stand on, and filled":
    "{0} Hohlraum war zwischen Perlen und ihrem Grund eingeschlossen und wurde gefüllt.",
  "{0#} hollows were sealed in between beads and what they stand on, and filled":
    "{0} Hohlräume waren zwischen Perlen und ihrem Grund eingeschlossen und wurden gefüllt.",
  "keep beads clear of the walls and of beads of other runs where a clean recess is wanted":
    "wo eine saubere Vertiefung gewünscht ist, Perlen von Wänden und anderen Reihen fernhalten",
  "{0}; the {1} kernel united the ring instead": "{0}; stattdessen hat das Verfahren {1} den Ring vereinigt.",
  "the {0} kernel's result was not closed": "Das Ergebnis des Verfahrens {0} war nicht geschlossen",
  "mend that kernel, or leave it out: the ring is sound without it":
    "dieses Verfahren ausbessern oder weglassen: der Ring ist ohne es in Ordnung",
  "the {0} kernel made no solid that is closed and as drawn, and the {1} kernel, which takes over then, could not be loaded":
    "Das Verfahren {0} ergab keinen geschlossenen Körper wie gezeichnet, und das Verfahren {1}, das dann einspringt, ließ sich nicht laden.",
  "{0}; the {1} kernel alone may do for a design with fewer beads and regions that touch":
    "{0}; das Verfahren {1} allein genügt vielleicht bei weniger Perlen und Figuren, die sich berühren",
  "the manifold kernel could not be loaded: WebAssembly is missing or its file was not found":
    "Das Rechenverfahren, das die Körper vereinigt, ließ sich nicht laden: WebAssembly fehlt, oder seine Datei war nicht da.",
  "{0}; or take the bvh kernel, which is plain JavaScript":
    "{0}; oder das Verfahren bvh nehmen, das ohne WebAssembly läuft",
  "the manifold kernel refused a part: {0}": "Das Rechenverfahren hat einen Teil abgelehnt: {0}",
  "this is a fault in annulet's parts, not in the design: please report it with the design":
    "das ist ein Fehler des Programms, nicht des Entwurfs: bitte mit dem Entwurf melden",
  "the {0} kernel failed in {1}: {2}": "Das Verfahren {0} ist bei „{1}“ gescheitert: {2}",
  "this is a fault of that kernel, not of the design; the error's cause is what it threw":
    "das ist ein Fehler des Verfahrens, nicht des Entwurfs",
  "the ring is closed, but it is not the one that was drawn: {0}":
    "Der Ring ist geschlossen, aber nicht der, der gezeichnet wurde: {0}.",
  "it is off by {0#} at ({1#})": "er weicht um {0} ab bei ({1})",
  "it is off by {0#} at ({1#}), and in {2#} more of the places looked at":
    "er weicht um {0} ab bei ({1}) und an {2} weiteren geprüften Stellen",
  "its {0} is {1#} where the drawing makes {2#}, and they may differ by {3#}":
    "{0}: {1}, nach der Zeichnung {2}; erlaubt ist ein Unterschied von {3}",
  relief: "Relief",
  volume: "Volumen",
  "the drawn ring, within the bounds that follow from the tolerance":
    "der gezeichnete Ring, in den Grenzen, die aus der Toleranz folgen",
  "this is a fault of the program, not of the design: report it with the design; a finer tolerance, or art moved by a few hundredths of a millimetre, often avoids it":
    "das ist ein Fehler des Programms, nicht des Entwurfs: mit dem Entwurf melden; eine feinere Toleranz, oder die Zeichnung um einige Hundertstel Millimeter verschoben, umgeht ihn oft",
  "a flat part of the relief could not be covered by triangles: its outlines touch or cross":
    "Ein flacher Teil des Reliefs ließ sich nicht mit Dreiecken bedecken: Seine Umrisse berühren oder kreuzen sich.",
  "move parts of the motif that only just touch apart, or let them overlap clearly":
    "Teile, die sich nur eben berühren, auseinanderrücken oder deutlich überlappen lassen",
  "the mesh encloses no volume, so it has no centroid and no inertia":
    "Das Netz umschließt kein Volumen; es hat keinen Schwerpunkt.",
  "check that it is closed and that its pieces face the same way":
    "prüfen, ob es geschlossen ist und seine Stücke in dieselbe Richtung zeigen",
  "the border of an open mesh does not part into simple loops":
    "Der Rand eines offenen Netzes zerfällt nicht in einfache Schleifen.",
  "{0#} edges of the mesh are not between two triangles": "{0} Kanten des Netzes liegen nicht zwischen zwei Dreiecken.",
  "ask the gate about it first": "das Netz vorher prüfen",
  "the mesh's {0} do not come in threes": "Im Netz ist die Länge von „{0}“ nicht durch drei teilbar.",
  "a length that is a multiple of 3": "eine Länge, die ein Vielfaches von 3 ist",
  "what is given is no mesh": "Das ist kein Netz.",
  "an object with positions, a Float64Array, and triangles, a Uint32Array":
    "ein Objekt mit positions, einem Float64Array, und triangles, einem Uint32Array",
  "coordinate {0} of vertex {1#} is not a number": "Koordinate {0} von Eckpunkt {1} ist keine Zahl.",
  "finite lengths in mm": "endliche Längen in mm",
  "triangle {0#} names a vertex that is not there": "Dreieck {0} nennt einen Eckpunkt, den es nicht gibt.",
  "the matrix is not an affine map of space onto itself": "Die Matrix ist keine brauchbare Abbildung des Raumes.",
  "finite numbers, last row 0 0 0 1, determinant not 0": "endliche Zahlen, letzte Zeile 0 0 0 1, Determinante nicht 0",
  "the welding tolerance is not a length": "Die Toleranz beim Verschweißen ist keine Länge.",
  "0 or more, finite, in mm": "0 oder mehr, endlich, in mm",
  "three rows of three numbers": "drei Zeilen zu drei Zahlen",
};
