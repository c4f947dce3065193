/**
 * The texts that the sources say: what stands at `message`, `allowed` and `hint` in objects, in variables of those names,
 * tables called HINTS among them, and in calls that are handed a code first. What is put in is a blank, `{0}`, `{1}` …; a choice between texts gives each of them.
 */
import { readdirSync, readFileSync } from "node:fs";
import ts from "typescript";

const NAMES = /^(message|allowed|why|hint|HINT|HINTS)$/;

/** What is called with a message, or what goes into one, among its arguments. */
const TAKES_MESSAGE =
  /^(Misfit|complain|refuse|fail|ofMap|malformed|changeProblem|addIssue|tooMuch|tooComplex|broken\w*|tooLargeImage|nothingLeft|cannotFill|oddCells|require\w+|unknownKind|invalid|noObject|drawingError|this\.#ignored)$/;

/** Arguments that are messages have words. */
const WORDS = /\p{L}.* .*\p{L}/u;

/** What a source that says anything holds; the others need not be parsed. */
const MAY_SPEAK = /AnnuletError|Problem|[mM]isfit|warn|complain|broken|tooMuch|refuse/;

/** Stands for what is put in while a text is put together. */
const PUT_IN = "\u0000";

/** Every text once, of all sources below a folder but those whose path begins with one of `without`. */
export function spokenTexts(root: URL, without: readonly string[]): string[] {
  const found = new Set<string>();
  for (const path of readdirSync(root, { recursive: true, encoding: "utf8" })) {
    if (!path.endsWith(".ts") || without.some((start) => path.startsWith(start))) continue;
    const source = readFileSync(new URL(path, root), "utf8");
    if (MAY_SPEAK.test(source)) for (const text of textsIn(source)) found.add(text);
  }
  return [...found].sort();
}

export function textsIn(source: string): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node) => {
    for (const said of saidIn(node)) found.push(...variantsOf(said).map(withBlanks));
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile("source.ts", source, ts.ScriptTarget.Latest, true));
  return found;
}

function saidIn(node: ts.Node): readonly ts.Expression[] {
  if (ts.isPropertyAssignment(node) || ts.isVariableDeclaration(node)) {
    return NAMES.test(node.name.getText()) && node.initializer !== undefined ? [node.initializer] : [];
  }
  if (!(ts.isNewExpression(node) || ts.isCallExpression(node))) return [];
  if (!TAKES_MESSAGE.test(node.expression.getText())) return [];
  return (node.arguments ?? []).filter((given) => variantsOf(given).some((text) => WORDS.test(text)));
}

/** Every text that an expression may come to. */
function variantsOf(node: ts.Expression): string[] {
  if (ts.isStringLiteralLike(node)) return [node.text];
  if (ts.isParenthesizedExpression(node) || ts.isAsExpression(node)) return variantsOf(node.expression);
  if (ts.isConditionalExpression(node)) return [...variantsOf(node.whenTrue), ...variantsOf(node.whenFalse)];
  if (ts.isBinaryExpression(node)) {
    const [left, right] = [variantsOf(node.left), variantsOf(node.right)];
    if (node.operatorToken.kind !== ts.SyntaxKind.PlusToken) return [...left, ...right];
    return left.flatMap((one) => right.map((other) => one + other));
  }
  if (ts.isObjectLiteralExpression(node)) {
    return node.properties.flatMap((one) => (ts.isPropertyAssignment(one) ? variantsOf(one.initializer) : []));
  }
  if (!ts.isTemplateExpression(node)) return [PUT_IN];
  return node.templateSpans.reduce(
    (texts, { expression, literal }) => {
      const inner = ts.isConditionalExpression(expression) ? variantsOf(expression) : [PUT_IN];
      return texts.flatMap((text) => inner.map((one) => text + one + literal.text));
    },
    [node.head.text],
  );
}

function withBlanks(text: string): string {
  let count = 0;
  return text.replaceAll(PUT_IN, () => `{${count++}}`);
}
