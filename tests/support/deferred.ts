/** A promise that a test ends when it likes. */
export interface Deferred<Result> {
  readonly promise: Promise<Result>;
  readonly resolve: (result: Result) => void;
  readonly reject: (reason: unknown) => void;
}

export function deferred<Result>(): Deferred<Result> {
  let [resolve, reject]: [Deferred<Result>["resolve"], Deferred<Result>["reject"]] = [() => {}, () => {}];
  const promise = new Promise<Result>((done, failed) => {
    [resolve, reject] = [done, failed];
  });
  return { promise, resolve: (result) => resolve(result), reject: (reason) => reject(reason) };
}
