/** What the document knows of each motif of the catalogue, by name. */
import { arcadeMotif } from "./arcade.js";
import { basketMotif } from "./basket.js";
import { braidMotif } from "./braid.js";
import { brickMotif } from "./brick.js";
import { chainMotif } from "./chain.js";
import { crescentRowMotif } from "./crescent-row.js";
import { dropRowMotif } from "./drop-row.js";
import type { MotifFacts } from "./facts.js";
import { fanMotif } from "./fan.js";
import { flowerMotif } from "./flower.js";
import { foilMotif } from "./foil.js";
import { fretMotif } from "./fret.js";
import { leafPairMotif } from "./leaf-pair.js";
import { leafVineMotif } from "./leaf-vine.js";
import { lozengeMotif } from "./lozenge.js";
import { lozengeNetMotif } from "./lozenge-net.js";
import { reedMotif } from "./reed.js";
import { ropeTwistMotif } from "./rope-twist.js";
import { scaleMotif } from "./scale.js";
import { scrollMotif } from "./scroll.js";
import { starMotif } from "./star.js";
import { waveCrestMotif } from "./wave-crest.js";
import { zigzagMotif } from "./zigzag.js";

export const motifFacts = [
  arcadeMotif,
  basketMotif,
  braidMotif,
  brickMotif,
  chainMotif,
  crescentRowMotif,
  dropRowMotif,
  fanMotif,
  flowerMotif,
  foilMotif,
  fretMotif,
  leafPairMotif,
  leafVineMotif,
  lozengeMotif,
  lozengeNetMotif,
  reedMotif,
  ropeTwistMotif,
  scaleMotif,
  scrollMotif,
  starMotif,
  waveCrestMotif,
  zigzagMotif,
] as const satisfies readonly MotifFacts[];
