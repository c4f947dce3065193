/** The part of gltf-validator that tests use; the package has no types of its own. */
declare module "gltf-validator" {
  export interface Report {
    readonly mimeType: string;
    readonly issues: {
      readonly numErrors: number;
      readonly numWarnings: number;
      readonly messages: readonly unknown[];
    };
    readonly info: Readonly<Record<string, unknown>>;
  }
  export function validateBytes(data: Uint8Array, options?: { readonly maxIssues?: number }): Promise<Report>;
}
