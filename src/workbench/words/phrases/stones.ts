/** German for what is said of stones, by the English form. */
import type { Phrases } from "../phrasebook.js";

export const stonePhrases: Phrases = {
  "{0#} bead is left out where stones are; the runs are counted as laid out":
    "{0} Perle ist bei den Steinen weggelassen; gezählt sind die Reihen wie ausgelegt.",
  "{0#} beads are left out where stones are; the runs are counted as laid out":
    "{0} Perlen sind bei den Steinen weggelassen; gezählt sind die Reihen wie ausgelegt.",
  "{0#} stone has room for fewer than two grains or prongs; the first is number {1}":
    "{0} Stein hat Platz für weniger als zwei Körner oder Krappen; der erste ist Nummer {1}.",
  "{0#} stones have room for fewer than two grains or prongs; the first is number {1}":
    "{0} Steine haben Platz für weniger als zwei Körner oder Krappen; der erste ist Nummer {1}.",
  "is Tolkowsky's, which is a round stone's, not {0}":
    "Das sind Tolkowskys Proportionen, die eines runden Steins, nicht für {0}.",
  "belongs to tapered-baguette, not {0}": "Das gehört zu tapered-baguette, nicht zu {0}.",
  "goes from an angle to a larger one, at most 360° on":
    "Der Bereich geht von einem Winkel zu einem größeren, höchstens 360° weiter.",
  "has crownAngle and crownHeight: say one": "crownAngle und crownHeight sind beide angegeben: nur eines angeben.",
  "has pavilionAngle and pavilionDepth: say one":
    "pavilionAngle und pavilionDepth sind beide angegeben: nur eines angeben.",
  "is given instead of a gap, not beside it": "Das wird statt eines Abstands angegeben, nicht daneben.",
  "is more than the length, which is the size": "Das ist mehr als die Länge (size).",
  "is more than the width": "Das ist mehr als die Breite.",
  "needs a path or a shape, one of the two": "Es fehlt ein Pfad oder eine Form: eines von beiden angeben.",
  "does not belong to {0}, which is as wide as it is long":
    "Das gehört nicht zu {0}: Der Schliff ist so breit wie lang.",
  'stone {0#} of "{1=}" at {2#}': "Stein {0} von „{1}“ bei {2}",
  '"row", "single" on a band without pattern': '"row", "single" auf einer Ringschiene ohne Muster',
  'a tile is 1 wide and `aspect` high; say "unit": "mm" where the place is in millimetres':
    'eine Kachel ist 1 breit und `aspect` hoch; "unit": "mm" angeben, wenn die Stelle in Millimetern gemeint ist',
  "an anchor beside a mirror or a two-fold centre of the tile stands in its own image: put it on that, or farther away":
    "Neben einem Spiegel oder Drehpunkt der Kachel steht der Stein in seinem eigenen Bild: ihn darauf setzen oder weiter weg.",
  "at least {0#} between girdles ({1=})": "mindestens {0} zwischen den Rundisten ({1})",
  "at least {0#} ({1=})": "mindestens {0} ({1})",
  "at least {0#} between them": "mindestens {0} dazwischen",
  "at most {0#} as it is cut and set": "höchstens {0} bei diesem Schliff und dieser Fassung",
  "choose a channel outside, or another line for the row": "eine Nut als Außenseite oder eine andere Linie wählen",
  "leave a wider gap, or take fewer stones": "einen größeren Abstand lassen oder weniger Steine nehmen",
  "make the band thicker or the stones smaller, or set them higher":
    "die Ringschiene stärker oder die Steine kleiner machen, oder sie höher setzen",
  "make the stones larger or fewer": "größere oder weniger Steine nehmen",
  "make them smaller, or place them farther apart": "kleinere Steine nehmen oder sie weiter auseinander setzen",
  "make them smaller, or place them farther inside": "kleinere Steine nehmen oder sie weiter nach innen setzen",
  "move them towards the middle of the band": "sie zur Mitte der Ringschiene rücken",
  "none in this band": "keiner in dieser Ringschiene",
  "stones there stand {0#} beyond the edge of the seat": "Steine stehen dort {0} jenseits des Randes der Musterfläche.",
  "take a smaller or shallower stone, set it higher, or make the band thicker":
    "einen kleineren oder flacheren Stein nehmen, ihn höher setzen oder die Ringschiene stärker machen",
  "take fewer or smaller stones, or give a gap instead":
    "weniger oder kleinere Steine nehmen oder einen Abstand angeben",
  "the band has no rails for stones to stand on":
    "Die Ringschiene hat keine Randstege, auf denen Steine stehen könnten.",
  '"middle" or {"v": …}; "rail" on a channel band': '"middle" oder {"v": …}; "rail" bei einer Nut',
  '"round" or {"from": …, "to": …}': '"round" oder {"from": …, "to": …}',
  "the design asks for {0#} stones or more": "Der Entwurf verlangt {0} Steine oder mehr.",
  "the row should stop with the pattern, which needs one with a cover under 360":
    "Die Reihe soll mit dem Muster enden: Dazu muss es weniger als 360 Grad weit gehen (cover).",
  "the stone's anchor lies outside the tile": "Der Stein liegt außerhalb der Kachel.",
  "the stones stand in the tile, but the design has no pattern and so no tile":
    "Die Steine stehen in der Kachel, aber der Entwurf hat kein Muster und damit keine Kachel.",
  "x from -1 to 2, y to half the tile's height, in tile widths":
    "x von -1 bis 2, y bis zur halben Kachelhöhe, in Kachelbreiten",
  "{0} and {1} stand only {2#} apart": "{0} und {1} stehen nur {2} auseinander.",
  "{0} and {1} stand only {2#} apart, the nearest of {3#} pairs":
    "{0} und {1} stehen nur {2} auseinander, das engste von {3} Paaren.",
  "{0} and {1} stand {2#} in each other": "{0} und {1} stehen {2} ineinander.",
  "{0} and {1} stand {2#} in each other, the deepest of {3#} pairs":
    "{0} und {1} stehen {2} ineinander, das tiefste von {3} Paaren.",
  "{0} comes to {1#} from the bore": "{0} kommt der Bohrung des Rings bis auf {1} nah.",
  "{0} comes to {1#} from the bore, the nearest of {2#}":
    "{0} kommt der Bohrung des Rings bis auf {1} nah, der nächste von {2}.",
  "{0#} of {1#} stones of \"{2=}\" would reach beyond the pattern's end or the seat's edge and are left out":
    "{0} von {1} Steinen von „{2}“ würden über das Ende des Musters oder den Rand der Musterfläche reichen und sind weggelassen.",
  "{0} reaches {1#} into the bore": "{0} reicht {1} in die Bohrung des Rings.",
  "{0} reaches {1#} into the bore, the deepest of {2#}":
    "{0} reicht {1} in die Bohrung des Rings, der tiefste von {2}.",
  "{0#} stones of {1#} do not fit into the row, which is {2#} long: they would stand in each other":
    "{0} Steine von {1} passen nicht in die Reihe, die {2} lang ist: Sie stünden ineinander.",
};
