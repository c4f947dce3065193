/**
 * The design document as it is written, with what each field means. Made of the schema's descriptions by
 * `npm run reference`: change those, not this.
 */

/** Symbol of a built-in alloy. */
export type MaterialName = "ag925" | "ag800" | "ag935" | "ag958" | "ag999" | "au375-yellow" | "au375-white" | "au375-red" | "au417-yellow" | "au417-white" | "au417-red" | "au417-green" | "au585-yellow" | "au585-white" | "au585-white-pd" | "au585-red" | "au585-green" | "au750-yellow" | "au750-white" | "au750-white-pd" | "au750-red" | "au750-green" | "au916" | "au999" | "pt950-ru" | "pt950-co" | "pt950-ir" | "pt900-ir" | "pt999" | "pd950" | "pd999" | "bronze" | "brass" | "wax" | "wax-bees" | "resin";

/** Name of a motif of the catalogue. */
export type MotifName = "arcade" | "basket" | "braid" | "brick" | "chain" | "crescent-row" | "drop-row" | "fan" | "flower" | "foil" | "fret" | "leaf-pair" | "leaf-vine" | "lozenge" | "lozenge-net" | "reed" | "rope-twist" | "scale" | "scroll" | "star" | "wave-crest" | "zigzag";

/** a drawing, or shapes combined, copied */
export type ShapeInput = {
  /** SVG path data in the tile: x 0 to 1 along the band, y from its middle towards +z */
  readonly path?: string | undefined;
  /** of this path or place; default the region's unit */
  readonly unit?: "tile" | "mm" | undefined;
  /** what is inside where paths cross, as in SVG; default nonzero */
  readonly fill?: "nonzero" | "evenodd" | undefined;
  /** SVG file in the design's folder or below */
  readonly svg?: string | undefined;
  /** what of the svg file counts: colours (white, #fff), id:NAME, layer:NAME; default all that is painted */
  readonly take?: TakeInput | undefined;
  /** where it stands in the tile; default filling it */
  readonly place?: PlaceInput | undefined;
  /** a motif with its parameters */
  readonly motif?: MotifInput | undefined;
  /** name in pattern.shapes */
  readonly shape?: string | undefined;
  /** shapes that become one, 1 to 200 */
  readonly union?: readonly ShapeInput[] | undefined;
  /** what all of them cover, 2 to 200; the first may be lines */
  readonly intersection?: readonly ShapeInput[] | undefined;
  /** the first without the others, 2 to 200 */
  readonly difference?: readonly ShapeInput[] | undefined;
  /** mm it is grown, -50 to 50; below 0 it shrinks */
  readonly offset?: number | undefined;
  /** corners; default miter */
  readonly join?: "miter" | "round" | undefined;
  /** the shape it is done to */
  readonly of?: ShapeInput | undefined;
  /** cuts it along a line */
  readonly trim?: {
    /** one open line as SVG path data, region's unit; it goes on straight at its ends */
    readonly along: string;
    /** side that is kept, walking along the line */
    readonly keep: "left" | "right";
  } | undefined;
  /** copies in a full turn, 2 to 360 */
  readonly turns?: number | undefined;
  /** point they turn about, region's unit; default the tile's middle */
  readonly about?: readonly [number, number] | undefined;
  /** two points of the mirror line, region's unit */
  readonly mirror?: readonly [readonly [number, number], readonly [number, number]] | undefined;
  /** two points of the glide line, region's unit */
  readonly glide?: readonly [readonly [number, number], readonly [number, number]] | undefined;
  /** how far it moves along the line, towards the second point, region's unit */
  readonly by?: number | undefined;
  /** copies in the tile's cells, going on into its neighbours */
  readonly lattice?: {
    /** cells along the tile, 1 to 60; even for half-drop */
    readonly columns: number;
    /** cells across the tile, 1 to 60; even for brick in several rows of tiles */
    readonly rows: number;
    /** half-drop: second columns half a cell lower; brick: second rows half along; default straight */
    readonly set?: "straight" | "half-drop" | "brick" | undefined;
    /** point set in each cell's middle, region's unit; default the tile's middle */
    readonly middle?: readonly [number, number] | undefined;
    /** factor on it, 0.01 to 10; default 1 */
    readonly scale?: number | undefined;
  } | undefined;
};

/** what of the svg file counts: colours (white, #fff), id:NAME, layer:NAME; default all that is painted */
export type TakeInput = {
  /** what alone is taken; default all */
  readonly only?: readonly string[] | undefined;
  /** what is left out, not cut out; default none */
  readonly without?: readonly string[] | undefined;
};

/** where it stands in the tile; default filling it */
export type PlaceInput = {
  /**
   * page (the file's width, height and viewBox) or art (the box round all that is painted); without a page the
   * art; default page
   */
  readonly by?: "page" | "art" | undefined;
  /**
   * width and height of the box it fills in its proportions, region's unit, or drawn (its own size, px being
   * 1/96 inch); default the tile
   */
  readonly fit?: readonly [number, number] | "drawn" | undefined;
  /** its point that stands at `at`; default centre */
  readonly anchor?: "centre" | "left" | "right" | "top" | "bottom" | "top-left" | "top-right" | "bottom-left" | "bottom-right" | undefined;
  /** factor on the fitted size, 0.001 to 1000; default 1 */
  readonly scale?: number | undefined;
  /** where the anchor stands, region's unit; default the tile's middle */
  readonly at?: readonly [number, number] | undefined;
  /** degrees counter-clockwise about it, -360 to 360; default 0 */
  readonly turn?: number | undefined;
  /** whether left and right change places, before turning; default false */
  readonly mirror?: boolean | undefined;
};

/** a motif with its parameters */
export type MotifInput = {
  /** arches along the tile, 2 to 4; default 2 */
  readonly arches?: number | undefined;
  /** thickness of piers, arches and sill over the tile width, 0.06 to 0.1; default 0.08 */
  readonly line?: number | undefined;
  /** how pointed the arches are: 0 round, 1 equilateral, 0 to 1; default 0.4 */
  readonly point?: number | undefined;
  /** always "arcade" */
  readonly name: "arcade";
} | {
  /** bars in a block, 2 to 3; default 3 */
  readonly bars?: number | undefined;
  /** width of the bars over its room, 0.45 to 0.62; default 0.56 */
  readonly width?: number | undefined;
  /** always "basket" */
  readonly name: "basket";
} | {
  /** strands, 2 to 3; default 3 */
  readonly strands?: number | undefined;
  /** height of the strands' middle lines over the tile's, 0.6 to 0.7; default 0.68 */
  readonly swing?: number | undefined;
  /** always "braid" */
  readonly name: "braid";
} | {
  /** courses across the tile, an even number, 2 to 4; default 4 */
  readonly courses?: number | undefined;
  /** width of the joints over the tile width, 0.05 to 0.1; default 0.07 */
  readonly joint?: number | undefined;
  /** roundness of the corners over half a brick's height, 0 to 0.8; default 0.4 */
  readonly soft?: number | undefined;
  /** always "brick" */
  readonly name: "brick";
} | {
  /** thickness of the links over the tile width, 0.07 to 0.12; default 0.1 */
  readonly line?: number | undefined;
  /** length of the links seen from the front over the tile width, 0.66 to 0.78; default 0.72 */
  readonly length?: number | undefined;
  /** height of those links over the tile's, 0.65 to 0.88; default 0.84 */
  readonly height?: number | undefined;
  /** always "chain" */
  readonly name: "chain";
} | {
  /** crescents along the tile, 1 to 3; default 2 */
  readonly crescents?: number | undefined;
  /** height of the crescents over the tile's, 0.6 to 0.9; default 0.84 */
  readonly size?: number | undefined;
  /**
   * thickness of their backs over their radius (or 3/4 of the room along the band where that is less), 0.4 to
   * 0.58; default 0.5
   */
  readonly thickness?: number | undefined;
  /** always "crescent-row" */
  readonly name: "crescent-row";
} | {
  /** length of the drops over the tile's height, 0.7 to 0.9; default 0.86 */
  readonly length?: number | undefined;
  /** width of the drops over its room, 0.6 to 0.86; default 0.8 */
  readonly fullness?: number | undefined;
  /** always "drop-row" */
  readonly name: "drop-row";
} | {
  /** ribs, 3 to 5; default 5 */
  readonly ribs?: number | undefined;
  /** angle between the outer ribs, degrees, 110 to 150; default 126 */
  readonly spread?: number | undefined;
  /** width of the ribs over its room, 0.72 to 0.82; default 0.78 */
  readonly fullness?: number | undefined;
  /** always "fan" */
  readonly name: "fan";
} | {
  /** petals, an even number, 4 to 8; default 6 */
  readonly petals?: number | undefined;
  /** diameter of the eye over the flower's, 0.22 to 0.34; default 0.26 */
  readonly eye?: number | undefined;
  /** width of the petals over its room, 0.7 to 0.86; default 0.84 */
  readonly fullness?: number | undefined;
  /** always "flower" */
  readonly name: "flower";
} | {
  /** lobes, an even number, 4 to 8; default 4 */
  readonly foils?: number | undefined;
  /** width of the outline over the lobes' radius, 0.42 to 0.52; default 0.45 */
  readonly line?: number | undefined;
  /** diameter of the boss over the room in the middle, 0.4 to 0.9; default 0.7 */
  readonly boss?: number | undefined;
  /** always "foil" */
  readonly name: "foil";
} | {
  /** hooks along the tile, 1 to 2; default 1 */
  readonly hooks?: number | undefined;
  /** how often each hook turns in: 1 three corners, 2 five, 1 to 2; default 2 */
  readonly turns?: number | undefined;
  /** always "fret" */
  readonly name: "fret";
} | {
  /** pairs of leaves along the tile, 1 to 3; default 3 */
  readonly pairs?: number | undefined;
  /** angle of the leaves to the stem, degrees, 48 to 65; default 52 */
  readonly lean?: number | undefined;
  /** width of the leaves over its room, 0.7 to 1; default 0.9 */
  readonly fullness?: number | undefined;
  /** always "leaf-pair" */
  readonly name: "leaf-pair";
} | {
  /** height of the stem's middle line over the tile's, 0.4 to 0.5; default 0.48 */
  readonly swing?: number | undefined;
  /** width of the stem over the tile's, 0.06 to 0.09; default 0.075 */
  readonly stem?: number | undefined;
  /** angle of the leaves to the band, degrees, 80 to 90; default 82 */
  readonly lean?: number | undefined;
  /** always "leaf-vine" */
  readonly name: "leaf-vine";
} | {
  /** width over the tile's, 0.4 to 0.94; default 0.9 */
  readonly width?: number | undefined;
  /** height over the tile's, 0.4 to 0.92; default 0.9 */
  readonly height?: number | undefined;
  /**
   * how far the sides bulge from straight to the corner of the box round it, below 0 inwards; share of the way,
   * -0.1 to 0.8; default 0
   */
  readonly bow?: number | undefined;
  /** always "lozenge" */
  readonly name: "lozenge";
} | {
  /** lozenges along the tile, 1 to 2; default 1 */
  readonly meshes?: number | undefined;
  /** width of the bars over the tile width, 0.085 to 0.14; default 0.1 */
  readonly bar?: number | undefined;
  /** roundness of the openings' corners over half a side, 0 to 0.8; default 0.3 */
  readonly soft?: number | undefined;
  /** always "lozenge-net" */
  readonly name: "lozenge-net";
} | {
  /** rods along the tile, an even number, 2 to 6; default 4 */
  readonly rods?: number | undefined;
  /** width of the rods over its room, 0.45 to 0.7; default 0.62 */
  readonly width?: number | undefined;
  /** by how much of the others' length every second rod is shorter, 0 to 0.5; default 0.25 */
  readonly step?: number | undefined;
  /** always "reed" */
  readonly name: "reed";
} | {
  /** strands along the tile, 2 to 3; default 3 */
  readonly strands?: number | undefined;
  /** how far strands run along the band over the tile width, 0.25 to 0.5; default 0.4 */
  readonly slant?: number | undefined;
  /** gap between the strands along the band over its room, 0.3 to 0.42; default 0.32 */
  readonly gap?: number | undefined;
  /** always "rope-twist" */
  readonly name: "rope-twist";
} | {
  /** gap between the scales over the tile width, 0.09 to 0.14; default 0.1 */
  readonly gap?: number | undefined;
  /** always "scale" */
  readonly name: "scale";
} | {
  /** half turns that each end rolls up, 2 to 3; default 3 */
  readonly halves?: number | undefined;
  /** length of each scroll's middle line over the tile width, 0.78 to 0.84; default 0.84 */
  readonly length?: number | undefined;
  /** always "scroll" */
  readonly name: "scroll";
} | {
  /** points, an even number, 4 to 8; default 8 */
  readonly points?: number | undefined;
  /** distance of the inner corners from the middle over the points', 0.45 to 0.75; default 0.58 */
  readonly waist?: number | undefined;
  /** roundness of all corners over half a side, 0 to 0.5; default 0.12 */
  readonly soft?: number | undefined;
  /** always "star" */
  readonly name: "star";
} | {
  /** waves along the tile, 1 to 2; default 1 */
  readonly waves?: number | undefined;
  /** height of the crests over the tile's, 0.8 to 0.9; default 0.9 */
  readonly rise?: number | undefined;
  /** height of the water in the troughs over the crests', 0.16 to 0.3; default 0.2 */
  readonly depth?: number | undefined;
  /** always "wave-crest" */
  readonly name: "wave-crest";
} | {
  /** bars across the tile, 1 to 3; default 2 */
  readonly bars?: number | undefined;
  /** height of each zigzag's middle line over the tile's, 0.15 to 0.4; default 0.3 */
  readonly rise?: number | undefined;
  /** height of a bar over its room, 0.46 to 0.6; default 0.54 */
  readonly weight?: number | undefined;
  /** always "zigzag" */
  readonly name: "zigzag";
};

/** A part of a design: region. */
export type RegionInput = {
  /** what messages call it; default region and its number */
  readonly name?: string | undefined;
  /** SVG path data in the tile: x 0 to 1 along the band, y from its middle towards +z */
  readonly path?: string | undefined;
  /** SVG file in the design's folder or below; all that is painted counts; fill does not apply */
  readonly svg?: string | undefined;
  /** what of the svg file counts: colours (white, #fff), id:NAME, layer:NAME; default all that is painted */
  readonly take?: TakeInput | undefined;
  /** drawings combined or copied */
  readonly shape?: ShapeInput | undefined;
  /** a motif with its parameters */
  readonly motif?: MotifInput | undefined;
  /** a text; fill does not apply */
  readonly text?: {
    /** one line of one direction, 1 to 200 characters */
    readonly text: string;
    /**
     * OpenType, TrueType or WOFF file beside the design, or package: and its path in an npm package; default
     * Nunito ExtraBold
     */
    readonly font?: string | undefined;
    /** mm added between letters, -5 to 20; default 0 */
    readonly spacing?: number | undefined;
    /** height of capitals, mm, 0.3 to 20, instead of `fit` and `scale`; default what the place allows */
    readonly height?: number | undefined;
  } | undefined;
  /** where it stands in the tile; default filling it */
  readonly place?: PlaceInput | undefined;
  /** PNG file in the design's folder or below, a height map; height or depth is from black to white */
  readonly image?: string | undefined;
  /** a height map from a seed, the same on every machine; height or depth is from its lowest to its highest place */
  readonly texture?: TextureInput | undefined;
  /** from image or texture to relief */
  readonly map?: {
    /** height or depth of the least raised or sunk pixel or place, mm, 0 to 10; default 0 */
    readonly base?: number | undefined;
    /** whether dark, not light, is high, also of a sunk image; default false */
    readonly invert?: boolean | undefined;
    /** tile (repeats, completed by the symmetry) or band (once over the pattern); default tile */
    readonly over?: "tile" | "band" | undefined;
    /**
     * mm from sample to sample, 0.01 to 1; default 8 tolerances, of a texture a sixth of its size if less,
     * coarser past 300 000 samples
     */
    readonly resolution?: number | undefined;
    /** image: standard deviation of the Gaussian it is smoothed by, mm, 0 to 2; default the resolution */
    readonly smooth?: number | undefined;
    /**
     * image: where it meets itself: exact (left and right match or are mirrored) or {blend} (its ends go over
     * into each other); default exact
     */
    readonly seam?: "exact" | {
      /** width of the blend, mm, 0.05 to 20 */
      readonly blend: number;
    } | undefined;
    /**
     * mm over which it falls to nothing at the seat's edges and ends, 0 (upright) to 20; default 0 at rails,
     * else 0.3
     */
    readonly edge?: number | undefined;
  } | undefined;
  /** of path, shape or place: tile (1 wide, `aspect` high) or mm; default tile */
  readonly unit?: "tile" | "mm" | undefined;
  /** tiles of the cycle that carry this, from 0; default all */
  readonly tiles?: readonly number[] | {
    /** tiles from one to the next, 1 to 1000 */
    readonly every: number;
    /** the first of them, 0 up; default 0 */
    readonly from?: number | undefined;
  } | undefined;
  /** what is inside where paths cross, as in SVG; default nonzero */
  readonly fill?: "nonzero" | "evenodd" | undefined;
  /** a ribbon along the path, not a filled region */
  readonly ribbon?: RibbonInput | undefined;
  /** lobes along the outline, both sides of a ribbon */
  readonly edge?: EdgeInput | undefined;
  /**
   * on the seat, into it, or through the wall; what is sunk or pierced also cuts raised regions before it;
   * default raised
   */
  readonly mode?: "raised" | "sunk" | "pierced" | undefined;
  /** raised: height of a level top, mm, above 0; short for a flat section */
  readonly height?: number | undefined;
  /** sunk: depth of a level floor, mm, above 0; short for a flat section */
  readonly depth?: number | undefined;
  /** radius of the edge of top or floor, mm, to the height or depth and half the width; default 0 */
  readonly round?: number | undefined;
  /** the region cut across, instead of height and round; if sunk turned over, its height the depth */
  readonly section?: SectionInput | undefined;
  /** raised: goes on beneath the rails, cut off as it stands; may leave the tile across; default false */
  readonly beneath?: boolean | undefined;
  /**
   * raised or sunk: walls along the radius: none leans over, nor out at the band's edge; default false: along
   * the normal
   */
  readonly upright?: boolean | undefined;
  /** pierced: radius of the hole's edges, which widen it, mm; default 0 */
  readonly broken?: number | undefined;
  /** mm the completed region or ribbon is grown, -5 to 5; below 0 it shrinks; default 0 */
  readonly offset?: number | undefined;
  /** regions, as completed, in any of which it is kept, and 0.02 mm beyond, so that bodies join; default none */
  readonly within?: readonly string[] | undefined;
  /**
   * regions, as completed, taken away from it; without a gap they overlap by 0.02 mm, so that bodies join;
   * default none
   */
  readonly without?: readonly (string | {
    /** name of a region */
    readonly region: string;
    /** clearance kept from it, mm, 0.02 to 5 */
    readonly gap: number;
  })[] | undefined;
  /** a bead run on it */
  readonly beads?: {
    /** bead diameter, mm, 0.1 to 5; milgrain: 0.3 to 0.6 */
    readonly diameter: number;
    /** diameter at an open line's end, half way round a closed one, mm, 0.1 to 5; default one size */
    readonly to?: number | undefined;
    /** diameter of every second bead, mm, 0.1 to 5; not with `to` */
    readonly alternate?: number | undefined;
    /** spacing over diameter, 0.5 to 20; default 1.05; the nearest that comes out even */
    readonly pitch?: number | undefined;
    /** beads in each run, instead of a pitch */
    readonly count?: number | undefined;
    /** share of it below the surface, 0.1 to 0.9; default 0.5 */
    readonly embed?: number | undefined;
    /** at corners: pass (beads take no notice), on (a bead on each), split (equal gaps beside each); default pass */
    readonly corners?: "pass" | "on" | "split" | undefined;
    /** corners turn by more than this, degrees, 5 to 175; default 30 */
    readonly cornerAngle?: number | undefined;
    /** where it meets another that shares: leave, or share one bead; default leave */
    readonly junctions?: "leave" | "share" | undefined;
    /** centre (the ribbon's line), border (the outline), or mm inside it */
    readonly on?: "centre" | "border" | number | undefined;
  } | undefined;
};

/** a height map from a seed, the same on every machine; height or depth is from its lowest to its highest place */
export type TextureInput = {
  /** hammered (facets), bark (plates), brushed (fine lines), stippled (round pits; raised dots by map.invert) */
  readonly form: "hammered" | "bark" | "brushed" | "stippled";
  /** mm from one facet, plate, line or pit to the next, 0.1 to 20; the nearest that comes out even */
  readonly size: number;
  /** bark, brushed: length of a plate or line, mm, 0.1 to 50; default 4 sizes (bark), 12 (brushed) */
  readonly length?: number | undefined;
  /** bark, brushed: which way the grain runs; default band */
  readonly along?: "band" | "across" | undefined;
  /** 0 (evenly set) to 1; default 1 */
  readonly irregular?: number | undefined;
  /** another gives another of the same kind, 0 to 4294967295; default 1 */
  readonly seed?: number | undefined;
};

/** a ribbon along the path, not a filled region */
export type RibbonInput = {
  /** width, mm, above 0; of a tapering ribbon at its start */
  readonly width: number;
  /**
   * width at the line's end, mm, 0 (a point) or more, to which it tapers evenly; half way on a line that closes
   * or that its images carry on; default no taper
   */
  readonly to?: number | undefined;
  /**
   * widths along it, instead of `to`, [share of the line's length, mm], shares rising; straight between them,
   * the last to the end
   */
  readonly widths?: readonly (readonly [number, number])[] | undefined;
  /** side of a closed border; default inside */
  readonly side?: "inside" | "outside" | "centre" | undefined;
  /** ribbons side by side, centred on an open line or with side centre, else in from the border; default one */
  readonly copies?: {
    /** ribbons side by side, 2 to 50 */
    readonly count: number;
    /** gap between neighbours, mm, above 0 */
    readonly gap: number;
  } | undefined;
  /** weaves it with others and itself: it bridges what it passes over */
  readonly weave?: {
    /** mm by which its top rises where it passes over another, above 0 */
    readonly lift: number;
    /** mm along the ribbon over which it rises; default its width, less near a crossing */
    readonly run?: number | undefined;
    /** ribbons of one set are woven with each other */
    readonly set?: string | undefined;
    /**
     * alternate: over and under by turns; at the tile's leftmost, lowest crossing the later region is over, of
     * one region the line at the smaller angle from the band; later: the later region is over; one for a set;
     * default alternate
     */
    readonly over?: "alternate" | "later" | undefined;
  } | undefined;
  /** corners; where it tapers always round; default miter */
  readonly join?: "miter" | "round" | undefined;
  /** ends of open lines; default butt */
  readonly ends?: "butt" | "round" | "square" | undefined;
};

/** lobes along the outline, both sides of a ribbon */
export type EdgeInput = {
  /** scallop: round lobes; teeth: points; steps: square */
  readonly form: "scallop" | "wave" | "teeth" | "steps";
  /** width of a lobe, mm, 0.1 to 50; the nearest that comes out even */
  readonly width: number;
  /** how far lobes stand out, mm, to half their width (scallop), once (wave, steps), twice (teeth) */
  readonly depth: number;
  /** lobes are set on the outline or bitten out of it; default out */
  readonly side?: "out" | "in" | undefined;
  /** lobes end where it turns by more than this, degrees, 5 to 175; default 30 */
  readonly cornerAngle?: number | undefined;
};

/** the region cut across, instead of height and round */
export type SectionInput = {
  /** always "flat" */
  readonly form: "flat";
  /** height of the top, mm, above 0 */
  readonly height: number;
  /** radius of the top edge, mm, to the height and half the width; default 0 */
  readonly round?: number | undefined;
  /** bevel instead, mm wide and high; limits as of `round`; default 0 */
  readonly bevel?: number | undefined;
  /** how far walls lean in, degrees, 0 to 60; the foot grows; default 0 */
  readonly draft?: number | undefined;
} | {
  /** always "domed" */
  readonly form: "domed";
  /** height where the dome ends, mm, above 0 */
  readonly height: number;
  /** height of the wall it stands on, mm, under the height; default 0 */
  readonly wall?: number | undefined;
  /** radius of the edge above the wall, mm; default 0 */
  readonly radius?: number | undefined;
  /** mm inside the outline where it levels out; default the middle of the widest place */
  readonly reach?: number | undefined;
  /** how far walls lean in, degrees, 0 to 60; the foot grows; default 0 */
  readonly draft?: number | undefined;
} | {
  /** always "ridge" */
  readonly form: "ridge";
  /** height at the widest place, mm, above 0; narrower ones are lower; or give slope */
  readonly height?: number | undefined;
  /** slope of the flanks, degrees, 1 to 85, instead of height */
  readonly slope?: number | undefined;
  /** radius along the middle at the widest place, mm; narrower ones stay sharp; default 0 */
  readonly nose?: number | undefined;
  /** height of the wall it stands on, mm, under the height; default 0 */
  readonly wall?: number | undefined;
  /** radius of the edge above the wall, mm; default 0 */
  readonly radius?: number | undefined;
  /** how far walls lean in, degrees, 0 to 60; the foot grows; default 0 */
  readonly draft?: number | undefined;
} | {
  /** always "hollow" */
  readonly form: "hollow";
  /** height of the rim, mm, above 0 */
  readonly height: number;
  /** how much lower the middle is, mm, below the height */
  readonly dip: number;
  /** radius of its outer edge, mm, to the height; default 0 */
  readonly round?: number | undefined;
  /** width of the level rim, mm; default 0 */
  readonly rim?: number | undefined;
  /** mm inside the outline where it levels out; default the middle of the widest place */
  readonly reach?: number | undefined;
  /** how far walls lean in, degrees, 0 to 60; the foot grows; default 0 */
  readonly draft?: number | undefined;
};

/** takes the place of tiles at the top, with art of its own */
export type MedallionInput = {
  /** tiles it takes the place of, 1 to 500 */
  readonly tiles: number;
  /** frieze group that completes its art; default p1 */
  readonly symmetry?: "p1" | "p11g" | "p1m1" | "p2" | "p11m" | "p2mg" | "p2mm" | undefined;
  /** its art, in one tile 1 wide and as high as the rows */
  readonly regions: readonly RegionInput[];
};

/** how it ends at its plain zone and medallion; default cut */
export type EndsInput = {
  /** always "cut" */
  readonly form: "cut";
} | {
  /** always "line" */
  readonly form: "line";
  /** width of the line, mm, 0.1 to 10; its outer side is the end */
  readonly width: number;
  /** its height, mm, above 0 */
  readonly height: number;
  /** radius of its top edges, mm; default 0 */
  readonly round?: number | undefined;
} | {
  /** always "fade" */
  readonly form: "fade";
  /** mm over which the relief sinks to the seat */
  readonly length: number;
} | {
  /** always "ornament" */
  readonly form: "ornament";
  /** its width in tiles, 1 to 500; default 1 */
  readonly tiles?: number | undefined;
  /** frieze group that completes its art; default p1 */
  readonly symmetry?: "p1" | "p11g" | "p1m1" | "p2" | "p11m" | "p2mg" | "p2mm" | undefined;
  /** its art beyond the end, in one tile, x = 0 at the end; the other end mirrors it */
  readonly regions: readonly RegionInput[];
};

/** one along the finger axis, one across */
export type ShrinkageInput = {
  /** along the finger axis, %, -5 to 20 */
  readonly axial: number;
  /** across the finger axis, %, -5 to 20 */
  readonly radial: number;
};

/** A design as it is written: fields with a default may be left out. */
export interface DesignInput {
  /** address of this schema, for editors */
  readonly $schema?: string | undefined;
  /** version of the document */
  readonly annulet: 1;
  /** name of the ring, 1 to 200 characters; default ring */
  readonly name?: string | undefined;
  /** A label, or inner diameter or circumference. Of a comfort bore that of its narrowest circle. */
  readonly size: {
    /**
     * iso: ISO 8653; us: US, Canada (formula); us-gauge: US (trade gauge); uk: UK, Ireland, Australia; japan:
     * Japan (customary number); swiss: Switzerland, Italy, Spain; german: Germany; india: India.
     */
    readonly system: "iso" | "us" | "us-gauge" | "uk" | "japan" | "swiss" | "german" | "india";
    /**
     * Its label. iso: the inner circumference in mm, 35 to 80, or ISO 8653-54; us: 0 to 16, with quarters: 7¼, 7
     * 1/2, 7.75; us-gauge: 0 to 13, with quarters: 7¼, 7 1/2, 7.75; uk: A to Z, with quarters: N¼, N 1/2, N.75;
     * past Z: Z+1 to Z+6; japan: 1 to 30, whole numbers by custom; swiss: 0 to 40: the inner circumference in mm
     * less 40; german: 11 to 26: the inner diameter in mm, 17.2 or 17,2; india: 1 to 30, whole numbers by
     * custom.
     */
    readonly value: string | number;
  } | {
    /** Inner diameter in mm, 5 to 60. */
    readonly diameter: number;
  } | {
    /** Inner circumference in mm. */
    readonly circumference: number;
  };
  /** farthest that flat facets lie off the true surface, mm, 0.001 to 0.2; default 0.01 */
  readonly tolerance?: number | undefined;
  /** The cross-section. */
  readonly profile: {
    /** Width along the finger axis, mm, above 0 and at most 1000; of a band that tapers, at the top; no default. */
    readonly width: number;
    /** From the bore's narrowest circle to the highest point, mm, above 0 and at most 1000; no default. */
    readonly thickness: number;
    /** The inside; default a flat bore. */
    readonly bore?: {
      /** always "flat" */
      readonly form: "flat";
      /** Radius of its edges, mm, 0 or more; default 0.2, above the 0.125 castings need. */
      readonly edge?: number | undefined;
    } | {
      /** always "comfort" */
      readonly form: "comfort";
      /** How much wider its radius gets, mm, 0 or more; default 0.2. */
      readonly rise?: number | undefined;
      /** Radius of its edges, mm, 0 or more; default 0.2. */
      readonly edge?: number | undefined;
    } | undefined;
    /** Its outside. */
    readonly outside: {
      /** always "flat" */
      readonly form: "flat";
      /** Radius of its edges, mm, 0 or more; default 0.2. */
      readonly edge?: number | undefined;
    } | {
      /** always "domed" */
      readonly form: "domed";
      /** Height of the dome above the side walls, mm, to half the width; default 0.5. */
      readonly rise?: number | undefined;
      /** Radius of its edges, mm, 0 or more; default 0.2. */
      readonly edge?: number | undefined;
    } | {
      /** always "channel" */
      readonly form: "channel";
      /** Width of each rail, mm, above 0, under half the band's; default 0.9. */
      readonly rail?: number | undefined;
      /** From the rails' top down to the floor's edges, mm, above 0; default 0.5. */
      readonly depth?: number | undefined;
      /** How far its middle stands above its edges, mm, to the depth; default 0. */
      readonly crown?: number | undefined;
      /** Radius of their top corners, mm, to half the rail; default 0.2. */
      readonly edge?: number | undefined;
      /** Fillet from floor to rails, mm, 0 or more; default 0. */
      readonly root?: number | undefined;
    } | {
      /** always "bevelled" */
      readonly form: "bevelled";
      /** Width of each bevel, mm, above 0, under half the band's; default 0.8. */
      readonly bevel?: number | undefined;
      /** How far each bevel falls, mm, 0 or more; default 0.4. */
      readonly drop?: number | undefined;
      /** Radius of its corners, mm, 0 or more; default 0.2. */
      readonly edge?: number | undefined;
    } | {
      /** always "concave" */
      readonly form: "concave";
      /** How far the middle lies under the edges, mm, to half the width; default 0.3. */
      readonly dip?: number | undefined;
      /** Radius of its edges, mm, 0 or more; default 0.2. */
      readonly edge?: number | undefined;
    } | {
      /** always "knife" */
      readonly form: "knife";
      /** Height of the ridge above the side walls, mm, 0 or more; default 0.6. */
      readonly rise?: number | undefined;
      /** Radius of the nose, mm, 0 or more; it lowers the ridge; default 0.2. */
      readonly ridge?: number | undefined;
      /** Radius of its edges, mm, 0 or more; default 0.2. */
      readonly edge?: number | undefined;
    } | {
      /** always "free" */
      readonly form: "free";
      /**
       * SVG path data in (w, height above the bore's narrowest circle), mm, y up: one open run from −w to +w,
       * stretched to the width. Or give points.
       */
      readonly path?: string | undefined;
      /** [w, height] in mm, joined by straight lines. */
      readonly points?: readonly (readonly [number, number])[] | undefined;
      /** From w to w of what carries the pattern, mm, as drawn; default all. */
      readonly seat?: readonly [number, number] | undefined;
      /** Radius at the side walls, mm, 0 or more; default 0. */
      readonly edge?: number | undefined;
    };
    /** A step cut along both edges, for beads "along": "step". Default: none. */
    readonly step?: {
      /** Width of each ledge, mm, above 0, within the outside's first curve; default 0.45. */
      readonly width?: number | undefined;
      /** From the outside there, or the band's side where that is lower, down to the ledge, mm; default 0.3. */
      readonly depth?: number | undefined;
      /** Radius of its three corners, mm; at the sides it stands for the outside's edge; default 0.13. */
      readonly edge?: number | undefined;
    } | undefined;
    /**
     * How the band narrows and thins from the top to the back, smoothly; the bore stays. Default: the same all
     * round.
     */
    readonly taper?: {
      /** At the back, mm, above 0; default as at the top. */
      readonly width?: number | undefined;
      /** At the back, mm, above 0; default as at the top. */
      readonly thickness?: number | undefined;
      /** Sizes between, at most 24; given on one side alone, the other mirrors it; default none. */
      readonly between?: readonly ({
        /** degrees from +x towards +y, 0 to 360; the top is 90 */
        readonly angle: number;
        /** mm; default what the curve gives */
        readonly width?: number | undefined;
        /** mm; default what the curve gives */
        readonly thickness?: number | undefined;
      })[] | undefined;
    } | undefined;
  };
  /** what is drawn in a tile and how it repeats; default a plain band */
  readonly pattern?: {
    /** tiles round the band and what gives way */
    readonly fit?: {
      /** tiles round the band: auto (nearest to the drawn band) or 1 to 1000; default auto */
      readonly repeats?: "auto" | number | undefined;
      /** rows of tiles across the band; default 1 */
      readonly rows?: number | undefined;
      /** height of a tile over its width, 0.05 to 20; default 1 */
      readonly aspect?: number | undefined;
      /** what stays: tile (the band's width follows) or band (the tile stretches); default tile */
      readonly hold?: "tile" | "band" | undefined;
      /**
       * where the band tapers, tiles narrow or keep their size: art is cut off at the seat's edge, with slivers
       * too narrow for its edges; not with lanes, weaves, images, textures; default narrow
       */
      readonly taper?: "narrow" | "keep" | undefined;
    } | undefined;
    /** degrees that carry the pattern, centred on the top, 5 to 360; default 360 */
    readonly cover?: number | undefined;
    /** the plain zone of a channel: open (its floor lies bare) or filled up to the rails; default open */
    readonly plain?: "open" | "filled" | undefined;
    /** shapes by name, which others take as {"shape": name}; default none */
    readonly shapes?: Readonly<Record<string, ShapeInput>> | undefined;
    /** frieze group (IUC name) that completes the art; default p1 */
    readonly symmetry?: "p1" | "p11g" | "p1m1" | "p2" | "p11m" | "p2mg" | "p2mm" | undefined;
    /** tiles after which the art comes again, 1 to 1000, or round; all round they divide the tiles; default 1 */
    readonly cycle?: "round" | number | undefined;
    /** what is drawn in the tile */
    readonly regions?: readonly RegionInput[] | undefined;
    /** takes the place of tiles at the top, with art of its own */
    readonly medallion?: MedallionInput | undefined;
    /** how it ends at its plain zone and medallion; default cut */
    readonly ends?: EndsInput | undefined;
    /**
     * patterns side by side, lowest (-z) first, 2 to 20, instead of one art; they share cover, shapes, gap,
     * fit.hold, fit.taper
     */
    readonly lanes?: readonly ({
      /** what messages call it; default lane and its number */
      readonly name?: string | undefined;
      /** share of the seat beside the others', 0.01 to 100; default 1 */
      readonly share?: number | undefined;
      /** tiles round the band */
      readonly fit?: {
        /** tiles round the band: auto (nearest to the drawn band) or 1 to 1000; default auto */
        readonly repeats?: "auto" | number | undefined;
        /** rows of tiles across the band; default 1 */
        readonly rows?: number | undefined;
        /** height of a tile over its width, 0.05 to 20; default 1 */
        readonly aspect?: number | undefined;
      } | undefined;
      /** frieze group (IUC name) that completes the art; default p1 */
      readonly symmetry?: "p1" | "p11g" | "p1m1" | "p2" | "p11m" | "p2mg" | "p2mm" | undefined;
      /** tiles after which the art comes again, 1 to 1000, or round; all round they divide the tiles; default 1 */
      readonly cycle?: "round" | number | undefined;
      /** what is drawn in the tile */
      readonly regions?: readonly RegionInput[] | undefined;
      /** takes the place of tiles at the top, with art of its own */
      readonly medallion?: MedallionInput | undefined;
      /** how it ends at its plain zone and medallion; default cut */
      readonly ends?: EndsInput | undefined;
    })[] | undefined;
    /** plain seat between lanes, mm, 0 to 20; default 0.3 */
    readonly gap?: number | undefined;
  } | undefined;
  /** bead runs, at most 200; default none */
  readonly beads?: readonly ({
    /**
     * rail (both tops), seat-edge (both edges), step (both ledges), {v} (a circle round the band), {path} or
     * {shape} in every tile
     */
    readonly along: "rail" | "seat-edge" | "step" | {
      /** mm from the seat's middle along its section, arc length and not w; + towards +z */
      readonly v: number;
    } | {
      /** SVG path data in the tile: x 0 to 1 along the band, y from its middle towards +z */
      readonly path: string;
      /** of path, shape or place: tile (1 wide, `aspect` high) or mm; default tile */
      readonly unit?: "tile" | "mm" | undefined;
      /** tiles of the cycle that carry this, from 0; default all */
      readonly tiles?: readonly number[] | {
        /** tiles from one to the next, 1 to 1000 */
        readonly every: number;
        /** the first of them, 0 up; default 0 */
        readonly from?: number | undefined;
      } | undefined;
      /** lane it is drawn in; default the lowest */
      readonly lane?: string | undefined;
    } | {
      /** its outlines and lines carry beads */
      readonly shape: ShapeInput;
      /** of path, shape or place: tile (1 wide, `aspect` high) or mm; default tile */
      readonly unit?: "tile" | "mm" | undefined;
      /** tiles of the cycle that carry this, from 0; default all */
      readonly tiles?: readonly number[] | {
        /** tiles from one to the next, 1 to 1000 */
        readonly every: number;
        /** the first of them, 0 up; default 0 */
        readonly from?: number | undefined;
      } | undefined;
      /** lane it is drawn in; default the lowest */
      readonly lane?: string | undefined;
    };
    /** bead diameter, mm, 0.1 to 5; milgrain: 0.3 to 0.6 */
    readonly diameter: number;
    /** diameter at an open line's end, half way round a closed one, mm, 0.1 to 5; default one size */
    readonly to?: number | undefined;
    /** diameter of every second bead, mm, 0.1 to 5; not with `to` */
    readonly alternate?: number | undefined;
    /** spacing over diameter, 0.5 to 20; default 1.05; the nearest that comes out even */
    readonly pitch?: number | undefined;
    /** beads in each run, instead of a pitch */
    readonly count?: number | undefined;
    /** share of it below the surface, 0.1 to 0.9; default 0.5 */
    readonly embed?: number | undefined;
    /** at corners: pass (beads take no notice), on (a bead on each), split (equal gaps beside each); default pass */
    readonly corners?: "pass" | "on" | "split" | undefined;
    /** corners turn by more than this, degrees, 5 to 175; default 30 */
    readonly cornerAngle?: number | undefined;
    /** where it meets another that shares: leave, or share one bead; default leave */
    readonly junctions?: "leave" | "share" | undefined;
    /** rail, seat-edge, step, {v}: all round the band, or over the pattern's cover alone; default band */
    readonly over?: "band" | "cover" | undefined;
    /** seat-edge: mm from it to the beads' centres; default 0.45 diameters */
    readonly inset?: number | undefined;
    /** height under the beads, mm above the seat; default 0 */
    readonly height?: number | undefined;
  })[] | undefined;
  /** texts, at most 50; default none */
  readonly lettering?: readonly ({
    /** one line of one direction, 1 to 200 characters */
    readonly text: string;
    /**
     * OpenType, TrueType or WOFF file beside the design, or package: and its path in an npm package; default
     * Nunito ExtraBold
     */
    readonly font?: string | undefined;
    /** mm added between letters, -5 to 20; default 0 */
    readonly spacing?: number | undefined;
    /** seat, rail (its flat top) or bore (read from inside); default seat */
    readonly at?: "seat" | "rail" | "bore" | undefined;
    /** rail: the one towards +z or -z; default +z */
    readonly side?: "+z" | "-z" | undefined;
    /** where its middle stands, degrees from +x towards +y; default 90, the top */
    readonly angle?: number | undefined;
    /** mm from the surface's middle, + towards +z, -50 to 50; default 0 */
    readonly v?: number | undefined;
    /** height of capitals, mm, 0.3 to 20; default 2 */
    readonly height?: number | undefined;
    /** where the letters' tops point; default +z */
    readonly up?: "+z" | "-z" | undefined;
    /** raised, or sunk through all that stands there; default sunk */
    readonly mode?: "raised" | "sunk" | undefined;
    /** sunk: depth, mm, above 0; default 0.25 */
    readonly depth?: number | undefined;
    /** raised: height, mm, above 0; default 0.3 */
    readonly relief?: number | undefined;
    /** radius of the edge of top or floor, mm, to half the narrowest stroke; default 0 */
    readonly round?: number | undefined;
    /** how far walls lean, degrees, 0 to 60; letters grow at the surface; default 0 */
    readonly draft?: number | undefined;
  })[] | undefined;
  /** a field for a hallmark, clear of pattern and beads; default none */
  readonly hallmark?: {
    /** seat, rail (its flat top) or bore; default bore */
    readonly at?: "seat" | "rail" | "bore" | undefined;
    /** rail: the one towards +z or -z; default +z */
    readonly side?: "+z" | "-z" | undefined;
    /** where its middle stands, degrees from +x towards +y; default 270, opposite the top */
    readonly angle?: number | undefined;
    /** mm from the surface's middle, + towards +z, -50 to 50; default 0 */
    readonly v?: number | undefined;
    /** round the band, mm, 0.5 to 50; default 5 */
    readonly width?: number | undefined;
    /** across the band, mm, 0.5 to 50; default 2 */
    readonly height?: number | undefined;
    /** depth below the surface, mm; 0 keeps it plain; default 0.1 */
    readonly depth?: number | undefined;
    /** radius of its corners, mm, to half its width and height; default 0.4 */
    readonly corner?: number | undefined;
  } | undefined;
  /** groups of stones, at most 200; default none */
  readonly stones?: readonly ({
    /** in tables and messages; default stones and its number */
    readonly name?: string | undefined;
    /** shape of the stones; default round */
    readonly cut?: "round" | "oval" | "marquise" | "pear" | "princess" | "square-step" | "emerald" | "baguette" | "tapered-baguette" | "cabochon" | undefined;
    /** across a round or square one, length of a long one, mm, 0.3 to 30 */
    readonly size: number;
    /** of a long one, mm, 0.3 to 30; default as the cut usually has it */
    readonly width?: number | undefined;
    /** tapered baguette: width at its narrow end, mm, 0.3 to 30; default as it usually has it */
    readonly narrow?: number | undefined;
    /** what they are: a symbol, built in or of gems; default diamond */
    readonly gem?: string | undefined;
    /** usual, tolkowsky (round), or measured, what is left out as usual; default usual */
    readonly proportions?: "usual" | "tolkowsky" | {
      /** table, share of the width, 0.1 to 0.95 */
      readonly table?: number | undefined;
      /** of the crown's main facets, degrees, 3 to 80 */
      readonly crownAngle?: number | undefined;
      /** instead of that: height of the crown, of a cabochon its dome, share of the width, 0.01 to 1 */
      readonly crownHeight?: number | undefined;
      /** height of the girdle, share of the width, 0 to 0.3 */
      readonly girdle?: number | undefined;
      /** of the pavilion's main facets, degrees, 3 to 80 */
      readonly pavilionAngle?: number | undefined;
      /** instead of that: depth of the pavilion, share of the width, 0.01 to 1.5 */
      readonly pavilionDepth?: number | undefined;
      /** culet, share of the width, 0 to 0.5 */
      readonly culet?: number | undefined;
    } | undefined;
    /** where they stand */
    readonly place: {
      /** always "tile" */
      readonly form: "tile";
      /** [x, y] in the tile: x along the band, y from its middle towards +z; the symmetry completes it */
      readonly at: readonly [number, number];
      /** of path, shape or place: tile (1 wide, `aspect` high) or mm; default tile */
      readonly unit?: "tile" | "mm" | undefined;
      /** tiles of the cycle that carry this, from 0; default all */
      readonly tiles?: readonly number[] | {
        /** tiles from one to the next, 1 to 1000 */
        readonly every: number;
        /** the first of them, 0 up; default 0 */
        readonly from?: number | undefined;
      } | undefined;
      /** lane it is drawn in; default the lowest */
      readonly lane?: string | undefined;
      /** turned about its own axis, degrees counter-clockwise from outside, -180 to 180; default 0 */
      readonly turn?: number | undefined;
    } | {
      /** always "line" */
      readonly form: "line";
      /** SVG path data in the tile: x 0 to 1 along the band, y from its middle towards +z */
      readonly path?: string | undefined;
      /** its outlines and lines carry stones; instead of a path */
      readonly shape?: ShapeInput | undefined;
      /** of path, shape or place: tile (1 wide, `aspect` high) or mm; default tile */
      readonly unit?: "tile" | "mm" | undefined;
      /** tiles of the cycle that carry this, from 0; default all */
      readonly tiles?: readonly number[] | {
        /** tiles from one to the next, 1 to 1000 */
        readonly every: number;
        /** the first of them, 0 up; default 0 */
        readonly from?: number | undefined;
      } | undefined;
      /** lane it is drawn in; default the lowest */
      readonly lane?: string | undefined;
      /** clear between girdles in space, mm, 0 to 50, the nearest above that comes out even; default 0.1 */
      readonly gap?: number | undefined;
      /** how many, instead of a gap, 1 to 5000 */
      readonly count?: number | undefined;
      /** size at an open row's ends, half way round one all round, mm, 0.3 to 30; default one size */
      readonly to?: number | undefined;
      /** turned about its own axis, degrees counter-clockwise from outside, -180 to 180; default 0 */
      readonly turn?: number | undefined;
    } | {
      /** always "row" */
      readonly form: "row";
      /** middle (of the seat), rail (both tops) or {v}; default middle */
      readonly along?: "middle" | "rail" | {
        /** mm from the seat's middle, + towards +z */
        readonly v: number;
      } | undefined;
      /** round, cover (the pattern's) or {from, to}; default round */
      readonly over?: "round" | "cover" | {
        /** angle of its first stone, degrees, the top is 90, -360 to 360 */
        readonly from: number;
        /** angle of its last one, degrees, more than the first, -360 to 360 */
        readonly to: number;
      } | undefined;
      /** clear between girdles in space, mm, 0 to 50, the nearest above that comes out even; default 0.1 */
      readonly gap?: number | undefined;
      /** how many, instead of a gap, 1 to 5000 */
      readonly count?: number | undefined;
      /** size at an open row's ends, half way round one all round, mm, 0.3 to 30; default one size */
      readonly to?: number | undefined;
      /** turned about its own axis, degrees counter-clockwise from outside, -180 to 180; default 0 */
      readonly turn?: number | undefined;
    } | {
      /** always "single" */
      readonly form: "single";
      /** degrees, the top is 90, -360 to 360; default 90 */
      readonly angle?: number | undefined;
      /** mm from the seat's middle, + towards +z, -50 to 50; default 0 */
      readonly v?: number | undefined;
      /** turned about its own axis, degrees counter-clockwise from outside, -180 to 180; default 0 */
      readonly turn?: number | undefined;
    };
    /** of the table over the surface, mm, -5 to 10; default as the setting needs it */
    readonly level?: number | undefined;
    /** how they are held */
    readonly setting: {
      /** always "flush" */
      readonly form: "flush";
      /** how much is cast: pilot (hole alone), bearing (without grains and notches), full; default full */
      readonly ready?: "pilot" | "bearing" | "full" | undefined;
      /** width of the hole below the bearing, share of the stone's, 0.2 to 0.9; default 0.6 */
      readonly pilot?: number | undefined;
    } | {
      /** always "bead-set" */
      readonly form: "bead-set";
      /** how much is cast: pilot (hole alone), bearing (without grains and notches), full; default full */
      readonly ready?: "pilot" | "bearing" | "full" | undefined;
      /** width of the hole below the bearing, share of the stone's, 0.2 to 0.9; default 0.6 */
      readonly pilot?: number | undefined;
      /** grains a stone, 2 to 4; default 4 */
      readonly grains?: number | undefined;
      /** diameter of a grain, share of the stone's width, 0.1 to 0.5; default 0.25 */
      readonly grain?: number | undefined;
      /** whether neighbours share grains; default true */
      readonly shared?: boolean | undefined;
      /** width of the bright cut beside the stones, mm, 0 to 3; 0 for none; default 0 */
      readonly border?: number | undefined;
    } | {
      /** always "channel" */
      readonly form: "channel";
      /** how much is cast: pilot (hole alone), bearing (without grains and notches), full; default full */
      readonly ready?: "pilot" | "bearing" | "full" | undefined;
      /** width of the hole below the bearing, share of the stone's, 0.2 to 0.9; default 0.6 */
      readonly pilot?: number | undefined;
      /** how far each wall reaches over the stone, share of its width, 0.02 to 0.2; default 0.06 */
      readonly cover?: number | undefined;
      /** angle between the two faces of the seat's notch, degrees, 45 to 90; default 75 */
      readonly bearing?: number | undefined;
      /** height of walls raised over the surface, mm, 0 to 5; 0 for none; default 0 */
      readonly rise?: number | undefined;
      /** thickness of raised walls, mm, 0.3 to 5; default 0.8 */
      readonly wall?: number | undefined;
    } | {
      /** always "bezel" */
      readonly form: "bezel";
      /** how much is cast: pilot (hole alone), bearing (without grains and notches), full; default full */
      readonly ready?: "pilot" | "bearing" | "full" | undefined;
      /** width of the hole below the bearing, share of the stone's, 0.2 to 0.9; default 0.6 */
      readonly pilot?: number | undefined;
      /** thickness of its wall, mm, 0.2 to 3; default 0.5 */
      readonly wall?: number | undefined;
      /** height over the girdle, share of the crown's, 0.1 to 1; default 0.35 */
      readonly height?: number | undefined;
      /** width of the ledge that the stone rests on, mm, 0.1 to 3; default 0.3 */
      readonly ledge?: number | undefined;
    } | {
      /** always "prongs" */
      readonly form: "prongs";
      /** how much is cast: pilot (hole alone), bearing (without grains and notches), full; default full */
      readonly ready?: "pilot" | "bearing" | "full" | undefined;
      /** width of the hole below the bearing, share of the stone's, 0.2 to 0.9; default 0.6 */
      readonly pilot?: number | undefined;
      /** prongs of a stone, 3 to 8; default 4 */
      readonly count?: number | undefined;
      /** of a prong at its foot, mm, 0.3 to 4; default 0.2 of the stone's width, at least 0.6 */
      readonly diameter?: number | undefined;
      /** width of its tip, share of its foot, 0.3 to 1; default 0.6 */
      readonly tip?: number | undefined;
      /** height over the girdle, share of the crown's, 0.1 to 1.5; default 0.7 */
      readonly height?: number | undefined;
      /** how deep the girdle goes into it, share of its width there, 0.1 to 0.5; default 0.4 */
      readonly notch?: number | undefined;
      /** whether neighbours share prongs; default false */
      readonly shared?: boolean | undefined;
      /** where the first stands, degrees from the stone's length, -180 to 180; default 45 */
      readonly turn?: number | undefined;
    };
    /** whether each is open below, into the bore, and how; default false */
    readonly through?: boolean | {
      /** round, or as the stone is cut; default round */
      readonly shape?: "round" | "cut" | undefined;
      /** share of the stone's, 0.1 to 0.95; default the pilot's */
      readonly size?: number | undefined;
      /** how far its edge in the bore is broken, mm, 0 to 1; default 0.1 */
      readonly edge?: number | undefined;
    } | undefined;
  })[] | undefined;
  /** gems of your own, at most 50; default none */
  readonly gems?: readonly ({
    /** 1 to 40 small letters, digits, hyphens; not built in */
    readonly symbol: string;
    /** in tables; default its symbol */
    readonly name?: string | undefined;
    /** g/cm³, 0.5 to 23 */
    readonly density: number;
    /** by Mohs, 1 to 10; default not said */
    readonly hardness?: number | undefined;
    /** where its figures come from; default the design */
    readonly source?: string | undefined;
  })[] | undefined;
  /** what it is weighed in: a symbol, built in or of alloys; default ag925 */
  readonly material?: MaterialName | (string & {}) | undefined;
  /** materials of your own, at most 50, for material, casting.pattern and prices; default none */
  readonly alloys?: readonly ({
    /** 1 to 40 small letters, digits, hyphens; not built in */
    readonly symbol: string;
    /** in tables; default its symbol */
    readonly name?: string | undefined;
    /** g/cm³, 0.5 to 23; give this or a mix */
    readonly density?: number | undefined;
    /** shares that sum to 1; the mixing rule gives the density */
    readonly mix?: {
      /** share of the mass, 0 to 1; default 0 */
      readonly Au?: number | undefined;
      /** share of the mass, 0 to 1; default 0 */
      readonly Ag?: number | undefined;
      /** share of the mass, 0 to 1; default 0 */
      readonly Cu?: number | undefined;
      /** share of the mass, 0 to 1; default 0 */
      readonly Pt?: number | undefined;
      /** share of the mass, 0 to 1; default 0 */
      readonly Ir?: number | undefined;
      /** share of the mass, 0 to 1; default 0 */
      readonly Pd?: number | undefined;
      /** share of the mass, 0 to 1; default 0 */
      readonly Rh?: number | undefined;
      /** share of the mass, 0 to 1; default 0 */
      readonly Ru?: number | undefined;
      /** share of the mass, 0 to 1; default 0 */
      readonly Co?: number | undefined;
      /** share of the mass, 0 to 1; default 0 */
      readonly Zn?: number | undefined;
    } | undefined;
    /** densities of its kind, g/cm³; default none */
    readonly range?: readonly [number, number] | undefined;
    /** parts of precious metal in 1000; default not said */
    readonly fineness?: number | undefined;
    /** metal it is hallmarked as; pattern: burns out; default other */
    readonly kind?: "gold" | "silver" | "platinum" | "palladium" | "copper alloy" | "pattern" | "other" | undefined;
    /** where its figures come from; default the design */
    readonly source?: string | undefined;
  })[] | undefined;
  /** limits for annulet check; default the general-casting set */
  readonly rules?: {
    /** rule set that limits are taken from; default general-casting */
    readonly set?: "general-casting" | "conservative" | "fine-resin-print" | undefined;
    /** your own in place of the set's; default none */
    readonly limits?: {
      /** metal from the bore straight out, at least, mm */
      readonly shank?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** metal between any two faces, at least, mm */
      readonly wall?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** height of the band's sides, 0.1 mm in from them, at least, mm */
      readonly side?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** largest ball within the band's section, at most, mm */
      readonly heavy?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** height of what is raised, at least, mm */
      readonly relief?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** depth of what is sunk, at least, mm */
      readonly engraving?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** raised line, at least, mm */
      readonly line?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** gap between raised parts, and to the rails, at least, mm */
      readonly gap?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** raised part that stands alone, diameter by area, at least, mm */
      readonly island?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** height of a raised part that stands alone over its diameter, at most, × */
      readonly post?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** sunk line, at least, mm */
      readonly groove?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** depth of a gap or a sunk line over its width, at most, × */
      readonly "groove-depth"?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** hole, at the bore or at the seat, at least, mm */
      readonly hole?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** way through a hole over its width, at most, × */
      readonly "hole-depth"?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** bead, at least, mm */
      readonly bead?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** radius of the band's inner corners, at least, mm */
      readonly corner?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** radius of the band's outer edges, at least, mm */
      readonly edge?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** room between texts, marks and the pattern, at least, mm */
      readonly marks?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** handles that the design does not imply, at most,  */
      readonly bridge?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** lean of outside faces over the radius, at most, ° */
      readonly undercut?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** gap between girdles, at least, mm */
      readonly girdles?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** metal between hollows, at least, mm */
      readonly web?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** metal under a closed hollow, at least, mm */
      readonly under?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** metal beside a hollow or groove, at least, mm */
      readonly beside?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** bezel, at least, mm */
      readonly bezel?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** ledge under a stone, at least, mm */
      readonly ledge?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** prong at its foot, at least, mm */
      readonly prong?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** grain, at least, mm */
      readonly grain?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** prongs or grains of a stone, at least,  */
      readonly held?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** table off the surface, at most, mm */
      readonly level?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
      /** gems unfit for flush setting, at most,  */
      readonly unfit?: number | {
        /** in the rule's unit; default the set's */
        readonly limit?: number | undefined;
        /** an error makes annulet check fail; default the set's */
        readonly severity?: "error" | "warning" | "note" | undefined;
        /** where it comes from; default the design */
        readonly source?: string | undefined;
      } | undefined;
    } | undefined;
  } | undefined;
  /** prices, and what is melted with it */
  readonly costing?: {
    /** % of the casting's weight, 0 to 500; default 10 */
    readonly sprue?: number | undefined;
    /** metal left in the cup, g; default 0 */
    readonly button?: number | undefined;
    /** price of a gram by material; default none */
    readonly prices?: Readonly<Record<string, number>> | undefined;
    /** what prices are in; default not said */
    readonly currency?: string | undefined;
  } | undefined;
  /** what the master is larger by; default none */
  readonly casting?: {
    /**
     * shrinkage from pattern to casting; ask your caster, linear, %, -5 to 20, or {axial, radial}; default 0;
     * the master is 1/(1 − s) as large
     */
    readonly shrinkage?: number | ShrinkageInput | undefined;
    /**
     * shrinkage from file to cured print; ask the resin's maker, linear, %, -5 to 20, or {axial, radial};
     * default 0; the master is 1/(1 − s) as large
     */
    readonly cure?: number | ShrinkageInput | undefined;
    /**
     * what finishing takes off faces, mm, 0 to 1, or {bore, rails, relief}; default 0; not off side walls,
     * floors, beads
     */
    readonly finishing?: number | {
      /** off the bore, mm, 0 to 1; default 0 */
      readonly bore?: number | undefined;
      /** off the rails' tops; of a plain band, all its outside, mm, 0 to 1; default 0 */
      readonly rails?: number | undefined;
      /** off the tops of what is raised, mm, 0 to 1; default 0 */
      readonly relief?: number | undefined;
    } | undefined;
    /** material of the master: resin, wax or wax-bees; default resin */
    readonly pattern?: string | undefined;
  } | undefined;
  /** a stem for casting, cut off later; default none */
  readonly sprue?: {
    /** of the stem at the band, without its fillet, mm, 0.5 to 10; ask your caster */
    readonly diameter: number;
    /** from the band to its end, mm, 1 to 60 */
    readonly length: number;
    /** diameter there, mm, 0.5 to 20; default the same */
    readonly end?: number | undefined;
    /** where it stands, degrees, -360 to 360, the top is 90; default 270, the back */
    readonly at?: number | undefined;
    /** mm from the middle, + towards +z, -50 to 50; default 0 */
    readonly across?: number | undefined;
    /** radius where it joins the band, mm, 0 to 5; default 0.5 */
    readonly fillet?: number | undefined;
  } | undefined;
  /** stance and layers in a printer; default as built */
  readonly print?: {
    /** built (not turned), or set on z = 0: lying (finger axis upright), standing (top up), tilted; default built */
    readonly stance?: "built" | "lying" | "standing" | "tilted" | undefined;
    /** tilted: degrees, 0 (lying) to 90 (standing), 0 to 90; default 30 */
    readonly tilt?: number | undefined;
    /** thickness of a layer, mm, 0.001 to 1; default 0.05 */
    readonly layer?: number | undefined;
    /** steep undersides lean further from upright, degrees, 0 to 89; default 45 */
    readonly support?: number | undefined;
  } | undefined;
  /** relief may stand above the rails; default false */
  readonly proud?: boolean | undefined;
}
