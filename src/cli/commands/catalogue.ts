/**
 * The program's commands. A new one is one file and one line here.
 */
import type { Command } from "../command.js";
import { beadsCommand } from "./beads.js";
import { cautionsCommand } from "./cautions.js";
import { checkCommand } from "./check.js";
import { explainCommand } from "./explain.js";
import { fitCommand } from "./fit.js";
import { inspectCommand } from "./inspect.js";
import { makeCommand } from "./make.js";
import { motifsCommand } from "./motifs.js";
import { pictureCommand } from "./picture.js";
import { printCommand } from "./print.js";
import { schemaCommand } from "./schema.js";
import { sheetCommand } from "./sheet.js";
import { sizesCommand } from "./sizes.js";
import { tileCommand } from "./tile.js";
import { weighCommand } from "./weigh.js";

/** In the order that help shows them. */
export const commands: readonly Command[] = [
  makeCommand,
  fitCommand,
  beadsCommand,
  tileCommand,
  pictureCommand,
  printCommand,
  sheetCommand,
  motifsCommand,
  sizesCommand,
  checkCommand,
  weighCommand,
  inspectCommand,
  explainCommand,
  schemaCommand,
  cautionsCommand,
];
