/**
 * Whether WebGL is worked by the processor, since there is no graphics card: then each smoothed edge is drawn by the cores that
 * also build the ring.
 */

/** How drivers without a card name themselves: SwiftShader, Mesa's, Windows' own. From memory. */
const BY_PROCESSOR = /swiftshader|llvmpipe|softpipe|basic render|software/i;

/** What is asked of a canvas for a try. */
type Tried = Pick<HTMLCanvasElement, "getContext">;

/** @param newCanvas gives one that is thrown away; false where it has no WebGL at all */
export function drawsInSoftware(newCanvas: () => Tried = () => document.createElement("canvas")): boolean {
  const gl = newCanvas().getContext("webgl2");
  if (gl === null) return false;
  // Chromium tells the driver's own name by the extension alone, Firefox by RENDERER.
  const unmasked = gl.getExtension("WEBGL_debug_renderer_info")?.UNMASKED_RENDERER_WEBGL ?? gl.RENDERER;
  const name = String(gl.getParameter(unmasked));
  gl.getExtension("WEBGL_lose_context")?.loseContext();
  return BY_PROCESSOR.test(name);
}
