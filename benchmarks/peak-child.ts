/**
 * Builds the README's design once in a process of its own and tells the memory that took, as JSON.
 */
import { build } from "../src/ring/build.js";
import { checksumOf } from "./checksum.js";
import { large } from "./designs.js";

const before = process.resourceUsage().maxRSS;
const { mesh } = await build(large.document);
const peak = process.resourceUsage().maxRSS;
process.stdout.write(JSON.stringify({ before, peak, checksum: checksumOf(mesh) }));
