import { expect, test, vi } from "vitest";
import { drawsInSoftware } from "../../../src/workbench/ring/draws-in-software.js";

const UNMASKED = 0x9246;
const RENDERER = 0x1f01;

/** A canvas whose driver has a name; `masked` where the browser tells it by RENDERER. */
function canvasOf(driver: string, masked = false) {
  const lose = vi.fn();
  const gl = {
    RENDERER,
    getExtension: (name: string) => {
      if (name === "WEBGL_lose_context") return { loseContext: lose };
      return masked ? null : { UNMASKED_RENDERER_WEBGL: UNMASKED };
    },
    getParameter: (which: number) => (which === (masked ? RENDERER : UNMASKED) ? driver : "WebKit WebGL"),
  };
  return { canvas: () => ({ getContext: () => gl }) as never, lose };
}

test.each([
  ["ANGLE (Google, Vulkan 1.3.0 (SwiftShader Device (Subzero) (0x0000C0DE)), SwiftShader driver)", true],
  ["llvmpipe (LLVM 15.0.6, 256 bits)", true],
  ["ANGLE (Microsoft, Microsoft Basic Render Driver Direct3D11 vs_5_0 ps_5_0)", true],
  ["ANGLE (Intel, Mesa Intel(R) UHD Graphics 620, OpenGL 4.6)", false],
])("tells from the driver's name, and lets go of its try: %s", (driver, software) => {
  for (const masked of [false, true]) {
    const { canvas, lose } = canvasOf(driver, masked);
    expect(drawsInSoftware(canvas)).toBe(software);
    expect(lose).toHaveBeenCalledOnce();
  }
});

test("is false where there is no WebGL", () => {
  expect(drawsInSoftware(() => ({ getContext: () => null }) as never)).toBe(false);
});
