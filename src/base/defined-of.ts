/** Fields that are told, without those that are undefined. */

/** What is left of some fields. */
export type DefinedIn<Fields> = { [Name in keyof Fields]?: Exclude<Fields[Name], undefined> };

/** The fields that are not undefined. */
export function definedOf<Fields extends object>(fields: Fields): DefinedIn<Fields> {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as DefinedIn<Fields>;
}
