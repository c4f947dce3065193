/**
 * A page of one ring: the empty page that ships beside the program, with a ring's facts and mesh put into it.
 */
import { escapeText } from "../drawing/svg.js";
import type { RingFacts } from "./ring-facts.js";

/** Where facts and mesh go: elements that browsers run nothing of. */
const FACTS = '<script type="application/json" id="ring-facts"></script>';
const MESH = '<script type="text/plain" id="ring-mesh"></script>';
const TITLE = /<title>[^<]*<\/title>/;

/**
 * @param page the empty page
 * @param packed the mesh, as `packMesh` gives its bytes
 * @throws RangeError where the page has no place for them: it is of another version
 */
export function ringPage(page: string, facts: RingFacts, packed: Uint8Array): string {
  for (const place of [FACTS, MESH]) {
    if (page.split(place).length !== 2) throw new RangeError(`the page of one ring has no place ${place}`);
  }
  // Whatever stands in a name ends no element: JSON may hold any letter by its number.
  const json = JSON.stringify(facts).replaceAll("<", "\\u003c");
  return page
    .replace(TITLE, () => `<title>${escapeText(facts.name)}</title>`)
    .replace(FACTS, () => FACTS.replace("></", () => `>${json}</`))
    .replace(MESH, () => MESH.replace("></", () => `>${base64Of(packed)}</`));
}

/** Bytes that are turned into letters at once; a multiple of three. */
const AT_ONCE = 3 * 4096;

function base64Of(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let i = 0; i < bytes.length; i += AT_ONCE) {
    parts.push(btoa(String.fromCharCode(...bytes.subarray(i, i + AT_ONCE))));
  }
  return parts.join("");
}
