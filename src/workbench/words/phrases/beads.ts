/** German for what is told of bead runs, lettering and the hallmark. */
import type { Phrases } from "../phrasebook.js";

export const beadPhrases: Phrases = {
  "{0#} beads do not settle on a stretch of {1#} mm along which their size changes":
    "{0} Perlen lassen sich auf einer Strecke von {1} mm, auf der sich ihre Größe ändert, nicht gleichmäßig verteilen.",
  "let the diameters change less, or along a longer line":
    "die Durchmesser weniger oder auf einer längeren Linie ändern lassen",
  "beads cannot both graduate and alternate in one run":
    "Die Perlen einer Reihe können nicht zugleich zunehmen und abwechseln.",
  '"to" or "alternate", not both': '"to" oder "alternate", nicht beides',
  "leave one of them out": "eines davon weglassen",
  "a number of beads cannot be kept where corners or junctions part the run":
    "Eine Zahl von Perlen lässt sich nicht halten, wo Ecken oder Treffpunkte die Reihe teilen.",
  'a "pitch"; "count" where corners are passed and junctions left':
    'eine Teilung ("pitch"); eine Zahl ("count") nur, wo Ecken und Treffpunkte nicht beachtet werden',
  'say "pitch" instead of "count"': '"pitch" statt "count" angeben',
  "a filled region has no centre line for its beads": "Eine gefüllte Figur hat keine Mittellinie für Perlen.",
  '"border", or mm inside the outline': '"border", oder mm innerhalb des Umrisses',
  'say "on": "border", or give the region a ribbon': '"on": "border" angeben oder die Figur als Band zeichnen',
  "nothing of the region lies {0#} inside its outline": "Nichts von der Figur liegt {0} innerhalb ihres Umrisses.",
  "place the beads nearer to the outline": "die Perlen näher an den Umriss setzen",
  'beads of the run "{0}" overlap by {1#} of their diameter':
    "Die Perlen der Reihe „{0}“ überlappen sich um {1} ihres Durchmessers.",
  "a ratio of at least {0#}": "ein Verhältnis von mindestens {0}",
  "fewer or smaller beads, or a larger pitch": "weniger oder kleinere Perlen, oder eine größere Teilung",
  'beads of the run "{0}" leave gaps of {1#} of their diameter':
    "Zwischen den Perlen der Reihe „{0}“ klaffen Lücken von {1} ihres Durchmessers.",
  "a ratio of at most {0#}": "ein Verhältnis von höchstens {0}",
  "more or larger beads, or a smaller pitch": "mehr oder größere Perlen, oder eine kleinere Teilung",
  "{0#} bead overlap beads of another run by more than {1#} %, the first near {2}":
    "{0} Perle überlappt Perlen einer anderen Reihe um mehr als {1} %, bei {2}.",
  "{0#} beads overlap beads of another run by more than {1#} %, the first near {2}":
    "{0} Perlen überlappen Perlen einer anderen Reihe um mehr als {1} %, die erste bei {2}.",
  'let runs meet end to end, where one bead serves both; say "junctions": "share" in both; or keep them apart':
    'die Reihen an ihren Enden zusammentreffen lassen, wo eine Perle beiden dient; in beiden "junctions": "share" angeben; oder sie trennen',
  'the run "{0}" turns so sharply that the beads beside its corner overlap by more than {1#} %, first near {2}':
    "Die Reihe „{0}“ biegt so scharf ab, dass sich die Perlen an der Ecke um mehr als {1} % überlappen, zuerst bei {2}.",
  'say "corners": "split", or draw the corner blunter': '"corners": "split" angeben oder die Ecke stumpfer zeichnen',
  "the design asks for {0#} beads": "Der Entwurf verlangt {0} Perlen.",
  "make the beads larger or fewer, or raise the limit (maxBeads; --max-beads on the command line)":
    "die Perlen größer machen oder weniger nehmen",
  "a line of the bead run is only {0#} mm long": "Eine Linie der Perlreihe ist nur {0} mm lang.",
  "lines of at least {0#} mm": "Linien von mindestens {0} mm",
  "take the dot away, or draw a line that a bead can stand on":
    "den Punkt entfernen oder eine Linie zeichnen, auf der eine Perle stehen kann",
  "the run should stop with the pattern, whose {0#}° are too few: its beads keep {1#} from either end":
    "Die Reihe soll mit dem Muster enden, dessen {0}° zu wenig sind: Ihre Perlen halten {1} Abstand von beiden Enden.",
  '"band", or a wider cover': '"band", oder ein längeres Muster',
  "cover more of the band, or make the beads smaller": "das Muster länger oder die Perlen kleiner machen",
  "the wall beside the run stands at least {0#} into its beads of {1#}":
    "Die Wand neben der Reihe steht mindestens {0} in ihren Perlen von {1}.",
  'v is measured along the section, whose seat ends at ±{0#}; move the run away from the wall, or say "seat-edge"':
    'v wird entlang des Querschnitts gemessen, die Musterfläche endet bei ±{0}; die Reihe von der Wand wegrücken oder "seat-edge" angeben',
  "the band has no rails for beads to stand on":
    "Die Ringschiene hat keine Randstege, auf denen Perlen stehen könnten.",
  '"seat-edge", {"v": …} or {"path": …}; "rail" on a channel band':
    '"seat-edge", {"v": …} oder {"path": …}; "rail" bei einer Nut',
  "choose a channel outside, or another line for the run":
    "eine Nut als Außenseite oder eine andere Linie für die Reihe wählen",
  "the band has no step along its edges for beads to stand in":
    "Die Ringschiene hat keinen Absatz an den Rändern, in dem Perlen stehen könnten.",
  '"rail", "seat-edge", {"v": …} or {"path": …}; "step" where profile.step is given':
    '"rail", "seat-edge", {"v": …} oder {"path": …}; "step", wo es einen Absatz gibt (profile.step)',
  'add "step": {} to the profile, or choose another line for the run':
    'dem Querschnitt mit "step": {} einen Absatz geben oder eine andere Linie für die Reihe wählen',
  "the two runs along the seat's edges lie beyond its middle":
    "Die beiden Reihen an den Rändern der Musterfläche liegen jenseits ihrer Mitte.",
  "0 to {0#}, half the seat": "0 bis {0}, die halbe Musterfläche",
  'place them nearer to the edges, or one run in the middle with "along": {"v": 0}':
    'sie näher an die Ränder setzen, oder mit "along": {"v": 0} eine Reihe in die Mitte',
  "the bead run lies {0#} beyond the edge of the seat": "Die Perlreihe liegt {0} außerhalb der Musterfläche.",
  "move the run towards the middle of the band": "die Reihe zur Mitte der Ringschiene rücken",
  "the bead run follows what is drawn in the tile, but the design has no pattern and so no tile":
    "Die Perlreihe folgt der Zeichnung in der Kachel, aber der Entwurf hat kein Muster und damit keine Kachel.",
  '"rail", "seat-edge" or {"v": …} on a band without pattern':
    '"rail", "seat-edge" oder {"v": …} auf einer Ringschiene ohne Muster',
  'add "pattern": {} for a tile as square as the seat is long':
    'mit "pattern": {} eine quadratische Kachel anlegen, so hoch wie die Musterfläche',
  "{0#} bead is left out where the hallmark's field is; the runs are counted as laid out":
    "{0} Perle ist im Punzenfeld weggelassen; gezählt sind die Reihen wie ausgelegt.",
  "{0#} beads are left out where the hallmark's field is; the runs are counted as laid out":
    "{0} Perlen sind im Punzenfeld weggelassen; gezählt sind die Reihen wie ausgelegt.",
  // Lettering and the hallmark.
  "{0=} on the seat reaches into the plain zone, which is filled up to the rails":
    "{0} auf der Musterfläche reicht in die glatte Zone, die bis zu den Randstegen gefüllt ist.",
  "a place among the pattern, a rail or the bore": "eine Stelle im Muster, ein Randsteg oder die Innenseite",
  'move it by its angle, put it on a rail or into the bore, or say "plain": "open"':
    'über den Winkel verschieben, auf einen Randsteg oder die Innenseite setzen, oder "plain": "open" angeben',
  "an edge rounded by {0#} does not fit: a stroke of {1} is only {2#} wide":
    "Eine um {0} gerundete Kante passt nicht: Ein Strich von {1} ist nur {2} breit.",
  "round less, make the letters higher, or name a bolder font":
    "weniger runden, die Buchstaben höher machen oder eine fettere Schrift nehmen",
  "the rounded inner edges leave nothing of the bore to stand on":
    "Die gerundeten Innenkanten lassen von der Innenseite nichts, worauf Schrift stehen kann.",
  "make profile.bore.edge smaller": "die Innenkante (profile.bore.edge) weniger runden",
  "the band has no rails": "Die Ringschiene hat keine Randstege.",
  "the rails are rounded all over and have no flat top":
    "Die Randstege sind ganz gerundet und haben keine flache Oberseite.",
  "seat or bore": "Musterfläche (seat) oder Innenseite (bore)",
  "rails belong to a channel: profile.outside.form": "Randstege gehören zu einer Nut: profile.outside.form",
  "{0=} is {1#} long, and {2} only {3#} round": "{0} ist {1} lang, {2} hat aber nur {3} Umfang.",
  "make it {0#} % of its size, or shorter": "auf {0} % verkleinern oder kürzen",
  "{0=} reaches from {1#} to {2#} across {3}, which has {4#}":
    "{0} reicht von {1} bis {2} quer über {3}; dort sind nur {4} Platz.",
  "the seat": "die Musterfläche",
  "the rail": "der Randsteg",
  "the bore": "die Innenseite",
  "the hallmark": "die Punze",
  "within {0#} of its middle line": "innerhalb {0} um ihre Mittellinie",
  "nothing: too narrow": "nichts: zu schmal",
  "make it smaller, move it by v, or make the band wider":
    "kleiner machen, mit v verschieben oder die Ringschiene breiter machen",
  "the lettering stands in the hallmark's field, which should stay plain":
    "Die Schrift steht im Punzenfeld, das glatt bleiben soll.",
  "move one of them by angle or v": "eines von beiden über Winkel oder v verschieben",
  "lettering raised in the bore stands {0#} into the finger's room: the ring goes on like one whose bore is so much narrower, twice that where raised marks face each other":
    "Erhabene Schrift an der Innenseite steht {0} in den Platz des Fingers: Der Ring sitzt, als wäre er innen um so viel enger, um das Doppelte, wo sich erhabene Zeichen gegenüberstehen.",
  "sink it, or take a larger size": "vertiefen oder eine größere Ringweite nehmen",
  "rises as a rib": "steht als Rippe",
  "is a gap in the pattern that the investment must fill": "ist eine Lücke im Modell, die die Einbettmasse füllen muss",
  "a stroke of {0} is {1#} wide; it {2}, and may not come out":
    "Ein Strich von {0} ist {1} breit; er {2} und kommt vielleicht nicht heraus.",
  "make the letters higher, or name a bolder font": "die Buchstaben höher machen oder eine fettere Schrift nehmen",
  // Fonts and texts.
  "the text holds {0}, which sets no letter": "Der Text enthält {0}, das keinen Buchstaben setzt.",
  "the text mixes directions: {0} runs from right to left, {1} from left to right":
    "Der Text mischt Richtungen: {0} läuft von rechts nach links, {1} von links nach rechts.",
  "the text mixes {0} with {1}, which is shaped by other rules":
    "Der Text mischt {0} mit {1}; dafür gelten andere Regeln des Setzens.",
  "lettering needs WebAssembly, and the library that sets it could not be loaded":
    "Für Schrift wird WebAssembly gebraucht; die Bibliothek, die sie setzt, ließ sich nicht laden.",
  "{0}; or leave lettering and texts out of the design": "{0}; oder Schrift und Texte aus dem Entwurf weglassen",
  "WebAssembly is switched off here": "WebAssembly ist hier abgeschaltet",
  "let the page compile WebAssembly (script-src 'wasm-unsafe-eval'), and say where {0} is: {1}":
    "der Seite WebAssembly erlauben (script-src 'wasm-unsafe-eval') und angeben, wo {0} liegt: {1}",
  "{0} was handed over as text, and a font is bytes": "{0} wurde als Text übergeben; eine Schrift besteht aus Bytes.",
  "a Uint8Array with the font file's bytes": "ein Uint8Array mit den Bytes der Schriftdatei",
  "the font {0} has no letter for {1}": "Der Schrift {0} fehlt: {1}.",
  "name a font that has them": "eine Schrift nennen, die sie hat",
  "the font {0} has no outline for {1}: it may draw it as an image or in colours":
    "Die Schrift {0} hat keinen Umriss für {1}: Sie zeichnet es wohl als Bild oder in Farben.",
  "name a font with plain outlines": "eine Schrift mit einfachen Umrissen nennen",
  "the letters of {0} have too many points": "Die Buchstaben von {0} haben zu viele Punkte.",
  "outlines of at most {0#} characters in a text": "Umrisse von höchstens {0} Zeichen in einem Text",
  "name a plainer font, or set less text": "eine schlichtere Schrift nennen oder weniger Text setzen",
  "letters of this script hang together; space between them would tear them apart":
    "Die Buchstaben dieser Schriftart hängen zusammen; Abstand würde sie auseinanderreißen.",
  "a spacing of 0": "ein Abstand von 0",
  "leave the spacing out": "den Abstand weglassen",
  "the font {0} is too large": "Die Schriftdatei {0} ist zu groß.",
  "at most {0#} MB": "höchstens {0} MB",
  "a font for one script takes far less; cut it down to the characters that are needed":
    "eine Schrift für eine Schriftart braucht weit weniger; auf die nötigen Zeichen kürzen",
  "{0} is {1}, not a font that can be used": "{0} ist {1}, keine Schrift, die verwendet werden kann.",
  "a WOFF2 file": "eine WOFF2-Datei",
  "a collection of several fonts": "eine Sammlung mehrerer Schriften",
  "a PostScript font": "eine PostScript-Schrift",
  "an SVG drawing": "eine SVG-Zeichnung",
  "an XML file": "eine XML-Datei",
  "a PNG image": "ein PNG-Bild",
  "a zip archive": "ein ZIP-Archiv",
  "an OpenType or TrueType font (.ttf, .otf), or one as WOFF":
    "eine OpenType- oder TrueType-Schrift (.ttf, .otf), oder eine als WOFF",
  "fonts that come as WOFF2 or as a collection are usually there as .ttf or .otf too":
    "Schriften, die als WOFF2 oder als Sammlung kommen, gibt es meist auch als .ttf oder .otf",
  "the font {0} is broken: {1}": "Die Schrift {0} ist beschädigt: {1}",
  "take the file from its source again": "die Datei noch einmal von ihrer Quelle holen",
};
