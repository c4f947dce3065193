/**
 * How stones are shaded: light is followed backwards through each facet, mirrored by the planes that bound the body, and looked
 * up in the studio where it leaves; what leaves towards the ring falls on metal. All in one pass, without other pictures.
 *
 * Where this is an approximation: one index for all colours, so no fire; few mirrorings; metal behind a stone is one even light.
 */
import { Color, FrontSide, ShaderMaterial, type Texture, Vector4 } from "three";
import type { StoneBodyInView } from "../output/stones/stones-in-view.js";
import { GEM_FRAGMENT, GEM_VERTEX } from "./gem-shader.js";

/** Most planes that light is followed through; of a body with more its colour alone is shown. Chosen: all cuts but cabochons. */
const MOST_PLANES = 72;

/** A material for one body. */
export function gemMaterial(body: Pick<StoneBodyInView, "planes" | "width" | "gem" | "round">, studio: Texture) {
  const { planes, width, gem, round } = body;
  const count = planes.length / 4;
  const traced = gem.clear && !round && count <= MOST_PLANES;
  const kind = traced ? { TRACED: "", PLANES: count } : gem.clear ? { CLEAR: "" } : {};
  return new ShaderMaterial({
    name: "gem",
    defines: kind,
    vertexShader: GEM_VERTEX,
    fragmentShader: GEM_FRAGMENT,
    side: FrontSide,
    uniforms: {
      studio: { value: studio },
      turned: { value: 0 },
      colour: { value: new Color().setRGB(...gem.colour) },
      index: { value: gem.index },
      width: { value: width },
      metal: { value: new Color(1, 1, 1) },
      ...(traced ? { planes: { value: planesOf(planes) } } : {}),
    },
  });
}

function planesOf(planes: readonly number[]): Vector4[] {
  return Array.from({ length: planes.length / 4 }, (_, i) => {
    const [x, y, z, offset] = planes.slice(4 * i, 4 * i + 4);
    return new Vector4(x, y, z, offset);
  });
}
