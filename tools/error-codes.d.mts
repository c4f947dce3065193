/** The text of src/base/errors/problem-code.ts. */
export function errorCodesText(root: string): string;

/** Every code once, in the order of the alphabet. */
export function errorCodes(root: string): string[];

/** Words at the places of codes in a source. */
export function codesIn(path: string, text: string): string[];
