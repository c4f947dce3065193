/**
 * Drawings for the ring's tools, of lines as on a sheet: what each view of a ring looks like.
 */
import "./icons.css";
import type { ComponentChildren } from "preact";

function Drawing({ children }: { readonly children: ComponentChildren }) {
  return (
    <svg class="icon" viewBox="0 0 24 24" aria-hidden="true">
      {children}
    </svg>
  );
}

export const ICONS = {
  turned: () => (
    <Drawing>
      <ellipse cx="10" cy="12" rx="6" ry="9" />
      <ellipse cx="10" cy="12" rx="4" ry="7" />
      <path d="M10 3h4c3.3 0 6 4 6 9s-2.7 9-6 9h-4" />
    </Drawing>
  ),
  front: () => (
    <Drawing>
      <circle cx="12" cy="12" r="9" />
      <circle cx="12" cy="12" r="6.5" />
    </Drawing>
  ),
  side: () => (
    <Drawing>
      <path d="M8.5 3h7v18h-7z" />
      <path d="M12 1v22" class="centre" />
    </Drawing>
  ),
  top: () => (
    <Drawing>
      <path d="M3 8.5h18v7H3z" />
      <path d="M1 12h22" class="centre" />
    </Drawing>
  ),
  bore: () => (
    <Drawing>
      <path d="M3 6a9.5 13 0 0 0 18 0" />
      <path d="M3 6v4a9.5 12 0 0 0 18 0V6" />
    </Drawing>
  ),
  dimensions: () => (
    <Drawing>
      <path d="M3 4v16M21 4v16M3 12h18M7 9.5L3 12l4 2.5M17 9.5l4 2.5-4 2.5" />
    </Drawing>
  ),
  findings: () => (
    <Drawing>
      <circle cx="16" cy="8" r="6" />
      <path d="M11.5 12.5L3 21M16 5v6" />
    </Drawing>
  ),
  stones: () => (
    <Drawing>
      <path d="M7 5h10l5 6-10 10L2 11zM2 11h20M9 11l3-6 3 6-3 10z" />
    </Drawing>
  ),
  measure: () => (
    <Drawing>
      <path d="M4 20L20 4M2 18l4 4M18 2l4 4" />
    </Drawing>
  ),
} as const;
