/**
 * `annulet/range`: many rings of one design, for programs in Node: a plan's variants, and their files on all cores.
 */
export { AnnuletError } from "../base/errors.js";
export type { FileSource } from "../base/files.js";
export { makeRange } from "../range/disk/make-range.js";
export type { Manifest } from "../range/disk/manifest.js";
export { type ServedJob, type ServeSetup, serveRanges } from "../range/disk/queue/serve-ranges.js";
export type { RangeEvent } from "../range/disk/range-run.js";
export type { RangeSetup } from "../range/disk/range-setup.js";
export type { RangeStore, StorePlace } from "../range/disk/store/range-store.js";
export { type Deviation, type Verified, verifyRange } from "../range/disk/verify-range.js";
export { type ExpandOptions, expandPlan } from "../range/expand/expand-plan.js";
export type { Part } from "../range/expand/part.js";
export type { KnownFigures } from "../range/figures/known-figures.js";
export type { PlannedVariant } from "../range/figures/plan-variant.js";
export type { PlanInput } from "../range/plan/plan-schema.js";
export type { LeftOutRecord, MadeFigures, MadeRecord } from "../range/records/record.js";
