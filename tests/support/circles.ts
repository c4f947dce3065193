/**
 * Circles of files: files that reach themselves by their imports, imports of types among them. Found as strongly connected
 * components (R. Tarjan, "Depth-first search and linear graph algorithms", SIAM Journal on Computing 1, 1972).
 */

/** Every circle as the sorted names of its files; `imports` is what each file imports. Names that are no key are left out. */
export function findCircles(imports: ReadonlyMap<string, readonly string[]>): string[][] {
  const circles: string[][] = [];
  const order = new Map<string, number>();
  const lowest = new Map<string, number>();
  const open: string[] = [];
  const visit = (file: string): void => {
    order.set(file, order.size);
    lowest.set(file, order.size - 1);
    open.push(file);
    for (const other of imports.get(file) ?? []) {
      if (!imports.has(other)) continue;
      if (!order.has(other)) visit(other);
      if (open.includes(other)) lowest.set(file, Math.min(at(lowest, file), at(lowest, other)));
    }
    if (at(lowest, file) !== at(order, file)) return;
    const circle = open.splice(open.indexOf(file));
    if (circle.length > 1 || imports.get(file)?.includes(file)) circles.push(circle.sort());
  };
  for (const file of imports.keys()) if (!order.has(file)) visit(file);
  return circles;
}

function at(map: ReadonlyMap<string, number>, key: string): number {
  return map.get(key) ?? Number.NaN;
}
