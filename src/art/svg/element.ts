/**
 * Elements of the parsed file: names, attributes, children, and how messages call them.
 */
import type { Element, Node } from "@xmldom/xmldom";

const SVG = "http://www.w3.org/2000/svg";

/** The element's name where it is SVG's (a file without namespaces is taken for SVG); undefined for others. */
export function svgName(element: Element): string | undefined {
  const space = element.namespaceURI;
  return space === SVG || space === null || space === "" ? (element.localName ?? undefined) : undefined;
}

export function attribute(element: Element, name: string): string | undefined {
  return element.hasAttribute(name) ? (element.getAttribute(name) ?? undefined) : undefined;
}

/** Where `use` and others point: href, or the older xlink:href. */
export function reference(element: Element): string | undefined {
  return (attribute(element, "href") ?? attribute(element, "xlink:href"))?.trim();
}

export function childElements(element: Element): Element[] {
  const found: Element[] = [];
  for (let node: Node | null = element.firstChild; node !== null; node = node.nextSibling) {
    if (node.nodeType === node.ELEMENT_NODE) found.push(node as Element);
  }
  return found;
}

/**
 * What a `take` may call the element: `id:` and its id, `layer:` and the label that drawing programs give layers and
 * groups: an attribute `label` of a namespace of their own, or `data-name`.
 */
export function partsOf(element: Element): string[] {
  const parts: string[] = [];
  for (const { name, localName, namespaceURI, value } of element.attributes) {
    if (name === "id") parts.push(`id:${value}`);
    else if (name === "data-name" || (localName === "label" && namespaceURI)) parts.push(`layer:${value}`);
  }
  return parts;
}

/** `<path id="leaf"> at line 7`. */
export function describeElement(element: Element): string {
  const id = attribute(element, "id");
  return `<${element.tagName}${id === undefined ? "" : ` id="${id.slice(0, 40)}"`}> at line ${element.lineNumber ?? "?"}`;
}
