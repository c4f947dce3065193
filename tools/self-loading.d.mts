import type { Plugin } from "vite";

/** Package → file in dist/wasm, without its ending. */
export const SELF_LOADING: Readonly<Record<string, string>>;

/** For rolldown and vitest. */
export function selfLoading(): Plugin;
