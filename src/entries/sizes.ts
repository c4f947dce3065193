/** Sizes alone, as `annulet/sizes`: every system and what they convert to, without the design's schema. */

export type { SizeSystemOptions } from "../size/catalogue.js";
export { sizeSystems } from "../size/catalogue.js";
export type { ChartEntry } from "../size/interpolation.js";
export type { PublishedChart } from "../size/published-chart.js";
export { type Scale, scaleSystem } from "../size/scale.js";
export { type ResolvedSize, resolveSize, type SizeSpec } from "../size/size.js";
export type { SizeSystem } from "../size/size-system.js";
export { type SizeRow, sizeTable } from "../size/size-table.js";
export type { SizeSystemName } from "../size/system-names.js";
