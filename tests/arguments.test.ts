// Across: public functions that take one plain argument, asked with what is none
import { AnnuletError, explainField, formatForFile, massOf, ownAlloy, readDesign, resolveSize } from "annulet";
import { describe, expect, it } from "vitest";

const functions: Readonly<Record<string, (argument: never) => unknown>> = {
  explainField,
  formatForFile,
  ownAlloy,
  readDesign,
  resolveSize,
  "massOf, the volume": (volume) => massOf(volume, { density: 10 }),
  "massOf, the alloy": (alloy) => massOf(3, alloy),
};

describe.each(Object.entries(functions))("%s", (_, run) => {
  it.each([[null], [undefined], [true], [-3], ["x"], [{}], [[]], [() => undefined]])(
    "refuses %s by an AnnuletError",
    (argument) => {
      expect(() => run(argument as never)).toThrow(AnnuletError);
    },
  );
});
