import { openRing } from "annulet";
import { expect, it } from "vitest";
import { stoneValues } from "../../../src/workbench/fields/stone-values.js";
import { changeText, type Path } from "../../../src/workbench/state/json-text.js";

it("a row comes to each number of stones that it is offered, whether a gap or a count was told", async () => {
  const put = (text: string, values: readonly (readonly [Path, unknown])[]) =>
    values.reduce((before, [path, value]) => changeText(before, path, value), text);
  for (const told of [{ gap: 0.3 }, { count: 30 }, {}]) {
    const place = { form: "row", ...told };
    const profile = { width: 5, thickness: 2.4, outside: { form: "flat" } };
    const stones = [{ size: 1.5, place, setting: { form: "flush" } }];
    const text = JSON.stringify({ annulet: 1, size: { diameter: 17 }, profile, stones });
    const rowOf = async (design: string) => (await openRing(design).stones()).report?.groups[0].rows[0];
    const choices = (await rowOf(text))?.choices ?? [];
    expect(choices).toHaveLength(3);
    for (const { count, gap } of choices) {
      const made = (await rowOf(put(text, stoneValues(["stones", 0], count))))?.choices.find((one) => one.made);
      expect(made?.count).toBe(count);
      expect(made?.gap).toBeCloseTo(gap ?? Number.NaN, 6);
    }
  }
});
