/** A DOMParser for loaders that were made for browsers: @xmldom/xmldom with the few selectors that they use. */
import { DOMParser as XmlParser } from "@xmldom/xmldom";

interface Queried {
  getElementsByTagName(name: string): ArrayLike<Queried>;
}

/** Tag names, with a space for "inside": `vertices vertex`. */
function select(from: Queried, selector: string): Queried[] {
  return selector
    .split(" ")
    .reduce<Queried[]>((found, name) => found.flatMap((node) => Array.from(node.getElementsByTagName(name))), [from]);
}

class DomParser {
  parseFromString(text: string): Queried {
    const document = new XmlParser().parseFromString(text, "application/xml") as unknown as Queried;
    const element = Object.getPrototypeOf(select(document, "*")[0]);
    for (const target of [document, element]) {
      target.querySelectorAll = function all(this: Queried, selector: string) {
        return select(this, selector);
      };
      target.querySelector = function first(this: Queried, selector: string) {
        return select(this, selector)[0] ?? null;
      };
    }
    return document;
  }
}

/** Runs synchronous work while there is a global DOMParser. */
export function withDomParser<Result>(work: () => Result): Result {
  const before = Object.getOwnPropertyDescriptor(globalThis, "DOMParser");
  Object.defineProperty(globalThis, "DOMParser", { value: DomParser, configurable: true, writable: true });
  try {
    return work();
  } finally {
    if (before === undefined) Reflect.deleteProperty(globalThis, "DOMParser");
    else Object.defineProperty(globalThis, "DOMParser", before);
  }
}
