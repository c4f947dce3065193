/**
 * The flat pattern: one tile among its repeats.
 */
import { useBench } from "../state/bench.js";

export function StripView() {
  const { answers } = useBench();
  const tile = answers.of.tile.value?.value;
  if (tile === undefined) return <p>…</p>;
  const { tileWidth } = tile.fit;
  const height = tile.seatLength;
  const paths = tile.regions.map(({ rings }) =>
    rings.map((ring) => `M${ring.map(([u, v]) => `${u} ${-v}`).join("L")}Z`).join(""),
  );
  return (
    <svg viewBox={`0 ${-height / 2} ${tileWidth * tile.tiles} ${height}`} role="img" aria-hidden="true">
      {paths.map((d, index) => (
        <path key={tile.regions[index].names.join()} class={tile.regions[index].mode} d={d} fill-rule="evenodd" />
      ))}
    </svg>
  );
}
