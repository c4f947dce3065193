// Covers: src/art/svg/guard.ts, src/art/svg/svg-limits.ts, src/art/svg/parse.ts, src/art/svg/refuse-tangled.ts
/** Files that are broken, or made to stall: each an error that says why, and soon. */
import { describe, expect, it } from "vitest";
import { failureOf } from "../../flat/strips.js";
import { importSvg, svg } from "./svgs.js";

const rect = '<rect width="10" height="10"/>';
const nested = (depth: number, inside: string) => "<g>".repeat(depth) + inside + "</g>".repeat(depth);

/** Ten lists of ten uses, each of the list before: ten thousand million shapes. */
const laughs = Array.from({ length: 10 }, (_, i) =>
  i === 0 ? `<g id="l0">${rect}</g>` : `<g id="l${i}">${`<use href="#l${i - 1}"/>`.repeat(10)}</g>`,
).join("");

const zigzag = (count: number) =>
  `M 0 0 ${Array.from({ length: count }, (_, i) => `L ${i % 2 === 0 ? 100 : 0} ${(i * 37) % 100}`).join(" ")} Z`;

describe("a file that should not be read is refused by name", () => {
  it.each<[string, string, string, RegExp]>([
    [
      "entity expansion",
      `<!DOCTYPE svg [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]>${svg(`<text>&b;</text>${rect}`)}`,
      "svg-entities",
      /entities/,
    ],
    [
      "an external entity",
      `<!DOCTYPE svg [<!ENTITY a SYSTEM "file:///etc/passwd">]>${svg(`&a;${rect}`)}`,
      "svg-entities",
      /entities/,
    ],
    ["an unknown entity", svg(`&nothing;${rect}`), "svg-malformed", /line 1/],
    ["deep nesting", svg(nested(200_000, rect)), "svg-too-complex", /deeper than 100/],
    [
      "depth through use",
      svg(
        `${Array.from({ length: 90 }, (_, i) => `<g id="d${i}">${i === 0 ? rect : `<use href="#d${i - 1}"/>`}</g>`).join("")}`,
      ),
      "svg-too-complex",
      /deeper than 100/,
    ],
    ["a million elements", svg("<g/>".repeat(1_000_000)), "svg-too-complex", /more than 50000 elements/],
    ["too long a text", svg(`<!--${" ".repeat(5_000_000)}-->${rect}`), "svg-too-complex", /characters long/],
    [
      "a hundred thousand attributes",
      svg(`<rect ${Array.from({ length: 100_000 }, (_, i) => `a${i}="1"`).join(" ")}/>`),
      "svg-too-complex",
      /attributes/,
    ],
    ["uses of uses of uses", svg(laughs), "svg-too-complex", /more than 10000 elements/],
    ["use of itself", svg('<g id="a"><use href="#a"/></g>'), "svg-cycle", /never end/],
    [
      "uses in a circle",
      svg('<defs><g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g></defs><use href="#a"/>'),
      "svg-cycle",
      /never end/,
    ],
    [
      "a clip path that clips itself",
      svg(`<clipPath id="c" clip-path="url(#c)">${rect}</clipPath><g clip-path="url(#c)">${rect}</g>`),
      "svg-cycle",
      /never end/,
    ],
    [
      "a mask that masks itself",
      svg(`<mask id="m"><g mask="url(#m)">${rect}</g></mask><g mask="url(#m)">${rect}</g>`),
      "svg-cycle",
      /never end/,
    ],
    ["a tangle", svg(`<path d="${zigzag(20_000)}"/>`), "svg-too-complex", /tangled/],
    ["a stroked tangle", svg(`<path fill="none" stroke="black" d="${zigzag(1000)}"/>`), "svg-too-complex", /tangled/],
    [
      "curves as large as a room",
      svg(`<path d="M0 0${"C 900 0 0 900 900 900 S 900 0 0 0".repeat(20_000)}"/>`),
      "svg-too-complex",
      /corners/,
    ],
    ["a million path commands", svg(`<path d="M0 0${"l1 1".repeat(400_000)}"/>`), "svg-too-complex", /path data/],
    [
      "points without end",
      svg(`<defs><path id="a" d="M0 0${"l1 1l1-2".repeat(6000)}"/></defs>${'<use href="#a"/>'.repeat(60)}`),
      "svg-too-complex",
      /more than 100000 lines/,
    ],
    [
      "a rule for everything",
      svg(`<style>${"a{fill:red}".repeat(3000)}</style>${rect}`),
      "svg-too-complex",
      /style rules/,
    ],
    ["NaN in a transform", svg(`<g transform="translate(NaN 0)">${rect}</g>`), "svg-transform", /<g> at line 1/],
    ["a word in a transform", svg(`<g transform="rotate(a)">${rect}</g>`), "svg-transform", /rotate\(a\)/],
    ["an unknown transform", svg(`<g transform="twist(3)">${rect}</g>`), "svg-transform", /twist/],
    ["a transform cut short", svg(`<g transform="scale(2">${rect}</g>`), "svg-transform", /scale/],
    ["zero scale of all", svg(`<g transform="scale(0)">${rect}</g>`), "svg-empty", /draws nothing/],
    [
      "a scale beyond measure",
      svg(`<g transform="scale(1e300) scale(1e300)">${rect}</g>`),
      "svg-transform",
      /too large/,
    ],
    ["a length that is none", svg('<rect width="wide" height="3"/>'), "svg-length", /width of <rect> at line 1/],
    ["points that are no pairs", svg('<polygon points="1 2 3"/>'), "svg-points", /pairs/],
    ["a broken path", svg('<path id="p" d="M 0 0 L 1"/>'), "path-malformed", /<path id="p"> at line 1/],
    ["a viewBox without size", svg(rect, 'viewBox="0 0 0 10"'), "svg-viewbox", /viewBox/],
    ["a shape miles away", svg('<rect width="1e9" height="1e9"/>'), "svg-too-far", /1000 mm/],
    ["nothing drawn", svg("<g/>"), "svg-empty", /draws nothing/],
    ["another kind of file", "<html><body/></html>", "svg-not-svg", /<html>/],
    ["no file", "", "svg-malformed", /well formed/],
    ["binary rubbish", "\u0000\u0001\uFFFD<svg", "svg-malformed", /well formed/],
    ["a tag left open", '<svg xmlns="http://www.w3.org/2000/svg">\n<g>\n</svg>', "svg-malformed", /line/],
    ["a quote left open", svg('<rect width="10 height="3"/>'), "svg-malformed", /line 1/],
    ["a prefix without a name", '<svg xmlns="http://www.w3.org/2000/svg"><x:a/></svg>', "svg-malformed", /./],
  ])("%s", (_, text, code, message) => {
    const error = failureOf(() => importSvg(text));
    expect(error.code).toBe(code);
    expect(error.message).toMatch(message);
    expect(error.path).toBe("svg");
  });

  it("takes a plain DOCTYPE, a byte order mark and comments for what they are", () => {
    const type = '<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">';
    const text = `\uFEFF<?xml version="1.0"?>${type}<!-- > < " -->${svg(`<![CDATA[<g>"]]>${rect}`)}`;
    expect(importSvg(text).area).toBeCloseTo(100, 6);
  });
});
