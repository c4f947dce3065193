/** German for what is told of casting, materials, weights and rule sets. */
import type { Phrases } from "../phrasebook.js";

export const castingPhrases: Phrases = {
  "the sprue's fillet does not fit on its stem": "Die Hohlkehle des Gusskanals passt nicht an seinen Stiel.",
  "well below the length": "deutlich unter der Länge",
  "finishing takes {0#} off the {1}, on which the letters are only {2#} high":
    "Das Versäubern nimmt {0} ab ({1}), und die Buchstaben dort sind nur {2} hoch.",
  seat: "Musterfläche",
  rail: "Randsteg",
  bore: "Innenseite",
  "raise the letters, or give casting.finishing its own figures for rails and relief":
    "die Buchstaben höher machen, oder für Randstege und Relief eigene Werte in casting.finishing angeben",
  "the sprue covers {0#} across, fillet included, and the band does not carry that here":
    "Der Gusskanal deckt mit Hohlkehle {0}; so viel trägt die Ringschiene an dieser Stelle nicht.",
  "a place with metal under it": "eine Stelle mit Metall darunter",
  "diameter and twice the fillet together up to {0#}": "Durchmesser und zweimal die Hohlkehle zusammen bis {0}",
  "make it thinner, its fillet smaller, or move it towards the band's middle":
    "dünner machen, die Hohlkehle kleiner, oder zur Mitte der Ringschiene rücken",
  "what shrinks by all of its length is gone": "Was um seine ganze Länge schwindet, ist weg.",
  "this is no shrinkage of a casting": "Das ist keine Schwindung eines Gusses.",
  "{0#} to {1#} %, linear": "{0} bis {1} %, linear",
  "1.5 means that 100 mm of pattern become 98.5 mm of casting; ask your caster":
    "1,5 heißt: Aus 100 mm Modell werden 98,5 mm Guss; die Gießerei fragen",
  "this is not what finishing takes off a face": "So viel nimmt das Versäubern von einer Fläche nicht ab.",
  "0 to {0#} mm": "0 bis {0} mm",
  "This is no volume of a solid.": "Das ist kein Volumen eines Körpers.",
  "a number, 0 or more, mm³": "eine Zahl, 0 oder mehr, mm³",
  "A negative volume comes from a mesh that is turned inside out.":
    "Ein negatives Volumen kommt von einem umgestülpten Netz.",
  "This is no density.": "Das ist keine Dichte.",
  "a number above 0, g/cm³": "eine Zahl über 0, g/cm³",
  "a number above 0, mm": "eine Zahl über 0, mm",
  "This is no mass.": "Das ist kein Gewicht.",
  "a number, 0 or more, g": "eine Zahl, 0 oder mehr, g",
  "this is no amount": "Das ist keine Menge.",
  "There is no material {0}.": "Einen Werkstoff {0} gibt es nicht.",
  "there is no material {0}": "Einen Werkstoff {0} gibt es nicht.",
  "A part of the mixture has no usable density.": "Ein Teil der Mischung hat keine brauchbare Dichte.",
  "The shares of a mixture do not make a whole.": "Die Anteile der Mischung ergeben kein Ganzes.",
  "shares of the mass, each 0 to 1, that sum to 1": "Anteile am Gewicht, jeder 0 bis 1, zusammen 1",
  "Divide parts in a thousand by 1000.": "Tausendstel durch 1000 teilen.",
  "there is a material {0} already": "Einen Werkstoff {0} gibt es schon.",
  "a symbol of its own": "ein eigenes Kürzel",
  "call it {0}-own": "ihn {0}-own nennen",
  "its density is not given": "Die Dichte ist nicht angegeben.",
  "its density is given in two ways": "Die Dichte ist auf zwei Arten angegeben.",
  "either density or mix": "entweder density oder mix",
  "there is no rule set {0}": "Einen Regelsatz {0} gibt es nicht.",
};
