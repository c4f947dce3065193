/** Version of the package, as its own description has it. */
export const VERSION = "0.1.0";
