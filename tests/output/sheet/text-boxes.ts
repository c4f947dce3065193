/** Boxes round the texts of a drawing, by the width that is allowed for a character. */
import { parseSvg } from "../drawing/raster.js";

export interface TextBox {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Capitals are about 0.75 of the font size high, descenders 0.2 deep; a character of common sans-serif fonts is 0.55 wide. */
const [HEIGHT, DEPTH, WIDTH] = [0.75, 0.2, 0.55];

export function textBoxes(svg: string): TextBox[] {
  return [...parseSvg(svg).getElementsByTagName("text")].map((element) => {
    const number = (name: string) => Number(element.getAttribute(name));
    const [x, y, size, text] = [number("x"), number("y"), number("font-size"), element.textContent ?? ""];
    const width = WIDTH * size * Array.from(text).length;
    const anchor = element.getAttribute("text-anchor") ?? "start";
    const left = anchor === "middle" ? x - width / 2 : anchor === "end" ? x - width : x;
    return { text, left, right: left + width, top: y - HEIGHT * size, bottom: y + DEPTH * size };
  });
}
