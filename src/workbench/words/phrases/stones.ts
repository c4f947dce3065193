/** German for what is said of stones, by the English form. */
import type { Phrases } from "../phrasebook.js";

export const stonePhrases: Phrases = {
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
