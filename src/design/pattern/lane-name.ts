/**
 * What a lane is called.
 */

/** A lane's name: its number from 1 where the document gives none. */
export function laneName({ name }: { readonly name?: string | undefined }, index: number): string {
  return name ?? `lane ${index + 1}`;
}
