/**
 * What is used of the library for glTF: named here, so that the rest of it, which reads and writes files, is left out.
 */
export { Document, Extension, WebIO } from "@gltf-transform/core";
