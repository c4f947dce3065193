/**
 * The system's reasons in words. The program's first module needs them, so nothing else is loaded with them.
 */

/** Why the system refused, in words; the system's own code where there are none. */
export function reasonOf(cause: unknown): string {
  const code = (cause as NodeJS.ErrnoException | undefined)?.code;
  return REASONS[code ?? ""] ?? code ?? String(cause);
}

const REASONS: Readonly<Record<string, string>> = {
  EACCES: "permission is denied",
  EPERM: "it is not permitted",
  ENOENT: "it is not there",
  ENOTDIR: "a part of its path is no folder",
  EISDIR: "it is a folder",
  EROFS: "the disk is read-only",
  ENOSPC: "the disk is full",
  EDQUOT: "the disk quota is used up",
  EMFILE: "too many files are open",
  ENAMETOOLONG: "its name is too long",
  ELOOP: "its links run in a circle",
  EIO: "the disk reports an error",
};
