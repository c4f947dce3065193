import { expect, it } from "vitest";
import { sizeSystems } from "../../src/size/catalogue.js";
import { SIZE_SYSTEM_NAMES } from "../../src/size/system-names.js";

it("names the systems of the catalogue, in its order", () => {
  expect(SIZE_SYSTEM_NAMES).toEqual(sizeSystems.map(({ name }) => name));
});
