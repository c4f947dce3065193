/**
 * `annulet/node`: what programs in Node have beside the library: files of a folder, and the font that annulet ships.
 */
export { type DefaultFont, defaultFont } from "../disk/default-font.js";
export { fileSource } from "../disk/file-source.js";
