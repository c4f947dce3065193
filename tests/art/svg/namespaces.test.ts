/** Entities of a document type: names of namespaces are followed, nothing else is. */
import { describe, expect, it } from "vitest";
import { writeOutNamespaces } from "../../../src/art/svg/namespaces.js";
import { failureOf } from "../../flat/strips.js";
import { importSvg } from "./svgs.js";

const SVG = "http://www.w3.org/2000/svg";
const write = (text: string) => writeOutNamespaces(text, "svg");
const type = (subset: string) =>
  `<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/svg11.dtd" [${subset}]>`;

describe("names of namespaces", () => {
  it("are put in place, and lines keep their numbers", () => {
    const text = `\uFEFF<?xml version="1.0"?>\n<!-- drawn > here -->${type(`\n<!ENTITY ns_svg "${SVG}">\n<!-- more -->\t<!ENTITY ns.x 'urn:x'>\n`)}
<svg xmlns="&ns_svg;" xmlns:x='&ns.x;' width="10" height="10"><switch>
<foreignObject requiredExtensions="&ns.x;"/><g><rect width="4" height="5"/><text/></g></switch></svg>`;
    const written = write(text);
    expect(written).toContain(`<svg xmlns="${SVG}" xmlns:x='urn:x' width`);
    expect(written).toContain('requiredExtensions="urn:x"');
    expect(written.split("\n").length).toBe(text.split("\n").length);
    const { area, warnings } = importSvg(text);
    expect(area).toBeCloseTo(20, 6);
    expect(warnings.map(({ message }) => message)).toEqual([expect.stringContaining("<text> at line 7")]);
  });

  it("are none in a file that declares none", () => {
    for (const text of [
      "",
      "<svg/>",
      `<!DOCTYPE svg><svg a="&amp;"/>`,
      "<!-- <!DOCTYPE svg [ --><svg/>",
      "\uFEFF<?xml?>",
    ]) {
      expect(write(text)).toBe(text);
    }
  });

  it.each<[string, string]>([
    ["in a text", `${type('<!ENTITY a "urn:a">')}<svg xmlns="${SVG}">&a;</svg>`],
    ["in another attribute", `${type('<!ENTITY a "urn:a">')}<svg xmlns="&a;" id="&a;"/>`],
    ["one inside another", `${type('<!ENTITY a "urn:a"><!ENTITY b "&a;&a;">')}<svg xmlns="&b;"/>`],
    ["letters by their number", `${type('<!ENTITY a "&#60;rect/>">')}<svg/>`],
    ["of parameters", `${type('<!ENTITY % a "urn:a">%a;')}<svg/>`],
    ["from elsewhere", `${type('<!ENTITY a SYSTEM "file:///a">')}<svg xmlns="&a;"/>`],
    ["one that XML has", `${type('<!ENTITY amp "urn:a">')}<svg xmlns="&amp;"/>`],
    ["with a tag", `${type('<!ENTITY a "<rect/>">')}<svg xmlns="&a;"/>`],
    ["too long", `${type(`<!ENTITY a "${"a".repeat(301)}">`)}<svg xmlns="&a;"/>`],
    ["attributes of a document type", `${type("<!ATTLIST svg id CDATA 'a'>")}<svg/>`],
    ["a document type without end", `<!DOCTYPE svg [<!ENTITY a "urn:a">`],
    ["hidden from it in a comment", `${type('<!ENTITY a "urn:a">')}<svg xmlns="${SVG}"><!-- &a; --></svg>`],
  ])("are all that is followed: not %s", (_, text) => {
    expect(failureOf(() => write(text))).toMatchObject({ code: "svg-entities", path: "svg" });
  });

  it("do not make a file large: so many may be declared and used", () => {
    const many = Array.from({ length: 101 }, (_, i) => `<!ENTITY a${i} "urn:a">`).join("");
    expect(failureOf(() => write(`${type(many)}<svg/>`)).code).toBe("svg-too-complex");
    const used = '<g xmlns="&a;"/>'.repeat(1001);
    expect(failureOf(() => write(`${type('<!ENTITY a "urn:a">')}<svg>${used}</svg>`)).code).toBe("svg-too-complex");
  });

  it("are looked for once, however a file is made", () => {
    // Each would take minutes by a search that begins anew at every letter.
    for (const text of [
      `${type("")}${' xmlns="&a'.repeat(200_000)}`,
      `<!--${"<!--".repeat(300_000)}`,
      " ".repeat(2e6),
    ]) {
      expect(write(text).length).toBeLessThanOrEqual(text.length);
    }
    expect(failureOf(() => write(type(`<!ENTITY${" ".repeat(2e6)}`))).code).toBe("svg-entities");
  });
});
