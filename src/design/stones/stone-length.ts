/**
 * Lengths that a stone may have.
 */
import { z } from "zod";

/** mm; the least is a quarter of the smallest stone in trade charts, 0.8 mm; the most is far above any ring's. Chosen. */
export const stoneLength = z.number().min(0.3).max(30);
