/**
 * Light or dark: as the reader's system has it, or as chosen on the page, which is kept in the browser.
 */
import { type Signal, signal } from "@preact/signals";

export const THEMES = ["auto", "light", "dark"] as const;

export type Theme = (typeof THEMES)[number];

const KEPT_AS = "annulet-theme";

/** What is chosen; default the system's. */
export const theme: Signal<Theme> = signal("auto");

/** What is kept, where the browser keeps anything. */
export function keptTheme(storage: () => Pick<Storage, "getItem">): Theme {
  try {
    const kept = storage().getItem(KEPT_AS);
    return THEMES.find((one) => one === kept) ?? "auto";
  } catch {
    return "auto";
  }
}

/** Keeps the choice; a browser that forbids it loses it with the page, and nothing else. */
export function keepTheme(chosen: Theme, storage: () => Pick<Storage, "setItem">): void {
  try {
    storage().setItem(KEPT_AS, chosen);
  } catch {
    // Storage is full or forbidden: a choice of colours is no work that could be lost.
  }
}
