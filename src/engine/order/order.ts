import type { BlockChoice } from '../block/index.ts';
import type { BodyInput, GrowthInput, GrowthResult, MeasuringDay } from '../body/index.ts';
import type { ClothKind, EaseBounds } from '../check/index.ts';
import type { OwnAllowances } from '../cut/index.ts';
import type { ChosenStep } from '../design/index.ts';
import type { ClothAtHand, GrainRule, KeptPlace, LayCloth } from '../lay/index.ts';
import type { ClothRole } from '../piece/index.ts';
import type { Paper, PrinterError, Rectangles } from '../sheet/index.ts';
import type { Ruler, UnitSystem } from '../units/index.ts';
import type { OrderPath } from './path.ts';
import type { PayFile } from './pay/pay-form.ts';
import type { SewingFile } from './sew/sewing-form.ts';

/** An order ready to be worked: every length in mm, everything that it leaves out filled in. */
export interface Order {
  readonly title: string;
  /** For whom it is made; null where the order does not say. */
  readonly customer: string | null;
  /** Days are plain calendar days, `2027-06-12`. */
  readonly dueDay: string;
  /** Printed on the pieces; null for the day on which the pack is made. */
  readonly madeOn: string | null;
  readonly units: UnitSystem;
  /** What the hand-drafting sheets are rounded to. */
  readonly ruler: Ruler;
  readonly cloths: readonly OrderCloth[];
  /** All children on one lay of each cloth, or one lay a child. */
  readonly layTogether: boolean;
  readonly children: readonly OrderChild[];
  /** Average children for whom the order's dress is drawn as well, one inside the other; empty for none. */
  readonly sizes: readonly OrderChild[];
  /** The maker's own bounds; null for the published range. */
  readonly fit: { readonly [K in keyof EaseBounds]: EaseBounds[K] | null };
  readonly allowances: OwnAllowances;
  readonly papers: readonly Paper[];
  readonly printer: PrinterError | null;
  /** How straight rectangles are printed; null for what suits the format. */
  readonly rectangles: Rectangles | null;
  /** Lays that are kept, whatever has become of their pieces since; `readLayBack` says whether one still holds. */
  readonly lays: readonly KeptLay[];
  /** What is agreed, paid and planned, as written; it is read apart and keeps no dress from being drawn. */
  readonly pay: PayFile;
}

/** A lay as it is kept with the order. */
export interface KeptLay {
  readonly cloth: string;
  /** The child whose pieces alone lie on it; null for those of several. */
  readonly child: string | null;
  /** How it was found: the version of the search, its seed, the places that it tried. 0 tries: by hand. */
  readonly engine: number;
  readonly seed: number;
  readonly evaluations: number;
  readonly lengths: readonly KeptLength[];
}

export interface KeptLength {
  /** Its place among the lengths at hand, null for cloth to be bought. */
  readonly at: number | null;
  /** Of pieces and cloth when it was laid, by `layMark`. */
  readonly mark: string;
  readonly places: readonly KeptPlace[];
}

/** A cloth with the parts of the dress that are cut from it. */
export interface OrderCloth extends LayCloth {
  readonly roles: readonly ClothRole[];
  readonly kind: ClothKind | null;
  /** With the selvedges, as the shop names it, mm. */
  readonly width: number;
  /** Lengths and leftovers that the maker has; what finds no place on them is bought. */
  readonly atHand: readonly ClothAtHand[];
  /** All pieces of one child come from the same length. */
  readonly oneLength: boolean;
  /** By piece id, for those that may lie otherwise than along the cloth. */
  readonly grain: ReadonlyMap<string, GrainRule>;
}

export interface OrderChild {
  /** As written, unless another child of the order has the same name. */
  readonly name: string;
  readonly body: BodyInput;
  readonly block: PlacedBlock;
  readonly steps: readonly PlacedStep[];
  /** How far the dress is sewn, as it was written. */
  readonly sewing: SewingFile;
  readonly path: OrderPath;
  /** Null where the day of measuring, the due day or the age is not known. */
  readonly growth: OrderGrowth | null;
}

/** How a child grows from the day of measuring to the due day. */
export interface OrderGrowth {
  readonly input: GrowthInput;
  /** The measurings before that, the newest first. */
  readonly earlier: readonly MeasuringDay[];
  /** Set where the dress is drafted for the due day: then the measures of the body are these. */
  readonly drafted: Extract<GrowthResult, { ok: true }> | null;
  /** Drafted not for the due day but for when the child has grown into the next size. */
  readonly sizeMore: boolean;
}

/** A block with the place in the file that says it; `paths` where single numbers of it stand elsewhere. */
export interface PlacedBlock {
  readonly choice: BlockChoice;
  readonly path: OrderPath;
  readonly paths: Readonly<Record<string, OrderPath>>;
}

/** A step of one child's dress, with the places in the file from which it and its numbers come. */
export interface PlacedStep extends ChosenStep {
  readonly path: OrderPath;
  readonly paths: Readonly<Record<string, OrderPath>>;
}
