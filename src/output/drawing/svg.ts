/**
 * Writes SVG 1.1 as text: elements, attributes, escaped text, numbers. Lengths in mm.
 */
import type { Point2 } from "../../base/math/point.js";

/** Attributes in the order in which they are written; undefined ones are left out. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** An element with its content, which is SVG already. */
export function element(name: string, attributes: Attributes, ...content: readonly string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === "number" ? decimal(value) : escapeText(String(value))}"`)
    .join("");
  return content.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${content.join("")}</${name}>`;
}

/** A group that others find by its class. */
export function group(name: string, ...content: readonly string[]): string {
  return element("g", { class: name }, ...content, "");
}

/** A whole document of a size in mm, whose units are mm too. */
export function svgDocument(width: number, height: number, title: string, ...content: readonly string[]): string {
  const [w, h] = [decimal(width), decimal(height)];
  const root = { xmlns: "http://www.w3.org/2000/svg", width: `${w}mm`, height: `${h}mm`, viewBox: `0 0 ${w} ${h}` };
  const paper = element("rect", { class: "paper", width, height, fill: "#ffffff" });
  const body = [element("title", {}, escapeText(title)), paper, ...content].map((line) => `\n${line}`);
  return `<?xml version="1.0" encoding="UTF-8"?>\n${element("svg", root, ...body, "\n")}\n`;
}

/** Decimals of a coordinate: a tenth of a micrometre. */
const DECIMALS = 4;

/** A number as SVG takes it. */
export function decimal(value: number): string {
  return String(Number(value.toFixed(DECIMALS)) + 0);
}

/** Path data of lines through points; closed ones end in Z. */
export function pathData(lines: readonly (readonly Point2[])[], closed: boolean): string {
  return lines
    .map((line) => `M${line.map(([x, y]) => `${decimal(x)} ${decimal(y)}`).join("L")}${closed ? "Z" : ""}`)
    .join("");
}

const ESCAPES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** Printable ASCII of which nothing is escaped: most texts, and the long ones of pictures, in one look. */
const PLAIN = /^[ !#-%'-;=?-~]*$/;

/** Text for content and attributes. What XML 1.0 has no place for becomes the replacement character. */
export function escapeText(text: string): string {
  if (PLAIN.test(text)) return text;
  return Array.from(
    text,
    (sign) => ESCAPES[sign] ?? (isXmlCharacter(sign.codePointAt(0) as number) ? sign : "\uFFFD"),
  ).join("");
}

/** The production `Char` of XML 1.0, 5th edition, §2.2. */
function isXmlCharacter(code: number): boolean {
  return (
    code === 0x9 ||
    code === 0xa ||
    code === 0xd ||
    (code >= 0x20 && code <= 0xd7ff) ||
    (code >= 0xe000 && code <= 0xfffd) ||
    code >= 0x10000
  );
}
