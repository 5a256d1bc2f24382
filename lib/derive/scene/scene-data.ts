import type { Frame } from '../../geometry/frame.ts';
import type { Vec2, Vec3 } from '../../geometry/vec.ts';
import type { PartId, PartKind } from '../../model/part.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import type { SpeciesId } from '../../wood/species-id.ts';

/**
 * What a preview shows of a piece, as plain data that can be sent to another thread or put into a page. Lengths in mm,
 * in the table's frame: x along the table from the reference end, y across from the center line, z up from the floor.
 * Prices, findings and anything of the shop stay out of it.
 */
export interface SceneData {
  readonly words: SceneWords;
  /** What the papers of the design speak; a viewer may switch. */
  readonly units: UnitSystem;
  readonly overall: { readonly length: Mm; readonly width: Mm; readonly height: Mm };
  /** The box around everything, put together. */
  readonly bounds: { readonly min: Vec3; readonly max: Vec3 };
  /** By key. A key stands for the very same bytes, so that what is known needs not be sent to a screen again. */
  readonly shapes: ReadonlyMap<string, SceneShape>;
  /** Sorted by id. Glued panels are left out, their strips are there. */
  readonly parts: readonly ScenePart[];
  /** The look of every wood that is used. */
  readonly woods: ReadonlyMap<SpeciesId, WoodLook>;
  /** Where people sit; empty for a piece that nobody sits at. */
  readonly seats: readonly SceneSeat[];
}

/** What there is to read. */
export interface SceneWords {
  readonly title: string;
  readonly number?: string;
  readonly revision: string;
  /** YYYY-MM-DD. */
  readonly date: string;
  /** What must not be overlooked: made in spite of "change it". */
  readonly warning?: string;
  /** "Top and base: black cherry". */
  readonly wood: string;
  /** "upper arris rounded over 1/8 in"; empty for a piece without a top. */
  readonly edge: Readonly<Record<UnitSystem, string>>;
  /** "2 coats". */
  readonly finish: string;
  /** The piece in sentences, for whoever does not see it. */
  readonly description: Readonly<Record<UnitSystem, readonly string[]>>;
}

/** A closed surface of triangles in the frame of its part: x along the grain. Parts of one shape share it. */
export interface SceneShape {
  /** Three numbers a vertex, mm. */
  readonly vertices: Float32Array;
  /** Three vertex indices a triangle, counter-clockwise seen from outside. */
  readonly triangles: Uint32Array;
  /** For each triangle the number of its surface: facets of one curved surface share it. */
  readonly surfaces: Uint16Array;
  /** Two vertex indices a line: the corners of the finished piece, by the surfaces that meet, never by an angle. */
  readonly edges: Uint32Array;
  /** The same for edges along a glue line: to be seen only when the joint is open. */
  readonly seams: Uint32Array;
}

export type SceneGroup = 'top' | 'base' | 'tenon';

export interface ScenePart {
  readonly id: PartId;
  readonly mark: string;
  /** "post": what it is called. */
  readonly name: string;
  readonly kind: PartKind;
  readonly group: SceneGroup;
  readonly wood: SpeciesId;
  readonly shape: string;
  /** Where the frame of the part lies: its x is the grain, its y and z lie across. */
  readonly frame: Frame;
  /** Boards side by side across y: one for a piece from one board, more for a glued one. At most `MOST_BOARDS`. */
  readonly boards: readonly SceneBoard[];
  /** mm in the table's frame: where it goes when the joints are opened. */
  readonly apart: Vec3;
}

/** How the wood of one board lies, made up from the name of the part: a sketch, no promise. */
export interface SceneBoard {
  /** Far side of the board, mm along y of the part's frame; it starts where the one before ends. */
  readonly to: Mm;
  /** Middle of the tree in the part's frame, mm: y and z of a line along x. */
  readonly pith: Vec2;
  /** -1 (darker) to 1 (lighter) than the usual board. */
  readonly tone: number;
}

/** How a wood looks, planed and oiled. Colors are sRGB, 0 to 255. */
export interface WoodLook {
  readonly early: Rgb;
  readonly late: Rgb;
  /** mm from one growth ring to the next. */
  readonly ring: Mm;
  /** How sharply late wood stands out, 0 to 1. */
  readonly contrast: number;
  /** How much open pores show as short dark lines along the grain, 0 to 1. */
  readonly pores: number;
  /** How much rays show as flecks, 0 to 1. */
  readonly rays: number;
}

export type Rgb = readonly [number, number, number];

/** One place at the table. */
export interface SceneSeat {
  /** Middle of the place on the edge of the top, mm. */
  readonly at: Vec2;
  /** Unit direction from the chair to the table. */
  readonly facing: Vec2;
  /** mm along the edge. */
  readonly width: Mm;
  /** mm in from the edge: a knee place. */
  readonly depth: Mm;
  /** mm over the floor. */
  readonly seatHeight: Mm;
  /** mm over the floor, of the table. */
  readonly tableHeight: Mm;
}
