/**
 * The stones of one ring as CSV (RFC 4180): what to order, group by group, the largest first.
 */
import { stringify } from "csv-stringify/sync";
import { CARAT_DIGITS } from "../../output/stones/order-csv.js";
import type { StonesReport } from "../../stones/stone-report.js";

const HEAD = ["group", "gem", "cut", "setting", "length (mm)", "width (mm)", "count", "carats"];

/** Only the head where there are none. */
export function stonesCsv(stones: StonesReport | undefined): string {
  const rows = (stones?.groups ?? []).flatMap(({ name, gem, cut, setting, sizes }) =>
    sizes.map(({ length, width, count, carats }) => {
      return [name, gem, cut, setting, length, width, count, carats.toFixed(CARAT_DIGITS)];
    }),
  );
  return stringify([HEAD, ...rows], { record_delimiter: "windows", escape_formulas: true });
}
