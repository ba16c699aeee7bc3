import * as v from 'valibot';

/** What the forms of our files are made of. The message of each is the code of what it wants, see `form-problems.ts`. */

export const table = <E extends v.ObjectEntries>(entries: E) =>
  v.pipe(
    v.custom<Record<string, unknown>>(
      (value) => typeof value === 'object' && value !== null && !Array.isArray(value),
      'table',
    ),
    v.strictObject(entries, Object.keys(entries).join(' ')),
  );

/** A table whose fields are all optional and of one kind. */
export const tableOf = <K extends string, S extends v.GenericSchema>(names: readonly K[], field: S) =>
  table(
    Object.fromEntries(names.map((name) => [name, v.optional(field)])) as Record<
      K,
      v.OptionalSchema<S, undefined>
    >,
  );

export const list = <S extends v.GenericSchema>(item: S, most: number) =>
  v.pipe(v.array(item, 'list'), v.minLength(1, 'not-empty'), v.maxLength(most, 'too-many'));

/** A list that may be empty. */
export const rows = <S extends v.GenericSchema>(item: S, most: number) =>
  v.pipe(v.array(item, 'list'), v.maxLength(most, 'too-many'));

export const name = v.pipe(v.string('text'), v.regex(/\S/u, 'not-blank'));
export const text = v.string('text');
/** Read later, in the units of the order. */
export const length = v.union([v.string(), v.number()], 'length');
export const number = v.pipe(v.number('number'), v.finite('number'));
export const flag = v.boolean('flag');
export const scalar = v.union([v.string(), v.number(), v.boolean()], 'scalar');
export const range = table({ from: length, to: length });
/** Money as she writes it; read later, in the currency of the order. */
export const amount = v.union([v.string(), v.number()], 'amount');
