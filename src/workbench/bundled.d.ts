/** What the page's bundler makes of imports that are no code. */
declare module "*?packed" {
  /** The file's bytes, gzip, as base64. */
  const packed: string;
  export default packed;
}

declare module "*?raw" {
  const text: string;
  export default text;
}

declare module "*?worker&inline" {
  const WorkerOfItsOwn: new () => Worker;
  export default WorkerOfItsOwn;
}

declare module "*.css";

declare module "demo:designs" {
  /** A design of the demo's, with the files that it names. */
  export interface DemoDesign {
    /** Its file without the ending. */
    readonly file: string;
    readonly text: string;
    /** Name → bytes, gzip, as base64. */
    readonly packed: Readonly<Record<string, string>>;
  }
  /** The README's first. */
  export const demoDesigns: readonly DemoDesign[];
}
