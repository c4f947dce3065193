// Covers: src/workbench/section/dimension-layout.ts, src/workbench/section/section-place.ts, src/workbench/section/section-edges.ts, src/workbench/section/section-sizes.ts
import { describe, expect, it } from "vitest";
import { designJsonSchema, readDesign } from "../../../src/index.js";
import { layOut } from "../../../src/workbench/section/dimension-layout.js";
import { dimensionsOf, middleHeight, SIZE_RANGES } from "../../../src/workbench/section/dimensions.js";
import { pulledSize } from "../../../src/workbench/section/pulled-value.js";
import { edgesOf } from "../../../src/workbench/section/section-edges.js";
import { sectionPlace } from "../../../src/workbench/section/section-place.js";
import { sectionNumbers, sizePath } from "../../../src/workbench/section/section-sizes.js";
import { english } from "../../../src/workbench/words/english.js";

const FORMS = ["flat", "domed", "channel", "bevelled", "concave", "knife"] as const;

function numbersOf(form: string, bore = "comfort") {
  const written = { width: 6, thickness: 1.8, bore: { form: bore }, outside: { form } };
  const { profile } = readDesign({ annulet: 1, name: "Sizes", size: { diameter: 17 }, profile: written });
  return sectionNumbers(written, profile);
}

const VIEW = { scale: 30, u: 0, v: 0, hold: "band" } as const;
const SIZE = [260, 340] as const;

describe("the dimensions of a cross-section", () => {
  it.each(FORMS)("of the form %s have a word, a place in the document and a grip that follows the pointer", (form) => {
    const numbers = numbersOf(form);
    const dimensions = dimensionsOf(numbers);
    expect(dimensions.map(({ size }) => size)).toEqual(expect.arrayContaining(["width", "thickness", "bore.rise"]));
    for (const dimension of dimensions) {
      expect(english).toHaveProperty([dimension.label]);
      expect(sizePath(dimension.size)[0]).toBe("profile");
      dimension.grips.forEach((grip, i) => {
        // Pulled by a tenth of a millimetre, the grip of the new size stands a tenth of a millimetre further.
        const along =
          dimension.kind === "across"
            ? ([Math.sign(grip.pull[0]), 0] as const)
            : ([0, Math.sign(grip.pull[1])] as const);
        const motion =
          dimension.kind === "radius" && grip.pull[0] !== 0
            ? grip.pull.map((pull) => Math.sign(pull) * Math.SQRT1_2)
            : along;
        const value = pulledSize(dimension.value, grip, [0.1 * motion[0], 0.1 * motion[1]]);
        expect(value).toBeGreaterThan(dimension.value);
        const after = dimensionsOf({ ...numbers, sizes: { ...numbers.sizes, [dimension.size]: value } });
        const at = after.find(({ size }) => size === dimension.size)?.grips[i].at ?? [Number.NaN, Number.NaN];
        const far = Math.hypot(at[0] - grip.at[0], at[1] - grip.at[1]);
        // The nose of a ridge stays where it is while its radius grows.
        if (dimension.size !== "outside.ridge") expect(far).toBeCloseTo(0.1, 9);
      });
    }
  });

  it("take what the document's schema takes", () => {
    interface Field {
      readonly $ref?: string;
      readonly properties?: Record<string, Field>;
      readonly oneOf?: readonly Field[];
      readonly minimum?: number;
      readonly exclusiveMinimum?: number;
      readonly maximum?: number;
    }
    const schema = designJsonSchema() as unknown as Field & { readonly $defs: Readonly<Record<string, Field>> };
    const resolved = (field: Field): Field =>
      field.$ref === undefined ? field : { ...resolved(schema.$defs[field.$ref.slice("#/$defs/".length)]), ...field };
    for (const [size, [least, most]] of Object.entries(SIZE_RANGES)) {
      const found = `profile.${size}`.split(".").reduce<readonly Field[]>(
        (fields, key) =>
          fields
            .map(resolved)
            .flatMap((field) => [field, ...(field.oneOf ?? []).map(resolved)])
            .flatMap(({ properties }) => (properties?.[key] === undefined ? [] : [resolved(properties[key])])),
        [schema],
      );
      expect(found.length, size).toBeGreaterThan(0);
      for (const { minimum, exclusiveMinimum, maximum = 1000 } of found) {
        expect(minimum ?? exclusiveMinimum, size).toBe(0);
        expect(least > 0, size).toBe(exclusiveMinimum === 0);
        expect(most, size).toBe(maximum);
      }
    }
  });

  it("of another form than the last answer's are those that are written", () => {
    const { profile } = readDesign({
      annulet: 1,
      name: "Sizes",
      size: { diameter: 17 },
      profile: { width: 6, thickness: 1.8, bore: { form: "flat" }, outside: { form: "flat" } },
    });
    const numbers = sectionNumbers(
      { width: 6, thickness: 2, bore: { form: "flat" }, outside: { form: "domed", rise: 0.4 } },
      profile,
    );
    expect(numbers).toEqual({ form: "domed", bore: "flat", sizes: { width: 6, thickness: 2, "outside.rise": 0.4 } });
    for (const odd of [undefined, 3, [], { outside: 3 }, { outside: null, width: "6" }]) {
      expect(() => dimensionsOf(sectionNumbers(odd, profile))).not.toThrow();
    }
  });
});

describe("the drawing of dimensions", () => {
  const numbers = numbersOf("channel");
  const place = sectionPlace(VIEW, SIZE, numbers);

  it("stands level with the strip beside it, outward to the right", () => {
    expect(place.at([0, 0])[1]).toBe(170);
    expect(place.bottom - place.top).toBeCloseTo(6 * 30, 9);
    expect(place.right - place.left).toBeCloseTo(1.8 * 30, 9);
    expect(place.at([3, 1.8])).toEqual([place.right, place.top]);
    expect(middleHeight(numbers)).toBeCloseTo(1.8 - 0.5, 9);
  });

  it("has an arrow at either end of its line, from outside where there is no room", () => {
    for (const dimension of dimensionsOf(numbers)) {
      const { arrows, lines, number } = layOut(dimension, place);
      expect(lines.flat(2).every(Number.isFinite)).toBe(true);
      expect(number.at.every(Number.isFinite)).toBe(true);
      if (dimension.kind === "radius") continue;
      const axis = dimension.kind === "across" ? 1 : 0;
      const tips = arrows.map(([tip]) => tip[axis]).sort((a, b) => a - b);
      const ends = [place.at(dimension.from)[axis], place.at(dimension.to)[axis]].sort((a, b) => a - b);
      expect(tips).toEqual(ends);
      const foot = arrows.map(([, [x, y]]) => (axis === 1 ? y : x)).sort((a, b) => a - b);
      const narrow = ends[1] - ends[0] < 24;
      expect(foot[0] < ends[0]).toBe(narrow);
    }
  });

  it("shows the edges that the strip shows too", () => {
    expect(edgesOf(numbers).map(({ w }) => w)).toEqual([3, -3, 2.1, -2.1]);
    expect(edgesOf(numbersOf("domed"))[0]).toEqual({ w: 3, height: 1.3 });
    expect(edgesOf(numbersOf("bevelled"))[2].w).toBeCloseTo(2.2, 9);
  });
});
