/**
 * The camera's way from one place to another.
 */
import { MathUtils } from "three";
import { between, type Pose } from "./camera-places.js";

export class Flight {
  #way: { readonly from: Pose; readonly to: Pose; readonly time: number } | undefined;
  #since: number | undefined;

  get flying(): boolean {
    return this.#way !== undefined;
  }

  /** @param time that it may take, ms; 0 is there at once */
  begin(from: Pose, to: Pose, time: number): void {
    this.#way = { from, to, time };
    this.#since = undefined;
  }

  end(): void {
    this.#way = undefined;
  }

  /** Where the camera is at a time, ms; undefined where nothing flies. The first time asked is when it begins. */
  at(now: number): Pose | undefined {
    if (this.#way === undefined) return undefined;
    const { from, to, time } = this.#way;
    this.#since ??= now;
    const share = time > 0 ? (now - this.#since) / time : 1;
    if (share >= 1) {
      this.end();
      return to;
    }
    return between(from, to, MathUtils.smoothstep(share, 0, 1));
  }
}
