import { listMotifs } from "annulet";
import { expect, it } from "vitest";
import { motifValues, ribbonOf } from "../../../src/workbench/fields/choose-motif.js";

const motif = (name: string) => listMotifs().find((one) => one.name === name) ?? listMotifs()[0];

it("gives a motif of lines its ribbon, and takes it from one that is filled", () => {
  expect(ribbonOf(motif("zigzag"), 6)).toEqual(
    motif("zigzag").ribbon && expect.objectContaining({ width: expect.any(Number) }),
  );
  const lines = listMotifs().find(({ ribbon }) => ribbon !== undefined) ?? motif("");
  const filled = listMotifs().find(({ ribbon }) => ribbon === undefined) ?? motif("");
  const owner = ["pattern", "regions", 0];
  const width = Math.round((lines.ribbon?.share ?? 0) * 400) / 100;
  expect(motifValues(owner, { path: "" }, lines, 4)).toEqual([
    [[...owner, "motif"], { name: lines.name }],
    [[...owner, "ribbon"], { width, join: lines.ribbon?.join, ends: lines.ribbon?.ends }],
  ]);
  expect(motifValues(owner, { ribbon: { width: 1 } }, filled, 4)[1]).toEqual([[...owner, "ribbon"], undefined]);
  expect(motifValues(owner, {}, filled, 4)).toHaveLength(1);
});
