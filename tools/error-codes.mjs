/**
 * The codes of all problems that annulet tells, found in its sources: what stands at \`code\` in an object, and in tables
 * called CODES.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";

/** Codes that are put together of parts, or handed on as a word. */
const PUT_TOGETHER = [
  ...["font", "image", "svg", "design", "rows"].flatMap((kind) => [`${kind}-file-missing`, `${kind}-file-unreadable`]),
  ...["round", "bevel"].map((field) => `${field}-too-large`),
  "seat-too-narrow",
];

/** What calls that are handed a code first are called. */
const TAKES_CODE = ["Misfit", "outputError"];

/** Codes of the schema library, which are told as others. */
const INNER = ["custom"];

const KEBAB = /^[a-z]+(-[a-z]+)*$/;

const HEAD = `/**
 * The codes of all problems: errors, and what is told beside a result. Found in the sources by \`npm run reference\`: do not
 * change by hand.
 */

/** Code of an error or a warning of annulet. */
`;

/** The text of the file. */
export function errorCodesText(root) {
  const codes = errorCodes(root).map((code) => `  | ${JSON.stringify(code)}`);
  return `${HEAD}export type ProblemCode =\n${codes.join("\n")};\n`;
}

/** Every code once, in the order of the alphabet. */
export function errorCodes(root) {
  const sources = readdirSync(join(root, "src"), { recursive: true, encoding: "utf8" }).filter((path) =>
    path.endsWith(".ts"),
  );
  const found = sources.flatMap((path) => codesIn(path, readFileSync(join(root, "src", path), "utf8")));
  const codes = new Set([...found, ...PUT_TOGETHER].filter((code) => KEBAB.test(code) && !INNER.includes(code)));
  return [...codes].sort();
}

/** Words at the places of codes in a source. */
export function codesIn(path, text) {
  const found = [];
  const visit = (node) => {
    if (ts.isPropertyAssignment(node) && node.name.getText() === "code") found.push(...wordsIn(node.initializer));
    if (ts.isVariableDeclaration(node) && node.name.getText() === "CODES") found.push(...valuesIn(node.initializer));
    if ((ts.isNewExpression(node) || ts.isCallExpression(node)) && TAKES_CODE.includes(node.expression.getText()))
      found.push(...wordsIn(node.arguments[0]));
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true));
  return found;
}

/** The words that an expression may come to. */
function wordsIn(node) {
  if (ts.isStringLiteral(node)) return [node.text];
  if (ts.isConditionalExpression(node)) return [...wordsIn(node.whenTrue), ...wordsIn(node.whenFalse)];
  return [];
}

function valuesIn(node) {
  const table = ts.isAsExpression(node) ? node.expression : node;
  return ts.isObjectLiteralExpression(table) ? table.properties.flatMap(({ initializer }) => wordsIn(initializer)) : [];
}
