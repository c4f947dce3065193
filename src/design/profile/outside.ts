/**
 * The outside of the cross-section, in one of its forms. A new form is a file in outsides/ and its place in the list.
 */
import { z } from "zod";
import { bevelledSchema } from "./outsides/bevelled.js";
import { channelSchema } from "./outsides/channel.js";
import { concaveSchema } from "./outsides/concave.js";
import { domedSchema } from "./outsides/domed.js";
import { flatOutsideSchema } from "./outsides/flat.js";
import { freeSchema } from "./outsides/free.js";
import { knifeSchema } from "./outsides/knife.js";

export const outsideSchema = z
  .discriminatedUnion("form", [
    flatOutsideSchema,
    domedSchema,
    channelSchema,
    bevelledSchema,
    concaveSchema,
    knifeSchema,
    freeSchema,
  ])
  .describe("Its outside.");

export type OutsideSpec = z.output<typeof outsideSchema>;
