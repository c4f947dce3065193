/**
 * Every texture by its name.
 */
import type { TextureName } from "../../design/art/texture.js";
import { bark } from "./bark.js";
import { brushed } from "./brushed.js";
import { hammered } from "./hammered.js";
import { stippled } from "./stippled.js";
import type { TextureForm } from "./texture-form.js";

export const textures: Readonly<Record<TextureName, TextureForm>> = { hammered, bark, brushed, stippled };
