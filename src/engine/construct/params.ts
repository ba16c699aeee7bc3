/**
 * One declaration a number: form, order file, help and hand-drafting sheet are all made from it.
 * `C` is what a default may look at: the body, and for design steps the dress so far.
 */
export type Param<C> = LengthParam<C> | NumberParam<C> | ChoiceParam<C, string> | FlagParam<C> | TextParam<C>;

interface Declared<C, V> {
  readonly rule: (context: C) => V;
  /** Where the rule comes from: a source, or "common practice, no source". */
  readonly source: string;
}

/** A length in mm; `range` is what the design can work with on this body. */
export interface LengthParam<C> extends Declared<C, number> {
  readonly kind: 'length';
  readonly range: (context: C) => readonly [number, number];
}

/** A plain number: a ratio (may have decimals) or a count (whole). */
export interface NumberParam<C> extends Declared<C, number> {
  readonly kind: 'ratio' | 'count';
  readonly range: (context: C) => readonly [number, number];
}

export interface ChoiceParam<C, V extends string> extends Declared<C, V> {
  readonly kind: 'choice';
  readonly choices: readonly V[];
}

export interface FlagParam<C> extends Declared<C, boolean> {
  readonly kind: 'flag';
}

/** A name that the maker writes: of a piece, an edge, a place of the draft. */
interface TextParam<C> extends Declared<C, string> {
  readonly kind: 'text';
  /**
   * What of the dress it must be the name of; without it, any text. An edge is one of the piece that the parameter
   * `piece` of the same table names.
   */
  readonly names?: 'piece' | 'piece-or-all' | 'edge';
}

export type ParamTable<C> = Readonly<Record<string, Param<C>>>;

/** The values that a table of parameters takes. */
export type ParamValues<T> = {
  readonly [K in keyof T]: T[K] extends { kind: 'choice'; choices: readonly (infer V)[] }
    ? V
    : T[K] extends { kind: 'flag' }
      ? boolean
      : T[K] extends { kind: 'text' }
        ? string
        : number;
};

/** What an order may give for a parameter: lengths as text in the maker's units, or a number. */
export type GivenParams = Readonly<Record<string, string | number | boolean>>;
