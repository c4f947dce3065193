/** The text of src/design/design-input.ts. */
export function designInputText(schema: object): string;
