/**
 * A button that opens a list below it; it closes when something is chosen, by Escape, and by a press elsewhere.
 */
import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";

export function DropMenu({ label, children }: { readonly label: string; readonly children: ComponentChildren }) {
  const menu = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    const close = (event: Event): void => {
      if (menu.current !== null && !event.composedPath().includes(menu.current)) menu.current.open = false;
    };
    addEventListener("pointerdown", close);
    return () => removeEventListener("pointerdown", close);
  }, []);
  return (
    <details
      class="drop-menu"
      ref={menu}
      onKeyDown={({ key, currentTarget }) => {
        if (key !== "Escape" || !currentTarget.open) return;
        currentTarget.open = false;
        currentTarget.querySelector("summary")?.focus();
      }}
    >
      <summary>{label}</summary>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the buttons inside are what is pressed */}
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: a pressed button clicks, by key too */}
      <div
        class="drop-list"
        onClick={(event) => {
          if (menu.current !== null && (event.target as Element).closest("button") !== null) menu.current.open = false;
        }}
      >
        {children}
      </div>
    </details>
  );
}
