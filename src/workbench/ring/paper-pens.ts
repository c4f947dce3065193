/**
 * The page's colours as the ring's view draws with them: read from the style, so that day and night are told in one place.
 */
import type { HatchColours, Pen } from "../../entries/view.js";

export interface PaperPens {
  /** Dimension lines and what is measured. */
  readonly ink: Pen;
  readonly accent: Pen;
  /** Findings. */
  readonly chalk: Pen;
  readonly hatch: HatchColours;
}

/** What a custom property comes to where an element stands, as three reads it. */
function colourOf(probe: HTMLElement, name: string): string {
  probe.style.color = `var(${name})`;
  return getComputedStyle(probe).color;
}

/** @param within an element of the page; a probe is put into it and taken out again */
export function readPens(within: HTMLElement): PaperPens {
  const probe = document.createElement("span");
  within.append(probe);
  try {
    const paper = colourOf(probe, "--paper");
    const letters = 0.8125 * Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
    const line = letters / 11;
    const pen = (name: string): Pen => ({ ink: colourOf(probe, name), paper, letters, line });
    const hatch = { metal: colourOf(probe, "--metal-cut"), line: colourOf(probe, "--hatch") };
    return { ink: pen("--ink"), accent: pen("--accent"), chalk: pen("--chalk"), hatch };
  } finally {
    probe.remove();
  }
}
