/** Licences that let a program be used, changed and sold, whole or in parts, as long as they are told. */
export const PERMISSIVE: readonly string[];

/** The notices of all packages that lie in dist/. @throws Error where a text is missing or a licence is not permissive */
export function noticesOf(root: string): string;

/** Names of all packages that lie in dist/. */
export function bundledIn(root: string): string[];
