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
};
