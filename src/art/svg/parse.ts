/**
 * SVG text → elements. XML only: of entities only names of namespaces are followed, and nothing is fetched.
 */
import { DOMParser, type Document, type Element, type Node } from "@xmldom/xmldom";
import { AnnuletError } from "../../base/errors.js";
import { svgName } from "./element.js";
import { guardLength, guardText } from "./guard.js";
import { writeOutNamespaces } from "./namespaces.js";

export interface ParsedSvg {
  readonly root: Element;
  readonly byId: ReadonlyMap<string, Element>;
  readonly styles: readonly Element[];
  /** Whether a processing instruction asks for a style sheet from elsewhere. */
  readonly sheetElsewhere: boolean;
}

/**
 * Parses a file's text.
 *
 * @param where the file's place in the document, for errors
 * @throws AnnuletError `svg-malformed` with the line, `svg-not-svg`, `svg-too-complex`, `svg-entities`
 */
export function parseSvg(text: string, where: string): ParsedSvg {
  guardLength(text, where);
  const plain = writeOutNamespaces(text, where);
  guardText(plain, where);
  const root = parseXml(plain.replace(/^\uFEFF/, ""), where).documentElement;
  if (root === null || svgName(root) !== "svg") {
    throw new AnnuletError({
      code: "svg-not-svg",
      message: `the file is not SVG: it begins with <${root?.tagName ?? ""}>`,
      path: where,
      allowed: "a file whose outermost element is <svg>",
    });
  }
  const byId = new Map<string, Element>();
  const styles: Element[] = [];
  for (let node: Node | null = root; node !== null; node = next(node, root)) {
    if (node.nodeType !== node.ELEMENT_NODE) continue;
    const element = node as Element;
    const id = element.getAttribute("id");
    if (id && !byId.has(id)) byId.set(id, element);
    if (svgName(element) === "style") styles.push(element);
  }
  return { root, byId, styles, sheetElsewhere: /<\?xml-stylesheet\s/.test(text) };
}

/** The next node of the tree in its own order. */
function next(node: Node, root: Node): Node | null {
  if (node.firstChild !== null) return node.firstChild;
  for (let at: Node | null = node; at !== null && at !== root; at = at.parentNode) {
    if (at.nextSibling !== null) return at.nextSibling;
  }
  return null;
}

function parseXml(text: string, where: string): Document {
  let problem: string | undefined;
  const parser = new DOMParser({
    onError: (level, message) => {
      problem ??= message;
      throw new Error(`${level}: ${message}`);
    },
  });
  try {
    return parser.parseFromString(text, "image/svg+xml");
  } catch (cause) {
    const said = problem ?? (cause instanceof Error ? cause.message : String(cause));
    const line = /\[line:(\d+)/.exec(said)?.[1] ?? (cause as { locator?: { lineNumber?: number } }).locator?.lineNumber;
    const plain = said.replace(/\s*@#?\[line.*$/s, "").trim();
    throw new AnnuletError(
      {
        code: "svg-malformed",
        message: `the SVG file is not well formed${line === undefined ? "" : `, line ${line}`}: ${plain.slice(0, 200)}`,
        path: where,
        allowed: "well-formed XML",
        hint: "save the drawing again as plain SVG",
      },
      { cause },
    );
  }
}
