// Covers: src/art/svg/element.ts, src/art/svg/length.ts, src/art/svg/outline-drawing.ts, src/art/svg/paint.ts, src/art/svg/is-flat.ts
// Covers: src/art/svg/dashes.ts, src/art/svg/read-svg.ts, src/art/svg/shapes.ts, src/art/svg/stroke.ts, src/art/svg/element-style.ts
// Covers: src/art/svg/stylesheet.ts, src/art/svg/parse-transform.ts, src/art/svg/viewport.ts, src/art/svg/walk-elements.ts
/** What SVG elements and attributes cover, against closed forms and against resvg. */
import { describe, expect, it } from "vitest";
import { importSvg, rasterArea, svg } from "./svgs.js";

const STAR = "M 50 5 L 80 95 L 5 40 L 95 40 L 20 95 Z";

/** Name, content, attributes of the outermost element. */
const drawings: [string, string, string?][] = [
  ["rect", '<rect x="10" y="20" width="50" height="30"/>'],
  ["rect with one radius", '<rect x="10" y="20" width="50" height="30" rx="8"/>'],
  ["rect with two radii", '<rect x="10" y="20" width="50" height="30" rx="20" ry="5"/>'],
  ["rect with radii too large", '<rect x="10" y="20" width="50" height="30" rx="99"/>'],
  ["circle", '<circle cx="50" cy="50" r="30"/>'],
  ["ellipse", '<ellipse cx="50" cy="50" rx="40" ry="20"/>'],
  ["polygon", '<polygon points="10,10 90,20 50,80"/>'],
  ["polyline, filled as if closed", '<polyline points="10 10,90 20 50-80 50 80"/>'],
  ["line without stroke beside a path", '<line x1="0" y1="0" x2="90" y2="90"/><path d="M0 0h10v10z"/>'],
  ["path with arcs, turned", '<path d="M20 50 A 30 15 30 1 1 70 60 Q 60 90 20 50 z"/>'],
  ["open path, filled as if closed", '<path d="M20 50 C 10 10 90 10 80 50"/>'],
  ["star by nonzero", `<path d="${STAR}"/>`],
  ["star by evenodd", `<path fill-rule="evenodd" d="${STAR}"/>`],
  ["group with inherited rule", `<g fill-rule="evenodd"><g><path d="${STAR}"/></g></g>`],
  ["matrix", '<path transform="matrix(.8 .2 -.3 .7 30 10)" d="M0 0h60v60h-60z"/>'],
  [
    "nested transforms",
    '<g transform="translate(50,50) rotate(30)"><g transform="scale(1,-.5)skewX(20) skewY(-10)"><circle r="30"/></g></g>',
  ],
  ["rotation about a point", '<rect transform="rotate(45 50 50)" x="30" y="30" width="40" height="60"/>'],
  [
    "mirrored evenodd with a stroke",
    `<path transform="translate(100) scale(-1 1)" fill-rule="evenodd" stroke="red" stroke-width="2" d="${STAR}"/>`,
  ],
  ["viewBox, wider than the page", '<circle cx="40" cy="20" r="15"/>', 'width="100" height="100" viewBox="0 0 80 40"'],
  ["viewBox, moved", '<circle cx="0" cy="0" r="15"/>', 'width="100" height="100" viewBox="-20 -30 50 50"'],
  [
    "viewBox, sliced",
    '<circle cx="40" cy="20" r="35"/>',
    'width="100" height="100" viewBox="0 0 80 40" preserveAspectRatio="xMinYMax slice"',
  ],
  [
    "viewBox, stretched",
    '<circle cx="40" cy="20" r="15"/>',
    'width="100" height="100" viewBox="0 0 80 40" preserveAspectRatio="none"',
  ],
  [
    "viewBox, at the end",
    '<rect width="80" height="40"/><circle cx="40" cy="60" r="10"/>',
    'width="100" height="100" viewBox="0 0 80 40" preserveAspectRatio="xMaxYMin meet"',
  ],
  ["units", '<rect x="1mm" y="0.1in" width="0.5cm" height="9pt"/><rect x="40%" y="2pc" width="10%" height="20%"/>'],
  ["what the page hides", '<circle cx="100" cy="100" r="40"/>'],
  [
    "use with x, y",
    '<defs><rect id="a" width="20" height="10"/></defs><use href="#a" x="5" y="6"/><use xlink:href="#a" x="50" y="50" transform="rotate(20)"/>',
  ],
  [
    "use of a group with inherited paint",
    '<defs><g id="a"><path d="M0 0h20v20z"/></g></defs><use href="#a" fill="none" stroke="blue" stroke-width="3" x="10" y="10"/>',
  ],
  [
    "use of use",
    '<defs><circle id="a" r="5"/><g id="b"><use href="#a" x="10"/><use href="#a" x="30"/></g></defs><use href="#b" y="20"/><use href="#b" y="50" transform="scale(1.5)"/>',
  ],
  [
    "symbol",
    '<symbol id="s" viewBox="0 0 10 10"><circle cx="5" cy="5" r="6"/></symbol><use href="#s" x="10" y="10" width="40" height="60"/>',
  ],
  ["nested svg", '<svg x="10" y="10" width="50" height="40" viewBox="0 0 10 10"><circle cx="5" cy="5" r="7"/></svg>'],
  [
    "nested svg that lets its content out",
    '<svg x="20" y="20" width="30" height="30" viewBox="0 0 10 10" overflow="visible"><circle cx="5" cy="5" r="7"/></svg>',
  ],
  [
    "style attribute over attribute",
    '<rect style="fill:none;stroke:#000; stroke-width: 4px" fill="red" x="20" y="20" width="40" height="40"/>',
  ],
  [
    "style sheet",
    '<style>.a,#b{fill:none} rect{stroke:red;stroke-width:2} /* c */ #b{stroke-width:6}</style><rect class="x a" x="10" y="10" width="20" height="20"/><rect id="b" style="stroke-width:1" x="50" y="50" width="20" height="20"/>',
  ],
  [
    "display none",
    '<g display="none"><rect width="50" height="50"/></g><rect style="display:none" width="60" height="60"/><rect width="10" height="10"/>',
  ],
  [
    "visibility",
    '<g visibility="hidden"><rect width="50" height="50"/><rect visibility="visible" width="10" height="10"/></g>',
  ],
  [
    "no paint",
    '<rect fill="none" width="50" height="50"/><rect fill="transparent" width="40" height="50"/><rect fill-opacity="0" width="30" height="30"/><rect opacity="0" width="20" height="90"/><rect fill="rgba(0,0,0,0)" width="20" height="90"/><circle cx="9" cy="9" r="5"/>',
  ],
  ["currentColor", '<g color="green"><rect fill="currentColor" width="20" height="30"/></g>'],
  [
    "clip path",
    '<clipPath id="c"><circle cx="50" cy="50" r="30"/></clipPath><rect clip-path="url(#c)" width="60" height="60"/>',
  ],
  [
    "clip path of two shapes, turned, by evenodd",
    `<clipPath id="c" transform="rotate(10)"><path clip-rule="evenodd" d="${STAR}"/><rect width="20" height="20"/></clipPath><g clip-path="url(#c)" transform="scale(.9)"><rect width="100" height="70"/></g>`,
  ],
  [
    "clip path that is clipped",
    '<clipPath id="d"><rect width="50" height="100"/></clipPath><clipPath id="c" clip-path="url(#d)"><circle cx="50" cy="50" r="30"/></clipPath><rect clip-path="url(#c)" width="100" height="60"/>',
  ],
  [
    "clip path with use",
    '<circle id="k" cx="50" cy="50" r="20"/><clipPath id="c"><use href="#k" x="10"/></clipPath><rect clip-path="url(#c)" width="100" height="60"/>',
  ],
  [
    "clipped stroke",
    '<clipPath id="c"><rect width="50" height="100"/></clipPath><circle clip-path="url(#c)" fill="none" stroke="black" stroke-width="10" cx="50" cy="50" r="30"/>',
  ],
  ["stroke, butt", '<path fill="none" stroke="black" stroke-width="9" d="M20 20 L 80 30"/>'],
  [
    "stroke, square",
    '<path fill="none" stroke="black" stroke-width="9" stroke-linecap="square" d="M20 20 L 80 30 L 60 80"/>',
  ],
  [
    "stroke, round",
    '<path fill="none" stroke="black" stroke-width="9" stroke-linecap="round" stroke-linejoin="round" d="M20 20 L 80 30 L 30 40"/>',
  ],
  ["stroke, mitered", '<path fill="none" stroke="black" stroke-width="9" d="M20 20 L 80 30 L 60 80 Z"/>'],
  ["stroke, miter cut off", '<path fill="none" stroke="black" stroke-width="9" d="M20 20 L 70 30 L 20 42"/>'],
  [
    "stroke, miter limit raised",
    '<path fill="none" stroke="black" stroke-width="9" stroke-miterlimit="20" d="M20 20 L 60 30 L 20 40"/>',
  ],
  [
    "stroke, bevelled",
    '<path fill="none" stroke="black" stroke-width="12" stroke-linejoin="bevel" d="M20 20 L 80 30 L 60 80 Z"/>',
  ],
  [
    "stroke on curves and corners",
    '<path fill="none" stroke="black" stroke-width="8" d="M10 50 C 10 0 60 0 60 50 S 90 90 90 50 L 50 90 A 20 30 10 0 1 20 60"/>',
  ],
  ["stroke wider than its curve", '<path fill="none" stroke="black" stroke-width="40" d="M30 60 Q 50 30 70 60"/>'],
  [
    "stroke under a squeezing transform",
    '<g transform="translate(50 50) rotate(25) scale(1 .4)"><path fill="none" stroke="black" stroke-width="10" stroke-linecap="round" d="M-30 -40 L 30 -20 L -20 40 Z"/></g>',
  ],
  [
    "stroke of a rect and a circle",
    '<rect fill="none" stroke="black" stroke-width="6" x="10" y="10" width="40" height="30" rx="9"/><circle stroke="black" stroke-width="5" cx="70" cy="70" r="15"/>',
  ],
  [
    "stroke of lines",
    '<g stroke="black" stroke-width="4"><line x1="10" y1="10" x2="90" y2="50"/><polyline fill="none" points="10,90 50,60 90,90"/></g>',
  ],
  [
    "dots with round and square caps, none with butt ends",
    '<g fill="none" stroke="black" stroke-width="12"><path stroke-linecap="round" d="M20 20h0M50 20z"/><path stroke-linecap="square" d="M20 60l0 0"/><path d="M60 60h0"/><line stroke-linecap="round" x1="80" y1="80" x2="80" y2="80"/></g>',
  ],
  [
    "stroke-width in percent",
    '<path fill="none" stroke="black" stroke-width="5%" d="M20 20 L 80 30"/>',
    'width="100" height="50" viewBox="0 0 200 100"',
  ],
  [
    "fill and stroke overlapping others",
    '<rect x="10" y="10" width="50" height="50" stroke="red" stroke-width="7"/><circle cx="60" cy="60" r="25"/>',
  ],
  [
    "switch: the first child that can be drawn",
    '<switch><foreignObject width="50" height="50"/><g><rect width="30" height="10"/></g><rect width="90" height="90"/></switch>',
  ],
  [
    "switch: what needs more than SVG is passed over, and what is for one language where there is one for all",
    '<switch><title>t</title><g requiredExtensions="http://example.com/x"><rect width="70" height="70"/></g><g systemLanguage="fr"><rect width="60" height="60"/></g><rect width="20" height="10"/></switch>',
  ],
  [
    "mask of white and black, one over the other",
    '<mask id="m"><rect width="100" height="100" fill="white"/><circle cx="50" cy="50" r="30"/><path fill="none" stroke="#fff" stroke-width="8" d="M0 50H100"/></mask><rect x="10" y="10" width="70" height="80" mask="url(#m)"/>',
  ],
  [
    "mask in a group under a transform, by use, with what it inherits where it stands",
    '<defs><circle id="c" cx="50" cy="50" r="30"/><g fill="white"><mask id="m"><use href="#c"/></mask></g></defs><g transform="rotate(20 50 50) scale(.8)" fill="red" mask="url(#m)"><rect width="60" height="60"/><rect x="55" y="40" width="40" height="40"/></g>',
  ],
  [
    "mask with a box",
    '<mask id="m" maskUnits="userSpaceOnUse" x="20" y="30" width="40" height="50%"><rect width="100" height="100" fill="#fff"/></mask><g mask="url(#m)"><path fill="none" stroke="black" stroke-width="30" d="M0 35H100"/><rect y="60" width="100" height="9"/></g>',
  ],
  [
    "mask by alpha",
    '<mask id="m" mask-type="alpha"><rect width="50" height="50" fill="navy"/><rect x="60" width="20" height="90"/></mask><circle mask="url(#m)" cx="50" cy="50" r="40"/>',
  ],
  [
    "mask that hides all, beside what it does not",
    '<mask id="m"><rect width="50" height="50"/></mask><circle mask="url(#m)" cx="50" cy="50" r="40"/><rect width="9" height="9"/>',
  ],
  [
    "mask inside a mask, and a clipped one",
    '<clipPath id="k"><rect width="60" height="100"/></clipPath><mask id="n"><rect y="30" width="100" height="40" fill="white"/></mask><mask id="m"><g clip-path="url(#k)"><circle mask="url(#n)" cx="50" cy="50" r="40" fill="white"/></g></mask><rect mask="url(#m)" width="100" height="100"/>',
  ],
  ["dashes", '<path fill="none" stroke="black" stroke-width="6" stroke-dasharray="9 5" d="M10 20H90M10 40L80 90"/>'],
  [
    "dashes in an odd number, from within, round corners",
    '<path fill="none" stroke="black" stroke-width="6" stroke-dasharray="20 5 8" stroke-dashoffset="7" d="M10 20H90V80H30"/>',
  ],
  [
    "dashes from before their beginning, in percent",
    '<path fill="none" stroke="black" stroke-width="6" stroke-dasharray="10%,4" stroke-dashoffset="-3" d="M10 20C90 0 90 90 20 80"/>',
  ],
  [
    "dashes round a closed line, the last of which meets the first",
    '<rect x="20" y="20" width="50" height="40" fill="none" stroke="black" stroke-width="8" stroke-dasharray="15 10 15 10 15 10 15 10 15 10 15 10 15 15"/>',
  ],
  [
    "dots with round caps, and squares that look along their line",
    '<g fill="none" stroke="black" stroke-width="6" stroke-dasharray="0 11"><path stroke-linecap="round" d="M10 20C90 0 90 90 20 80"/><path stroke-linecap="square" d="M10 95L90 60"/></g>',
  ],
  [
    "dashes longer than the line, of no length, and below 0",
    '<g fill="none" stroke="black" stroke-width="4"><path stroke-dasharray="500" d="M10 10H90V30"/><circle stroke-dasharray="500 1" cx="50" cy="60" r="20"/><path stroke-dasharray="0 0" d="M10 90H90"/><path stroke-dasharray="-3 5" d="M10 97H90"/></g>',
  ],
  [
    "dashes with joins and caps under a squeezing transform",
    '<g transform="translate(50 50) rotate(25) scale(1 .4)"><path fill="none" stroke="black" stroke-width="8" stroke-linecap="round" stroke-linejoin="bevel" stroke-dasharray="14 12" d="M-30 -40 L 30 -20 L -20 40 Z"/></g>',
  ],
  ["switch and link", '<a><rect width="10" height="10"/></a><switch><rect x="20" width="10" height="10"/></switch>'],
];

describe("the area of a drawing is what resvg covers", () => {
  it.each(drawings)("%s", (_, content, attributes) => {
    const text = svg(content, attributes);
    const { area, warnings } = importSvg(text);
    const expected = rasterArea(text);
    expect(warnings.filter(({ code }) => code !== "svg-colours")).toEqual([]);
    expect(expected).toBeGreaterThan(0);
    // An edge of 100 px, 1/16 of one of the 8 pixels to the px off.
    expect(Math.abs(area - expected)).toBeLessThan(0.004 * expected + 0.8);
  });
});

describe("exact areas", () => {
  it("of a circle, an ellipse turned and sheared, and a round stroke", () => {
    const circle = importSvg(svg('<circle cx="50" cy="50" r="30"/>')).area;
    expect(circle / (Math.PI * 900)).toBeCloseTo(1, 4);
    const ellipse = importSvg(svg('<ellipse transform="translate(50 50) rotate(31) skewX(17)" rx="30" ry="12"/>')).area;
    expect(ellipse / (Math.PI * 360)).toBeCloseTo(1, 4);
    const stroke = importSvg(svg('<path d="M20 50H80" stroke="black" stroke-width="10" stroke-linecap="round"/>')).area;
    expect(stroke / (600 + Math.PI * 25)).toBeCloseTo(1, 4);
  });

  it("of a stroke whose style sheet insists (CSS 2.1, 6.4.2; resvg does not follow it)", () => {
    const { area } = importSvg(
      svg(
        '<style>rect{stroke-width:6!important}</style><rect style="stroke-width:1;stroke:red" x="20" y="20" width="20" height="20"/>',
      ),
    );
    expect(area).toBeCloseTo(26 * 26, 4);
  });

  it("of a miter: a right angle's corner is a square, and beyond its limit half of it is gone", () => {
    const corner = (limit: number) =>
      importSvg(
        svg(`<path fill="none" stroke="black" stroke-width="10" stroke-miterlimit="${limit}" d="M20 20H70V70"/>`),
      ).area;
    // Two strips of 50 × 10 share a quarter of the corner's square, and the corner fills the last.
    expect(corner(4)).toBeCloseTo(1000, 2);
    expect(corner(1.4)).toBeCloseTo(1000 - 12.5, 2);
  });
});

describe("dashes", () => {
  it("count by the length that the path is said to have (SVG 2, 9.6.1; resvg does not follow it)", () => {
    const { area } = importSvg(
      svg('<path fill="none" stroke="black" stroke-width="4" pathLength="10" stroke-dasharray="1" d="M10 20H90"/>'),
    );
    expect(area).toBeCloseTo(40 * 4, 4);
  });

  it("without end are refused before they are cut", () => {
    const dashed = (pattern: string) =>
      svg(`<path fill="none" stroke="black" stroke-dasharray="${pattern}" d="M10 20H90"/>`);
    expect(() => importSvg(dashed("1e-9"))).toThrow(/corners/);
    expect(() => importSvg(dashed("0 1e-300"))).toThrow(/corners/);
    expect(() => importSvg(dashed("1 ".repeat(101)))).toThrow(/more than 100 dashes/);
    expect(() => importSvg(dashed("wide"))).toThrow(/stroke-dasharray of <path> at line 1 is no length/);
  });
});

describe("turning over", () => {
  it("puts the file's top at +y and its left at −x", () => {
    const { region } = importSvg(svg('<rect width="20" height="10"/>'));
    const [xs, ys] = [region[0].map(({ x }) => x), region[0].map(({ y }) => y)];
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([0, 2e6]);
    expect([Math.min(...ys), Math.max(...ys)]).toEqual([4e6, 5e6]);
  });
});

describe("what is no geometry is told by name and line", () => {
  const rect = '<rect width="10" height="10"/>';
  it.each([
    ["text", `\n<text id="t">A</text>${rect}`, /<text id="t"> at line 2 is no geometry/],
    ["image", `<image href="a.png"/>${rect}`, /<image> at line 1/],
    ["foreignObject", `<foreignObject/>${rect}`, /<foreignObject> at line 1/],
    ["script", `<script>1</script>${rect}`, /<script> at line 1/],
    ["animation", '<rect width="10" height="10"><animate attributeName="x"/></rect>', /<animate> at line 1/],
    [
      "gradient",
      '<linearGradient id="g"/>\n<rect fill="url(#g)" width="9" height="9"/>',
      /<rect> at line 2 .*<linearGradient id="g"> at line 1/,
    ],
    [
      "mask in grey",
      `<mask id="m"><rect fill="#888" width="9" height="9"/></mask><g mask="url(#m)">${rect}</g>`,
      /mask of <g> at line 1/,
    ],
    [
      "mask that is half clear",
      `<mask id="m"><g opacity="50%"><rect fill="#fff" width="9" height="9"/></g></mask><g mask="url(#m)">${rect}</g>`,
      /mask of <g> at line 1/,
    ],
    [
      "mask in a gradient",
      `<linearGradient id="l"/><mask id="m"><rect fill="url(#l)" width="9" height="9"/></mask><g mask="url(#m)">${rect}</g>`,
      /mask of <g> at line 1/,
    ],
    [
      "mask whose box may cut a stroke",
      '<mask id="m"><rect fill="#fff" width="99" height="99"/></mask><path stroke="black" stroke-width="9" mask="url(#m)" d="M10 10H90"/>',
      /mask of <path> at line 1/,
    ],
    [
      "mask that changes too often",
      `<mask id="m">${'<rect width="9" height="9" fill="#fff"/><rect width="3" height="3"/>'.repeat(60)}</mask><g mask="url(#m)">${rect}</g>`,
      /mask of <g> at line 1/,
    ],
    ["mask that is not there", `<g mask="url(#m)">${rect}</g>`, /mask of <g> at line 1/],
    ["filter", `<filter id="m"/><g filter="url(#m)">${rect}</g>`, /filter of <g> at line 1/],
    ["marker", '<path marker-end="url(#m)" d="M0 0h9v9z"/>', /marker-end of <path>/],
    [
      "clip units",
      `<clipPath id="c" clipPathUnits="objectBoundingBox"/><g clip-path="url(#c)">${rect}</g>`,
      /objectBoundingBox of <g>/,
    ],
    ["switch", `<switch><text>A</text><foreignObject/></switch>${rect}`, /<text> at line 1 is no geometry/],
    [
      "scaled to nothing",
      `<g id="z" transform="scale(0)">${rect}</g>${rect}`,
      /transform of <g id="z"> at line 1 flattens/,
    ],
    ["scaled to a line", `${rect}<rect transform="scale(1 0)" width="9" height="9"/>`, /<rect> at line 1 flattens/],
    [
      "scaled to nearly nothing by several",
      `<g transform="scale(1e-6 1)"><rect transform="scale(1e-6 1)" width="9" height="9"/></g>${rect}`,
      /<rect> at line 1 flattens/,
    ],
    ["another file", `<use href="other.svg#a"/>${rect}`, /<use> at line 1 points outside the file/],
    ["what is not there", `<use href="#a"/>${rect}`, /points to #a, which is not in the file/],
    [
      "selectors",
      `<style>g > rect { fill: none } @import url(x.css);</style>${rect}`,
      /2 style rules are not followed/,
    ],
    ["several colours", `${rect}<rect fill="white" width="5" height="5"/>`, /2 colours \(black, white\)/],
  ])("%s", (_, content, message) => {
    const { warnings, area } = importSvg(svg(content));
    expect(warnings).toHaveLength(1);
    expect(warnings[0].message).toMatch(message);
    expect(area).toBeGreaterThan(30);
  });

  it("but not what is hidden or says nothing", () => {
    const { warnings } = importSvg(
      svg(`<title>a</title><desc>b</desc><metadata><x/></metadata><text display="none">A</text>${rect}`),
    );
    expect(warnings).toEqual([]);
  });

  it("and no more than 20 times", () => {
    const { warnings } = importSvg(svg("<text/>".repeat(50) + rect));
    expect(warnings).toHaveLength(21);
    expect(warnings[20].message).toMatch(/30 more/);
  });
});

describe("cleaning", () => {
  it("counts repeated points, tiny loops and outlines that cross themselves", () => {
    const { cleaned, area } = importSvg(
      svg('<path d="M0 0H20V20H0Z M5 50h.01v.01z M30 30 L60 60 L60 30 L30 60Z M70 70L70.000000001 70L90 70V90Z"/>'),
    );
    expect(cleaned).toEqual({ duplicates: 1, tinyLoops: 1, crossings: 1 });
    expect(area).toBeCloseTo(400 + 450 + 200, 3);
  });
});
