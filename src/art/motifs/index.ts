/** The catalogue of motifs, as they are drawn. A new one is a file here and its two lines; its facts stand in design/motifs. */
import { AnnuletError } from "../../base/errors.js";
import type { MotifSpec } from "../../design/motifs/motif.js";
import type { ShapeSpec } from "../../design/shapes/shape-spec.js";
import { arcade } from "./arcade.js";
import { basket } from "./basket.js";
import { braid } from "./braid.js";
import { brick } from "./brick.js";
import { chain } from "./chain.js";
import { crescentRow } from "./crescent-row.js";
import { dropRow } from "./drop-row.js";
import { fan } from "./fan.js";
import { flower } from "./flower.js";
import { foil } from "./foil.js";
import { fret } from "./fret.js";
import { leafPair } from "./leaf-pair.js";
import { leafVine } from "./leaf-vine.js";
import { lozenge } from "./lozenge.js";
import { lozengeNet } from "./lozenge-net.js";
import type { AnyMotif, MotifFrame } from "./motif.js";
import { reed } from "./reed.js";
import { ropeTwist } from "./rope-twist.js";
import { scale } from "./scale.js";
import { scroll } from "./scroll.js";
import { star } from "./star.js";
import { waveCrest } from "./wave-crest.js";
import { zigzag } from "./zigzag.js";

export const motifs: readonly AnyMotif[] = [
  arcade,
  basket,
  braid,
  brick,
  chain,
  crescentRow,
  dropRow,
  fan,
  flower,
  foil,
  fret,
  leafPair,
  leafVine,
  lozenge,
  lozengeNet,
  reed,
  ropeTwist,
  scale,
  scroll,
  star,
  waveCrest,
  zigzag,
];

/**
 * The motif as a shape, in tile units.
 *
 * @param where the motif's place in the document, for errors
 * @throws AnnuletError `motif-misfit` where the tile is too low or too high for it
 */
export function drawMotif({ name, ...parameters }: MotifSpec, frame: MotifFrame, where: string): ShapeSpec {
  const motif = motifs.find((one) => one.name === name) as AnyMotif;
  requireAspect(motif, frame, where);
  return motif.draw(parameters as never, frame);
}

/** Rounding of an aspect that is let pass. */
const SLACK = 1e-9;

function requireAspect({ name, aspect }: AnyMotif, frame: MotifFrame, where: string): void {
  if (frame.aspect >= aspect.least - SLACK && frame.aspect <= aspect.most + SLACK) return;
  throw new AnnuletError({
    code: "motif-misfit",
    message: `the motif ${name} is not made for tiles ${frame.aspect} times as high as wide`,
    path: where,
    value: frame.aspect,
    allowed: `an aspect from ${aspect.least} to ${aspect.most}`,
    hint: `set "fit": {"aspect": ${aspect.natural}}, or more rows`,
  });
}
