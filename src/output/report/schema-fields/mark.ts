/**
 * What the report says of one mark.
 */
import { z } from "zod";
import { mm } from "./numbers.js";

export const mark = z.strictObject({
  kind: z.enum(["lettering", "hallmark"]).describe("lettering, or a field for a hallmark"),
  text: z.string().nullable().describe("what is written; null of a field"),
  font: z.string().nullable().describe("file or package that the font comes from; null of a field"),
  at: z.enum(["seat", "rail", "bore"]).describe("the surface that it stands on"),
  side: z.enum(["+z", "-z"]).nullable().describe("which rail; null elsewhere"),
  angle: z.number().describe("degrees on the ring of its middle"),
  v: mm("its middle from the surface's middle, + towards +z"),
  mode: z.enum(["raised", "sunk", "plain"]).describe("a plain field is level with its surface"),
  depth: mm("above or below the surface"),
  height: mm("of capitals, or of the field across the band"),
  length: mm("along the surface: the whole text, or the field"),
});
