/**
 * The filled document's type as it ships, with a comment on every field. The type itself is what the schema library infers, which
 * keeps no descriptions; these come from the JSON Schema, walked beside it: of several forms that one is meant whose fields
 * are those of the type, and whose fixed values are.
 */
import ts from "typescript";

/** Longest line of a comment, characters. */
const LONGEST = 110;

/**
 * The text of a file of types, with a comment on every field of one of them.
 *
 * @param name of the type, an object as it is written out
 * @param schema JSON Schema whose descriptions are whole
 * @throws Error where a field has no description
 */
export function commentedType(text, name, schema) {
  const source = ts.createSourceFile("types.d.ts", text, ts.ScriptTarget.Latest, true);
  const found = source.statements.find((one) => ts.isTypeAliasDeclaration(one) && one.name.text === name);
  const comments = [];
  new Walk(source, schema, comments).type(found.type, [schema], name);
  let commented = text;
  for (const { at, comment } of comments.sort((a, b) => b.at - a.at)) {
    commented = commented.slice(0, at) + comment + commented.slice(at);
  }
  return commented;
}

class Walk {
  #source;
  #schema;
  #comments;

  constructor(source, schema, comments) {
    this.#source = source;
    this.#schema = schema;
    this.#comments = comments;
  }

  /** Walks a type beside the parts of the schema, one of which tells of it. */
  type(node, parts, where) {
    const forms = parts.flatMap((part) => this.#formsOf(part));
    if (ts.isUnionTypeNode(node)) for (const one of node.types) this.type(one, forms, where);
    else if (ts.isParenthesizedTypeNode(node)) this.type(node.type, forms, where);
    else if (ts.isTypeOperatorNode(node)) this.type(node.type, forms, where);
    else if (ts.isArrayTypeNode(node)) this.type(node.elementType, itemsOf(forms), where);
    else if (ts.isTypeReferenceNode(node)) {
      for (const one of node.typeArguments ?? []) this.type(one, valuesOf(forms), where);
    } else if (ts.isTypeLiteralNode(node)) this.#fields(node, forms, where);
  }

  #fields(node, forms, where) {
    for (const any of node.members.filter(ts.isIndexSignatureDeclaration)) this.type(any.type, valuesOf(forms), where);
    const fields = node.members.filter(ts.isPropertySignature);
    if (fields.length === 0) return;
    const names = fields.map(({ name }) => name.text);
    const meant = forms.filter(
      ({ properties }) =>
        properties !== undefined &&
        names.every((name) => properties[name] !== undefined) &&
        fields.every(({ name, type }) => this.#canBe(type, properties[name.text])),
    );
    for (const field of fields) {
      const parts = meant.map(({ properties }) => properties[field.name.text]);
      const own = `${where}.${field.name.text}`;
      const said = parts.map((part) => this.#saidOf(part)).find((one) => one !== undefined);
      if (said === undefined) throw new Error(`${own} has no description`);
      const start = field.getStart(this.#source);
      const indent = " ".repeat(ts.getLineAndCharacterOfPosition(this.#source, start).character);
      this.#comments.push({ at: start, comment: commentOf(said, indent) });
      this.type(field.type, parts, own);
    }
  }

  /** Whether a fixed word of the type is one of the schema's; what is no word may be anything. */
  #canBe(type, part) {
    if (!ts.isLiteralTypeNode(type) || !ts.isStringLiteral(type.literal)) return true;
    return this.#formsOf(part).some(
      ({ const: fixed, enum: words }) => fixed === type.literal.text || words?.includes(type.literal.text),
    );
  }

  /** What is said of a field where it stands, else of what it refers to. */
  #saidOf(part) {
    const referred = this.#referred(part);
    return part.description ?? (referred && this.#saidOf(referred));
  }

  #referred({ $ref }) {
    return $ref === undefined ? undefined : this.#schema.$defs[$ref.slice("#/$defs/".length)];
  }

  /** A part, or all that it may be. */
  #formsOf(part) {
    const referred = this.#referred(part);
    if (referred !== undefined) return this.#formsOf(referred);
    const choices = part.anyOf ?? part.oneOf;
    return choices === undefined ? [part] : choices.flatMap((one) => this.#formsOf(one));
  }
}

function itemsOf(forms) {
  return forms.flatMap(({ items, prefixItems }) => [items ?? [], prefixItems ?? []].flat());
}

/** What stands under names of any kind, or under each that is listed. */
function valuesOf(forms) {
  return forms.flatMap(({ additionalProperties, properties = {} }) => {
    return [...Object.values(properties), ...(typeof additionalProperties === "object" ? [additionalProperties] : [])];
  });
}

function commentOf(said, indent) {
  const lines = [];
  for (const word of said.replaceAll("*/", "*\\/").split(/\s+/)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + word.length < LONGEST - indent.length)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  if (lines.length === 1) return `/** ${lines[0]} */\n${indent}`;
  return `/**\n${lines.map((line) => `${indent} * ${line}\n`).join("")}${indent} */\n${indent}`;
}
