/** Where a text stops being JSON, or says something twice; `line` and `column` count from 1. */
export type JsonProblem =
  | { readonly code: 'broken'; readonly line: number; readonly column: number; readonly found: string }
  | { readonly code: 'ends-early'; readonly line: number }
  | { readonly code: 'field-twice'; readonly line: number; readonly field: string }
  | { readonly code: 'too-deep'; readonly line: number };

export type JsonResult =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problem: JsonProblem };

/**
 * Reads JSON (RFC 8259) and says where it is broken: an order is written by hand, and the built-in reader does not
 * name the line in every runtime. A field that stands twice is refused, since the built-in reader would drop one of
 * the two without a word.
 */
export function readJson(text: string): JsonResult {
  const plain = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const scan: Scan = { text: plain, at: 0 };
  const problem = skipValue(scan, 0) ?? skipRest(scan);
  if (problem !== null) return { ok: false, problem };
  return { ok: true, value: JSON.parse(plain) };
}

interface Scan {
  readonly text: string;
  at: number;
}

/** An order is five levels deep; far deeper nesting is no order, and could exhaust the stack. */
const DEEPEST = 40;

const SPACE = /[ \t\n\r]*/y;
// biome-ignore lint/suspicious/noControlCharactersInRegex: JSON forbids exactly these inside a string.
const STRING = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;
const NUMBER_OR_WORD = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;

/** Takes what the pattern matches here; null if it does not match. */
function take(scan: Scan, pattern: RegExp): string | null {
  pattern.lastIndex = scan.at;
  const found = pattern.exec(scan.text)?.[0];
  if (found === undefined) return null;
  scan.at += found.length;
  return found;
}

/** Takes one character after any white space. */
function takeSign(scan: Scan, sign: string): boolean {
  take(scan, SPACE);
  if (scan.text[scan.at] !== sign) return false;
  scan.at++;
  return true;
}

function skipValue(scan: Scan, depth: number): JsonProblem | null {
  if (depth > DEEPEST) return { code: 'too-deep', line: lineOf(scan) };
  if (takeSign(scan, '{')) return skipObject(scan, depth);
  if (takeSign(scan, '[')) return skipList(scan, depth);
  return take(scan, STRING) === null && take(scan, NUMBER_OR_WORD) === null ? brokenHere(scan) : null;
}

function skipObject(scan: Scan, depth: number): JsonProblem | null {
  const seen = new Set<string>();
  if (takeSign(scan, '}')) return null;
  do {
    take(scan, SPACE);
    const name = take(scan, STRING);
    if (name === null) return brokenHere(scan);
    const field: string = JSON.parse(name);
    if (seen.has(field)) return { code: 'field-twice', line: lineOf(scan), field };
    seen.add(field);
    if (!takeSign(scan, ':')) return brokenHere(scan);
    const inside = skipValue(scan, depth + 1);
    if (inside !== null) return inside;
  } while (takeSign(scan, ','));
  return takeSign(scan, '}') ? null : brokenHere(scan);
}

function skipList(scan: Scan, depth: number): JsonProblem | null {
  if (takeSign(scan, ']')) return null;
  do {
    const inside = skipValue(scan, depth + 1);
    if (inside !== null) return inside;
  } while (takeSign(scan, ','));
  return takeSign(scan, ']') ? null : brokenHere(scan);
}

function skipRest(scan: Scan): JsonProblem | null {
  take(scan, SPACE);
  return scan.at < scan.text.length ? brokenHere(scan) : null;
}

const SHOWN = 12;

function brokenHere(scan: Scan): JsonProblem {
  take(scan, SPACE);
  const { text, at } = scan;
  if (at >= text.length) return { code: 'ends-early', line: lineOf(scan) };
  const column = at - text.lastIndexOf('\n', at - 1);
  const found = (text.slice(at, at + SHOWN).split(/[\r\n]/)[0] ?? '').replace(/\p{Cc}/gu, ' ');
  return { code: 'broken', line: lineOf(scan), column, found };
}

function lineOf({ text, at }: Scan): number {
  return text.slice(0, at).split('\n').length;
}
