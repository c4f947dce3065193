/**
 * Style sheets of SVG files, as far as drawings use them: rules by element, class, id and *, and inline styles.
 * CSS 2.1: 4.1 for syntax, 6.4.3 for which rule wins.
 */
import type { Element } from "@xmldom/xmldom";
import { attribute, svgName } from "./element.js";
import { SVG_LIMITS, tooMuch } from "./svg-limits.js";

export interface Declaration {
  readonly property: string;
  readonly value: string;
  readonly important: boolean;
}

interface Rule {
  readonly element: string | undefined;
  readonly ids: readonly string[];
  readonly classes: readonly string[];
  readonly weight: number;
  readonly declarations: readonly Declaration[];
}

export interface StyleSheet {
  readonly rules: readonly Rule[];
  /** Selectors and rules that are not understood. */
  readonly unread: readonly string[];
}

const SIMPLE = /^(\*|[\w-]+)?((?:[.#][\w-]+)*)$/;

/** Reads the text of all style elements. `where` is the file's place in the document, for errors. */
export function parseStyleSheet(text: string, where: string): StyleSheet {
  const rules: Rule[] = [];
  const unread: string[] = [];
  const plain = text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/<!--|-->/g, "");
  let at = 0;
  while (at < plain.length) {
    const open = plain.indexOf("{", at);
    const semicolon = plain.indexOf(";", at);
    const head = plain.slice(at, open === -1 ? undefined : open).trim();
    if (head.startsWith("@") && semicolon !== -1 && (open === -1 || semicolon < open)) {
      unread.push(plain.slice(at, semicolon).trim());
      at = semicolon + 1;
      continue;
    }
    if (open === -1) break;
    const close = closingBrace(plain, open);
    if (head.startsWith("@")) unread.push(head);
    else addRules(rules, unread, head, parseDeclarations(plain.slice(open + 1, close)));
    if (rules.length > SVG_LIMITS.rules) {
      throw tooMuch("has too many style rules", `at most ${SVG_LIMITS.rules}`, where);
    }
    at = close + 1;
  }
  rules.sort((a, b) => a.weight - b.weight);
  return { rules, unread };
}

/** Declarations of a rule or of a style attribute. */
export function parseDeclarations(text: string): Declaration[] {
  return text.split(";").flatMap((one) => {
    const colon = one.indexOf(":");
    if (colon === -1) return [];
    const important = /!\s*important\s*$/i.test(one);
    const value = one
      .slice(colon + 1)
      .replace(/!\s*important\s*$/i, "")
      .trim();
    return value === "" ? [] : [{ property: one.slice(0, colon).trim().toLowerCase(), value, important }];
  });
}

/** The declarations that the sheet has for an element, the strongest last. */
export function declarationsFor(sheet: StyleSheet, element: Element): Declaration[] {
  if (sheet.rules.length === 0) return [];
  const classes = new Set((attribute(element, "class") ?? "").split(/\s+/));
  const [id, name] = [attribute(element, "id"), svgName(element)];
  return sheet.rules
    .filter(
      (rule) =>
        (rule.element === undefined || rule.element === name) &&
        rule.ids.every((one) => one === id) &&
        rule.classes.every((one) => classes.has(one)),
    )
    .flatMap((rule) => rule.declarations);
}

function addRules(rules: Rule[], unread: string[], head: string, declarations: readonly Declaration[]): void {
  for (const selector of head.split(",").map((one) => one.trim())) {
    const match = SIMPLE.exec(selector);
    if (match === null || selector === "") {
      unread.push(selector);
      continue;
    }
    const parts = match[2].match(/[.#][\w-]+/g) ?? [];
    const named = (mark: string) => parts.filter((part) => part[0] === mark).map((part) => part.slice(1));
    const [ids, classes] = [named("#"), named(".")];
    const element = match[1] === "*" ? undefined : match[1];
    const weight = 10_000 * ids.length + 100 * classes.length + (element === undefined ? 0 : 1);
    rules.push({ element, ids, classes, weight, declarations });
  }
}

/** The brace that closes the one at `open`; the text's end where none does. */
function closingBrace(text: string, open: number): number {
  let depth = 0;
  for (let at = open; at < text.length; at++) {
    if (text[at] === "{") depth++;
    else if (text[at] === "}" && --depth === 0) return at;
  }
  return text.length;
}
