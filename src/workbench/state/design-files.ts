/**
 * The files that the design names, as the page has them: drawings, images, fonts.
 */

/** Name → bytes. None is ever replaced by another of its name, so that a change that is gone back finds its own. */
export type DesignFiles = ReadonlyMap<string, Uint8Array>;

export const NO_FILES: DesignFiles = new Map();

/**
 * The files with one more.
 *
 * @param wanted what it is called; another name is found where a different file has it already: `leaf-2.svg`
 * @returns the files, and the name that the design must give it
 */
export function withFile(files: DesignFiles, wanted: string, bytes: Uint8Array): { files: DesignFiles; name: string } {
  const plain = plainName(wanted);
  for (let number = 1; ; number++) {
    const name = number === 1 ? plain : plain.replace(/(\.\w+)?$/, `-${number}$1`);
    const standing = files.get(name);
    if (standing === undefined) return { files: new Map([...files, [name, bytes]]), name };
    if (isSame(standing, bytes)) return { files, name };
  }
}

/** A name without folders, signs that no file name has, and control characters, in one spelling (Unicode NFC). */
function plainName(wanted: string): string {
  const name = wanted.normalize("NFC").replace(/^.*[\\/]/, "");
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is taken out
  return name.replace(/[\u0000-\u001f\u007f<>:"|?*]/g, "").replace(/^\.+/, "") || "file";
}

function isSame(a: Uint8Array, b: Uint8Array): boolean {
  return a.length === b.length && a.every((byte, index) => byte === b[index]);
}
