/** The text of a file of types, with a comment on every field of one of them. */
export function commentedType(text: string, name: string, schema: object): string;
