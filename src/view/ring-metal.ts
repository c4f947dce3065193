/**
 * A built ring in metal, for a scene of three: its mesh, and a material that mirrors a studio.
 */
import { type BufferGeometry, type Camera, Mesh, MeshStandardMaterial, type Plane, Vector3 } from "three";
import { findAlloy } from "../measure/alloys/catalogue.js";
import { type Look, lookOf } from "../measure/alloys/look.js";
import type { Buffers } from "../mesh/normals.js";
import type { Finish } from "../output/picture/options.js";
import { geometryOf } from "./geometry.js";
import { studioTexture } from "./studio-texture.js";

/** What a ring is dressed in. */
export interface Dress {
  /** Symbol of a built-in material, or the look of one of your own. Default ag925. */
  readonly material?: string | Look | undefined;
  /** Surface of metal. Default polished. */
  readonly finish?: Finish | undefined;
}

const DRESS_DEFAULTS = { material: "ag925", finish: "polished" } as const satisfies Dress;

/** Roughness as three has it, 0 a mirror, 1 matt. Set by eye beside the pictures. */
const ROUGHNESS: Readonly<Record<Finish, number>> = { polished: 0.08, satin: 0.4 };

/** Of wax and resin, which have no finish. Set by eye. */
const MATT = 0.55;

/**
 * A ring in metal. Add `object` to a scene; positions are mm, the finger's axis is z, the ring's top +y.
 *
 * @example
 * const metal = new RingMetal(await ring.buffers(), { material: "au750-yellow" });
 * scene.add(metal.object);
 * metal.faceStudio(camera); // before each render, so that the lights stay where the photographer put them
 */
export class RingMetal {
  readonly object: Mesh<BufferGeometry, MeshStandardMaterial>;
  #buffers: Buffers;

  /** @throws AnnuletError `material-unknown` */
  constructor(buffers: Buffers, dress: Dress = {}) {
    const material = new MeshStandardMaterial({ envMap: studioTexture() });
    this.object = new Mesh(geometryOf(buffers), material);
    this.object.name = "ring";
    this.#buffers = buffers;
    this.dress(dress);
  }

  /** What is shown: the very arrays. */
  get buffers(): Buffers {
    return this.#buffers;
  }

  /** Shows another mesh in the place of this one; between two pictures, so that nothing flickers. */
  show(buffers: Buffers): void {
    const before = this.object.geometry;
    this.object.geometry = geometryOf(buffers);
    this.#buffers = buffers;
    before.dispose();
  }

  /** @throws AnnuletError `material-unknown` */
  dress({ material = DRESS_DEFAULTS.material, finish = DRESS_DEFAULTS.finish }: Dress): void {
    const { colour, metal } = typeof material === "string" ? lookOf(findAlloy(material)) : material;
    const own = this.object.material;
    own.color.setRGB(...colour);
    own.metalness = metal ? 1 : 0;
    own.roughness = metal ? ROUGHNESS[finish] : MATT;
  }

  /** Turns the studio round its upright axis to the camera, as if the ring were turned on a table: asked before each render. */
  faceStudio(camera: Camera): void {
    const towards = camera.getWorldDirection(new Vector3()).negate();
    this.object.material.envMapRotation.set(0, Math.atan2(towards.x, towards.z), 0);
  }

  /** Cuts away what lies on the negative side of planes in the scene's own axes; the renderer needs `localClippingEnabled`. */
  clip(planes: readonly Plane[]): void {
    this.object.material.clippingPlanes = [...planes];
  }

  /** Lets go of all that the graphics card holds of it, and takes it out of its scene. */
  dispose(): void {
    this.object.removeFromParent();
    this.object.geometry.dispose();
    this.object.material.envMap?.dispose();
    this.object.material.dispose();
  }
}
