/**
 * The ring on its canvas: camera, lights, metal, and what is drawn over it. It draws when something changed.
 */
import { NeutralToneMapping, PerspectiveCamera, Plane, Raycaster, Scene, Vector2, Vector3, WebGLRenderer } from "three";
import { OrbitControls } from "three/addons/controls/OrbitControls.js";
import {
  type Buffers,
  type Dimension,
  DimensionLines,
  type Drawn,
  type DrawnStone,
  type Dress,
  FindingMarks,
  PartMarks,
  type PlacedFinding,
  RingMetal,
  RingStones,
  SectionCut,
  type StonesToDraw,
} from "../../entries/view.js";
import { type CameraPlaceName, distanceFor, type Pose, poseAt } from "./camera-places.js";
import { type Cut, cutThrough, handleOf, planeOf } from "./cut-plane.js";
import { drawsInSoftware } from "./draws-in-software.js";
import { Flight } from "./flight.js";
import { goNearer } from "./go-nearer.js";
import type { PaperPens } from "./paper-pens.js";
import { Redraw } from "./redraw.js";
import { type PicturePlace, type Pointed, pointAt, rayAt } from "./snap.js";

/** Of the lens, degrees: that of a portrait lens, so that bands look as in the hand. Chosen. */
const FOV = 26;

/** Most pixels of the screen to a CSS pixel that are worth drawing. Chosen. */
const MOST_RATIO = 2;

/** What is drawn over the ring. */
export type Layer = "dimensions" | "findings" | "measured" | "chosen";

export class RingStage {
  readonly canvas: HTMLCanvasElement;
  readonly camera = new PerspectiveCamera(FOV, 1, 0.5, 500);
  readonly controls: OrbitControls;
  readonly #renderer: WebGLRenderer;
  readonly #scene = new Scene();
  readonly #redraw = new Redraw((time) => this.#draw(time));
  readonly #layers = new Map<Layer, Drawn>();
  readonly #flight = new Flight();
  #metal: RingMetal | undefined;
  #section: SectionCut | undefined;
  #stones: RingStones<DrawnStone> | undefined;
  #stonesText = "";
  #dress: Dress = {};
  #pens: PaperPens;
  #cut: Cut = { kind: "none" };
  #part: PartMarks | undefined;
  #partLines: Float32Array = new Float32Array();
  #size = { radius: 14, bore: 8.5 };
  #placed = false;
  /** Hears after each picture, for what the page lays over the canvas. */
  onDrawn: () => void = () => undefined;

  /** @throws where the browser has no WebGL */
  constructor(canvas: HTMLCanvasElement, pens: PaperPens) {
    this.canvas = canvas;
    this.#pens = pens;
    // Smoothed edges cost two thirds of a picture that the processor draws.
    const antialias = !drawsInSoftware();
    this.#renderer = new WebGLRenderer({ canvas, antialias, alpha: true, stencil: true });
    this.#renderer.localClippingEnabled = true;
    this.#renderer.toneMapping = NeutralToneMapping;
    this.controls = new OrbitControls(this.camera, canvas);
    this.controls.addEventListener("change", () => this.#redraw.ask());
    this.controls.addEventListener("start", () => this.#flight.end());
    canvas.addEventListener("webglcontextrestored", () => this.#redraw.ask());
  }

  /** Whether there is a ring to be seen. */
  get buffers(): Buffers | undefined {
    return this.#metal?.buffers;
  }

  /** @param bore its radius, mm */
  show(buffers: Buffers, bore: number): void {
    if (this.#metal === undefined) {
      this.#metal = new RingMetal(buffers, this.#dress);
      this.#section = new SectionCut(this.#metal, this.#pens.hatch);
      this.#scene.add(this.#metal.object, this.#section.object);
    } else {
      this.#metal.show(buffers);
    }
    this.#section?.follow();
    this.#section?.at(planeOf(this.#cut));
    this.#size = { radius: this.#metal.object.geometry.boundingSphere?.radius ?? this.#size.radius, bore };
    if (!this.#placed && this.camera.aspect > 0) this.look("turned", 0);
    this.#placed = true;
    this.#redraw.ask();
  }

  /** Shows stones in the ring; none takes them away. */
  showStones(stones: StonesToDraw<DrawnStone> | undefined): void {
    const text = stones === undefined ? "" : textOf(stones);
    // Every change of the document asks; most leave the stones as they are.
    if (text === this.#stonesText) return;
    this.#stonesText = text;
    const before = this.#stones;
    this.#stones = stones && new RingStones(stones, this.#dress);
    if (this.#stones !== undefined) this.#scene.add(this.#stones.object);
    before?.dispose();
    this.cut(this.#cut);
  }

  dress(dress: Dress): void {
    // Every change of the document asks; a picture of the earlier ring for the same metal would only delay the next.
    if (this.#metal !== undefined && JSON.stringify(dress) === JSON.stringify(this.#dress)) return;
    this.#dress = dress;
    this.#metal?.dress(dress);
    this.#stones?.dress(dress);
    this.#redraw.ask();
  }

  /** Takes other colours, by night or by day. */
  usePens(pens: PaperPens): void {
    this.#pens = pens;
    if (this.#metal === undefined) return;
    this.#section?.dispose();
    this.#section = new SectionCut(this.#metal, pens.hatch);
    this.#scene.add(this.#section.object);
    this.drawPart(this.#partLines);
    this.cut(this.#cut);
  }

  cut(cut: Cut): void {
    this.#cut = cut;
    const plane = planeOf(cut);
    this.#section?.at(plane);
    for (const drawn of [this.#part, this.#stones]) drawn?.clip(plane === undefined ? [] : [plane]);
    this.#redraw.ask();
  }

  /** Draws dimension lines over the ring; those that stood there go. */
  drawDimensions(layer: Layer, dimensions: readonly Dimension[]): void {
    this.#replace(
      layer,
      dimensions.length === 0
        ? undefined
        : new DimensionLines(dimensions, this.#pens[layer === "measured" ? "accent" : "ink"]),
    );
  }

  drawFindings(findings: readonly PlacedFinding[]): void {
    this.#replace("findings", findings.length === 0 ? undefined : new FindingMarks(findings, this.#pens.chalk));
  }

  /** Marks a part of the ring by lines, six numbers a segment; none takes the marks away. */
  drawPart(segments: Float32Array): void {
    if (segments.length === 0 && this.#part === undefined) return;
    this.#partLines = segments;
    this.#part = segments.length === 0 ? undefined : new PartMarks(segments, this.#pens.accent);
    this.#replace("chosen", this.#part);
    this.cut(this.#cut);
  }

  /** Goes to a place by name. @param time that it may take, ms; 0 goes at once */
  look(name: CameraPlaceName, time: number): void {
    const distance = distanceFor(this.#size.radius, FOV, this.camera.aspect);
    this.#flight.begin(this.#pose(), poseAt(name, this.#size, distance), time);
    this.#redraw.ask();
  }

  /** Turns the camera round the ring, radians: to the left, up. */
  turn(left: number, up: number): void {
    this.controls.rotateLeft(left);
    this.controls.rotateUp(up);
    this.controls.update();
  }

  /** Goes nearer by a factor, or farther by one under 1. */
  zoom(factor: number): void {
    goNearer(this.controls, factor);
  }

  /** Fits the picture to the canvas's place on the page, CSS pixels. */
  resize(width: number, height: number): void {
    if (width === 0 || height === 0) return;
    const before = distanceFor(1, FOV, this.camera.aspect);
    this.#renderer.setPixelRatio(Math.min(devicePixelRatio, MOST_RATIO));
    this.#renderer.setSize(width, height, false);
    this.camera.aspect = width / height;
    this.camera.updateProjectionMatrix();
    const { position } = this.camera;
    const { target } = this.controls;
    position
      .sub(target)
      .multiplyScalar(distanceFor(1, FOV, this.camera.aspect) / before)
      .add(target);
    this.#redraw.ask();
  }

  /** What lies at a place of the picture: metal, whatever stone lies before it. */
  pointAt(place: PicturePlace): Pointed | undefined {
    if (this.#metal === undefined) return undefined;
    const plane = planeOf(this.#cut);
    const kept = plane && ([plane.normal.x, plane.normal.y, plane.normal.z, plane.constant] as const);
    return pointAt(this.#metal.buffers, this.camera, place, kept);
  }

  /** The stone that is seen at a place of the picture, where no metal lies before it. */
  stoneAt(place: PicturePlace): DrawnStone | undefined {
    const hit = this.#stones?.meet(rayAt(this.camera, place));
    if (hit === undefined) return undefined;
    const metal = this.pointAt(place)?.hit;
    return metal !== undefined && metal.distance < hit.distance ? undefined : hit.stone;
  }

  /** Where the cut's handle is in the picture, CSS pixels; undefined where nothing is cut. */
  cutHandle(): { readonly x: number; readonly y: number } | undefined {
    if (this.#cut.kind === "none") return undefined;
    const seen = handleOf(this.#cut, this.#size.radius * HANDLE_AT).project(this.camera);
    const { clientWidth, clientHeight } = this.canvas;
    return { x: ((seen.x + 1) / 2) * clientWidth, y: ((1 - seen.y) / 2) * clientHeight };
  }

  /** The cut that runs through a place of the picture: where its ray meets the plane that the handle moves in. */
  cutAt({ x, y, width, height }: PicturePlace): Cut {
    const caster = new Raycaster();
    caster.setFromCamera(new Vector2((2 * x) / width - 1, 1 - (2 * y) / height), this.camera);
    // A cut through the axis turns in the plane z = 0; one across the finger moves along z, in the plane that faces the reader.
    const towards = this.#cut.kind === "axis" ? new Vector3(0, 0, 1) : this.camera.position.clone().setZ(0).normalize();
    const handle = handleOf(this.#cut, this.#size.radius * HANDLE_AT);
    const plane = new Plane().setFromNormalAndCoplanarPoint(towards, handle);
    const met = caster.ray.intersectPlane(plane, new Vector3());
    return met === null ? this.#cut : cutThrough(this.#cut, met);
  }

  /** Lets go of everything. */
  dispose(): void {
    this.#redraw.end();
    for (const drawn of this.#layers.values()) drawn.dispose();
    this.#section?.dispose();
    this.#metal?.dispose();
    this.#stones?.dispose();
    this.controls.dispose();
    this.#renderer.dispose();
  }

  #pose(): Pose {
    return { position: this.camera.position.clone(), target: this.controls.target.clone() };
  }

  #replace(layer: Layer, drawn: Drawn | undefined): void {
    if (drawn === undefined && !this.#layers.has(layer)) return;
    this.#layers.get(layer)?.dispose();
    this.#layers.delete(layer);
    if (drawn !== undefined) {
      this.#layers.set(layer, drawn);
      this.#scene.add(drawn.object);
    }
    this.#redraw.ask();
  }

  #draw(time: number): boolean {
    const flown = this.#flight.at(time);
    if (flown !== undefined) {
      this.camera.position.copy(flown.position);
      this.controls.target.copy(flown.target);
      this.controls.update();
    }
    for (const drawn of [this.#metal, this.#stones]) drawn?.faceStudio(this.camera);
    this.#renderer.render(this.#scene, this.camera);
    this.onDrawn();
    return this.#flight.flying;
  }
}

/** All that is seen of stones but their corners, which follow from it. */
function textOf({ bodies, stones }: StonesToDraw<DrawnStone>): string {
  return JSON.stringify([bodies.map(({ mesh: _, ...body }) => body), stones]);
}

/** Of the ring's radius, how far from its middle the handle of a cut stands. */
const HANDLE_AT = 1.12;
