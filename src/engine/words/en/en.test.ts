import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { en } from './index.ts';

const HERE = import.meta.dirname;
const SOURCE = join(HERE, '../../..');

const sourceFiles = readdirSync(SOURCE, { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.tsx?$/.test(name) && !/\.test\.|\.d\.ts$/.test(name))
  .map((name) => join(SOURCE, name));

const parsed = (path: string): ts.SourceFile =>
  ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);

function everyNode(node: ts.Node, look: (node: ts.Node) => void): void {
  look(node);
  node.forEachChild((child) => everyNode(child, look));
}

/** Names written in an object literal; null where it takes some from elsewhere. */
function namesIn(node: ts.Node | undefined): readonly string[] | null {
  if (node === undefined || !ts.isObjectLiteralExpression(node)) return null;
  const names = node.properties.map(({ name }) =>
    name !== undefined && (ts.isIdentifier(name) || ts.isStringLiteral(name)) ? name.text : null,
  );
  return names.every((name) => name !== null) ? names : null;
}

/** Functions that speak a sentence as it stands; others add the child or the field before it is spoken. */
const SPEAKERS: readonly string[] = ['say', 'told'];

/** A word's key and the values that stand beside it in the source, where both are written out. */
function wordsUsed(
  file: ts.SourceFile,
): readonly { readonly key: string; readonly given: readonly string[] }[] {
  const used: { key: string; given: readonly string[] }[] = [];
  const note = (key: ts.Node | undefined, values: ts.Node | undefined): void => {
    const plain = key !== undefined && ts.isSatisfiesExpression(key) ? key.expression : key;
    const given = namesIn(values);
    if (plain === undefined || given === null) return;
    const keys = ts.isConditionalExpression(plain) ? [plain.whenTrue, plain.whenFalse] : [plain];
    for (const one of keys) if (ts.isStringLiteral(one)) used.push({ key: one.text, given });
  };
  everyNode(file, (node) => {
    if (ts.isCallExpression(node) && SPEAKERS.includes(node.expression.getText()))
      note(node.arguments[0], node.arguments[1]);
    if (!ts.isObjectLiteralExpression(node)) return;
    const partOf = (wanted: string): ts.Expression | undefined =>
      node.properties
        .filter(ts.isPropertyAssignment)
        .find(({ name }) => ts.isIdentifier(name) && name.text === wanted)?.initializer;
    note(partOf('key'), partOf('values'));
  });
  return used;
}

const placeholders = (sentence: string): readonly string[] =>
  [...sentence.matchAll(/\{(\w+)\}/g)].flatMap(([, name]) => name ?? []);

describe('the English catalogue', () => {
  // A key of the sewing plan once stood over one of the design: "order of {step}" was asked for a {child}.
  it('has every key in one file only', () => {
    const homes = new Map<string, string[]>();
    for (const name of readdirSync(HERE).filter((one) => !/index|\.test\./.test(one))) {
      everyNode(parsed(join(HERE, name)), (node) => {
        if (!ts.isPropertyAssignment(node) || !ts.isStringLiteral(node.name)) return;
        homes.set(node.name.text, [...(homes.get(node.name.text) ?? []), name]);
      });
    }
    expect(homes.size).toBe(Object.keys(en).length);
    expect([...homes].filter(([, files]) => files.length > 1)).toEqual([]);
  });

  it('is given every value that a sentence asks for, wherever key and values are written out', () => {
    const words: Readonly<Record<string, string>> = en;
    const used = sourceFiles.flatMap((path) => wordsUsed(parsed(path)).map((word) => ({ path, ...word })));
    const known = used.filter(({ key }) => words[key] !== undefined);
    expect(known.length).toBeGreaterThan(900);
    const missing = known.flatMap(({ path, key, given }) =>
      placeholders(words[key] ?? '')
        .filter((name) => !given.includes(name))
        .map((name) => `${path}: ${key} without {${name}}`),
    );
    expect(missing).toEqual([]);
  });
});
