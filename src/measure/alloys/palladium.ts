/**
 * Palladium.
 */
import type { Alloy } from "./alloy.js";

export const pd999: Alloy = {
  symbol: "pd999",
  name: "Fine palladium",
  density: 12.02,
  fineness: 999,
  kind: "palladium",
  source: "Platinum Metals Rev. 16(2), 1972, p. 59, pure palladium",
  certainty: "standard",
};

export const pd950: Alloy = {
  symbol: "pd950",
  name: "Palladium 950",
  density: 12,
  fineness: 950,
  kind: "palladium",
  source: "one credible source, publisher not recorded",
  certainty: "one credible source",
};
