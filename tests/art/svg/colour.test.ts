/** Colours, against what resvg paints. */
import { Resvg } from "@resvg/resvg-js";
import { expect, it } from "vitest";
import { COLOUR_NAMES, colourKey } from "../../../src/art/svg/colour.js";
import { svg } from "./svgs.js";

/** The colours that resvg paints, in one picture of a pixel each. */
function painted(colours: readonly string[]): string[] {
  const rects = colours.map((colour, i) => `<rect x="${i}" width="1" height="1" fill="${colour}"/>`).join("");
  const { pixels } = new Resvg(svg(rects, `width="${colours.length}" height="1"`)).render();
  return colours.map((_, i) => `#${pixels.subarray(4 * i, 4 * i + 3).toString("hex")}`);
}

it("of every name are CSS's", () => {
  // The one name that resvg does not know: CSS Color 4, 6.1.
  const known = COLOUR_NAMES.filter((name) => name !== "rebeccapurple");
  expect(known.length).toBe(147);
  expect(known.map(colourKey)).toEqual(painted(known));
  expect(colourKey("rebeccapurple")).toBe("#663399");
});

it("in other notations are those that resvg paints", () => {
  const written = ["#fa8", "#C0FFEE", "rgb(1,2,3)", "rgb( 10% , 55.5%, 99% )", "rgb(300, -5, 7)", "rgb(1 2 3)"];
  expect(written.map(colourKey)).toEqual(painted(written));
});

it("by hue are those that resvg paints, which rounds down where CSS rounds", () => {
  const written = ["hsl(210, 40%, 30%)", "hsl(-30,100%,50%)", "hsl(75, 10%, 80%)", "hsl(0, 0%, 100%)"];
  const bytes = (colours: readonly string[]) => colours.flatMap((colour) => [...Buffer.from(colour.slice(1), "hex")]);
  const theirs = bytes(painted(written));
  for (const [i, byte] of bytes(written.map(colourKey)).entries()) {
    expect(byte - theirs[i]).toBeGreaterThanOrEqual(0);
    expect(byte - theirs[i]).toBeLessThanOrEqual(1);
  }
});

it("do not count their alpha", () => {
  expect(["#fff8", "#ffffff80", "rgba(255,255,255,.5)", "rgb(100% 100% 100% / 20%)"].map(colourKey)).toEqual(
    Array.from({ length: 4 }, () => "#ffffff"),
  );
});

it("that are not understood stay as they are written", () => {
  expect(["oklch(0.5 0.2 30)", "#12345", "rgb(1,2)", "Blanc"].map(colourKey)).toEqual([
    "oklch(0.5 0.2 30)",
    "#12345",
    "rgb(1,2)",
    "blanc",
  ]);
});
