/**
 * A ring's stones, for a scene of three: clear bodies with plane facets, in the places that the ring's metal has for them.
 */
import {
  BufferAttribute,
  BufferGeometry,
  type Camera,
  Group,
  InstancedMesh,
  Matrix4,
  type Plane,
  Raycaster,
  type ShaderMaterial,
  type Texture,
  Vector3,
} from "three";
import { findAlloy } from "../measure/alloys/catalogue.js";
import { lookOf } from "../measure/alloys/look.js";
import type { StoneBodyInView, StoneInView } from "../output/stones/stones-in-view.js";
import { gemMaterial } from "./gem-material.js";
import type { Drawn } from "./label.js";
import type { Ray } from "./meet-ray.js";
import type { Dress } from "./ring-metal.js";
import { studioTexture } from "./studio-texture.js";

/** Of a stone and its body what is drawn. */
export type DrawnStone = Pick<StoneInView, "body" | "at" | "out" | "along">;
export type DrawnStoneBody = Pick<StoneBodyInView, "mesh" | "planes" | "round" | "width" | "gem">;

/** A stone that a ray meets. */
export interface StoneHit<Stone extends DrawnStone = StoneInView> {
  readonly stone: Stone;
  /** From the ray's origin, in lengths of its direction. */
  readonly distance: number;
}

/** Stones, and the bodies that they have. */
export interface StonesToDraw<Stone extends DrawnStone = StoneInView> {
  readonly bodies: readonly DrawnStoneBody[];
  readonly stones: readonly Stone[];
}

/** Light on the metal behind a stone, of its colour: little gets there. Set by eye beside the pictures. */
const BEHIND = 0.4;

/**
 * Stones of a ring. Add `object` to the ring's scene.
 *
 * @example
 * const stones = new RingStones(await ring.stones(), { material: "au750-yellow" });
 * scene.add(stones.object);
 * stones.faceStudio(camera); // before each render, as of the metal
 */
export class RingStones<Stone extends DrawnStone = StoneInView> implements Drawn {
  readonly object = new Group();
  readonly #studio: Texture = studioTexture();
  readonly #sets: readonly StoneSet<Stone>[];

  /** @param dress the metal that is seen through them. @throws AnnuletError `material-unknown` */
  constructor({ bodies, stones }: StonesToDraw<Stone>, dress: Dress = {}) {
    this.object.name = "stones";
    this.#sets = bodies.map((body, i) =>
      newSet(
        body,
        stones.filter((stone) => stone.body === i),
        this.#studio,
      ),
    );
    this.object.add(...this.#sets.map(({ mesh }) => mesh));
    this.dress(dress);
  }

  /** Takes the metal that is seen through them. @throws AnnuletError `material-unknown` */
  dress({ material = "ag925" }: Dress): void {
    const { colour } = typeof material === "string" ? lookOf(findAlloy(material)) : material;
    for (const { mesh } of this.#sets) {
      mesh.material.uniforms.metal.value.setRGB(...colour).multiplyScalar(BEHIND);
    }
  }

  /** Turns the studio to the camera, as that of the metal: asked before each render. */
  faceStudio(camera: Camera): void {
    const towards = camera.getWorldDirection(new Vector3()).negate();
    for (const { mesh } of this.#sets) mesh.material.uniforms.turned.value = Math.atan2(towards.x, towards.z);
  }

  /** Leaves out stones whose middle lies on the negative side of a plane: none is cut, as no screw is in a section. */
  clip(planes: readonly Plane[]): void {
    for (const set of this.#sets) {
      set.kept = set.all.filter(({ at }) => planes.every((plane) => plane.distanceToPoint(new Vector3(...at)) > -EVEN));
      place(set);
    }
  }

  /** The first stone that a ray meets. */
  meet({ origin, direction }: Ray): StoneHit<Stone> | undefined {
    const way = new Vector3(...direction);
    const caster = new Raycaster(new Vector3(...origin), way.clone().normalize());
    const hits = this.#sets.flatMap((set) => {
      set.mesh.updateMatrixWorld();
      return caster.intersectObject(set.mesh, false).map(({ distance, instanceId = 0 }): StoneHit<Stone> => {
        return { stone: set.kept[instanceId], distance: distance / way.length() };
      });
    });
    return hits.reduce<StoneHit<Stone> | undefined>(
      (near, hit) => (near === undefined || hit.distance < near.distance ? hit : near),
      undefined,
    );
  }

  /** Lets go of all that the graphics card holds of them, and takes them out of their scene. */
  dispose(): void {
    this.object.removeFromParent();
    for (const { mesh } of this.#sets) {
      mesh.geometry.dispose();
      mesh.material.dispose();
      mesh.dispose();
    }
    this.#studio.dispose();
  }
}

/** Stones this near to a plane, mm, lie on it and stay. */
const EVEN = 1e-6;

/** Stones of one body. */
interface StoneSet<Stone extends DrawnStone> {
  readonly all: readonly Stone[];
  kept: readonly Stone[];
  readonly mesh: InstancedMesh<BufferGeometry, ShaderMaterial>;
}

function newSet<Stone extends DrawnStone>(
  body: DrawnStoneBody,
  all: readonly Stone[],
  studio: Texture,
): StoneSet<Stone> {
  const mesh = new InstancedMesh(geometryFor(body), gemMaterial(body, studio), all.length);
  const set: StoneSet<Stone> = { all, kept: all, mesh };
  place(set);
  return set;
}

/** Puts the kept ones in their places. */
function place({ mesh, kept }: StoneSet<DrawnStone>): void {
  kept.forEach(({ at, out, along }, i) => {
    const [z, x] = [new Vector3(...out), new Vector3(...along)];
    mesh.setMatrixAt(i, new Matrix4().makeBasis(x, z.clone().cross(x), z).setPosition(...at));
  });
  mesh.count = kept.length;
  mesh.instanceMatrix.needsUpdate = true;
  mesh.boundingSphere = null;
}

/** A round body shares its corners, so that their normals are those of its surface; any other has those of its facets. */
function geometryFor({ mesh: { positions, triangles }, round }: DrawnStoneBody): BufferGeometry {
  const shared = new BufferGeometry();
  shared.setAttribute("position", new BufferAttribute(Float32Array.from(positions), 3));
  shared.setIndex(new BufferAttribute(triangles, 1));
  const geometry = round ? shared : shared.toNonIndexed();
  geometry.computeVertexNormals();
  return geometry;
}
