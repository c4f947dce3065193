/**
 * A cut through a ring: what lies before a plane is taken away, and the metal that the plane meets is hatched as on drawings.
 *
 * What is cut is found by counting, in the stencil buffer, the faces behind the plane that look away and those that look at
 * the reader: they differ where the plane is inside the metal. It holds for closed meshes, as every built ring is.
 */
import {
  AlwaysStencilFunc,
  BackSide,
  DecrementWrapStencilOp,
  type DoubleSide,
  FrontSide,
  Group,
  IncrementWrapStencilOp,
  Mesh,
  MeshBasicMaterial,
  NotEqualStencilFunc,
  type Plane,
  PlaneGeometry,
  ReplaceStencilOp,
  type WebGLRenderer,
} from "three";
import { type HatchColours, hatchMaterial } from "./hatch.js";
import type { RingMetal } from "./ring-metal.js";

/** Side of the piece of the plane that is drawn, mm: more than any ring. */
const SIDE = 120;

/**
 * A cut of a ring. The renderer needs `stencil: true` and `localClippingEnabled`.
 *
 * @example
 * const cut = new SectionCut(metal, { metal: "#dde1e0", line: "#33414e" });
 * scene.add(cut.object);
 * cut.at(new Plane(new Vector3(-1, 0, 0), 0)); // what lies at x > 0 is taken away
 */
export class SectionCut {
  readonly object = new Group();
  readonly #metal: RingMetal;
  readonly #counters: readonly Mesh[];
  readonly #cap: Mesh;

  constructor(metal: RingMetal, colours: HatchColours) {
    this.#metal = metal;
    this.object.name = "section";
    this.object.visible = false;
    this.#counters = [counter(metal, BackSide), counter(metal, FrontSide)];
    this.#cap = new Mesh(new PlaneGeometry(SIDE, SIDE), hatchMaterial(colours));
    const { material } = this.#cap;
    Object.assign(material, {
      stencilWrite: true,
      stencilRef: 0,
      stencilFunc: NotEqualStencilFunc,
      stencilFail: ReplaceStencilOp,
      stencilZFail: ReplaceStencilOp,
      stencilZPass: ReplaceStencilOp,
    });
    this.#cap.renderOrder = 2;
    this.#cap.onAfterRender = (renderer: WebGLRenderer) => renderer.clearStencil();
    this.object.add(...this.#counters, this.#cap);
  }

  /** Cuts at a plane of the scene's own axes: what lies on its negative side goes. Undefined: the ring is whole. */
  at(plane: Plane | undefined): void {
    this.object.visible = plane !== undefined;
    this.#metal.clip(plane === undefined ? [] : [plane]);
    if (plane === undefined) return;
    for (const mesh of this.#counters) (mesh.material as MeshBasicMaterial).clippingPlanes = [plane];
    this.#cap.position.copy(plane.normal).multiplyScalar(-plane.constant);
    this.#cap.lookAt(this.#cap.position.clone().sub(plane.normal));
  }

  /** Follows the ring once it shows another mesh. */
  follow(): void {
    for (const mesh of this.#counters) mesh.geometry = this.#metal.object.geometry;
  }

  /** Makes the ring whole, lets go of all that the graphics card holds of the cut, and takes it out of its scene. */
  dispose(): void {
    this.at(undefined);
    this.object.removeFromParent();
    this.#cap.geometry.dispose();
    for (const { material } of [...this.#counters, this.#cap]) (material as MeshBasicMaterial).dispose();
  }
}

/** Draws nothing, but counts the faces that look one way. */
function counter(metal: RingMetal, side: typeof FrontSide | typeof BackSide | typeof DoubleSide): Mesh {
  const step = side === BackSide ? IncrementWrapStencilOp : DecrementWrapStencilOp;
  const material = new MeshBasicMaterial({
    side,
    depthWrite: false,
    depthTest: false,
    colorWrite: false,
    stencilWrite: true,
    stencilFunc: AlwaysStencilFunc,
    stencilFail: step,
    stencilZFail: step,
    stencilZPass: step,
  });
  const mesh = new Mesh(metal.object.geometry, material);
  mesh.renderOrder = 1;
  return mesh;
}
