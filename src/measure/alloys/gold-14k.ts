/**
 * 14 karat gold, 585 ‰.
 * Range of all colours: 24carat.co.uk, 12.9 to 14.6, widened where the tabled density lies outside it.
 */
import type { Alloy } from "./alloy.js";

const SOURCE = "tmtpages.com, specific gravity table 4; riogrande.com, 2019";

export const au585Yellow: Alloy = {
  symbol: "au585-yellow",
  name: "14 K yellow gold",
  density: 13.07,
  range: [12.9, 14.6],
  fineness: 585,
  kind: "gold",
  source: SOURCE,
  certainty: "standard",
};

export const au585White: Alloy = {
  symbol: "au585-white",
  name: "14 K white gold",
  density: 12.61,
  range: [12.61, 14.6],
  fineness: 585,
  kind: "gold",
  source: SOURCE,
  certainty: "standard",
};

export const au585Red: Alloy = {
  symbol: "au585-red",
  name: "14 K red gold",
  density: 13.26,
  range: [12.9, 14.6],
  fineness: 585,
  kind: "gold",
  source: SOURCE,
  certainty: "standard",
};

export const au585Green: Alloy = {
  symbol: "au585-green",
  name: "14 K green gold",
  density: 14.2,
  range: [12.9, 14.6],
  fineness: 585,
  kind: "gold",
  source: SOURCE,
  certainty: "standard",
};
