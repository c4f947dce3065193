/**
 * A leaf: a shape that the pattern has under a name.
 */
import { z } from "zod";
import type { ShapeNode } from "./shape-node.js";

export interface NamedShape {
  readonly shape: string;
}

export const namedShape: ShapeNode<NamedShape> = {
  key: "shape",
  fields: () => ({ shape: z.string().min(1).max(200).describe("name of a shape in pattern.shapes") }),
  draw: ({ shape }, frame) => frame.drawNamed(shape),
};
