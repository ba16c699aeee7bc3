import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** Reads a PDF by PDF.js, as an outside judge of what the writer wrote. All in mm, y down, after the user unit. */

export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly text: string;
  readonly paths: readonly ReadPath[];
}

export interface ReadPath {
  readonly painted: 'stroke' | 'fill';
  readonly lineWidth: number;
  readonly dashed: boolean;
  /** Runs of points; curves are sampled. */
  readonly runs: readonly (readonly ReadPoint[])[];
  /** The boxes that cut it off. */
  readonly clips: readonly Box[];
}

export interface ReadPoint {
  readonly x: number;
  readonly y: number;
}

export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

type Matrix = readonly [number, number, number, number, number, number];

interface State {
  readonly matrix: Matrix;
  readonly lineWidth: number;
  readonly dashed: boolean;
  readonly clips: readonly Box[];
}

const MM = 25.4 / 72;

export async function readPdf(bytes: Uint8Array): Promise<readonly ReadPage[]> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0, useSystemFonts: false });
  const document = await task.promise;
  const pages: ReadPage[] = [];
  for (let n = 1; n <= document.numPages; n++) {
    const page = await document.getPage(n);
    const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = page.view;
    const unit = MM * page.userUnit;
    const content = await page.getTextContent();
    const text = content.items.map((item) => ('str' in item ? item.str : '')).join('\n');
    const { fnArray, argsArray } = await page.getOperatorList();
    const toPage: Matrix = [unit, 0, 0, -unit, -x0 * unit, y1 * unit];
    pages.push({
      width: (x1 - x0) * unit,
      height: (y1 - y0) * unit,
      text: text.normalize('NFC'),
      paths: readPaths(fnArray, argsArray, toPage),
    });
  }
  await task.destroy();
  return pages;
}

function readPaths(
  functions: readonly number[],
  args: readonly unknown[],
  toPage: Matrix,
): readonly ReadPath[] {
  const paths: ReadPath[] = [];
  const saved: State[] = [];
  let state: State = { matrix: toPage, lineWidth: 1, dashed: false, clips: [] };
  let runs: ReadPoint[][] = [];
  let clipping = false;
  const paint = (painted: ReadPath['painted'] | null): void => {
    const { lineWidth, dashed, clips, matrix } = state;
    const scale = Math.sqrt(Math.abs(matrix[0] * matrix[3] - matrix[1] * matrix[2]));
    if (painted !== null) paths.push({ painted, lineWidth: lineWidth * scale, dashed, runs, clips });
    if (clipping) state = { ...state, clips: [...clips, boxOf(runs.flat())] };
    clipping = false;
    runs = [];
  };
  for (const [i, fn] of functions.entries()) {
    const given = (args[i] ?? []) as readonly unknown[];
    switch (fn) {
      case OPS.save:
        saved.push(state);
        break;
      case OPS.restore:
        state = saved.pop() ?? state;
        break;
      case OPS.transform:
        state = { ...state, matrix: product(state.matrix, given as unknown as Matrix) };
        break;
      case OPS.setLineWidth:
        state = { ...state, lineWidth: Number(given[0]) };
        break;
      case OPS.setDash:
        state = { ...state, dashed: (given[0] as readonly number[]).length > 0 };
        break;
      case OPS.constructPath:
        runs = runsOf(given[0] as readonly number[], given[1] as readonly number[], state.matrix);
        break;
      case OPS.clip:
      case OPS.eoClip:
        clipping = true;
        break;
      case OPS.stroke:
        paint('stroke');
        break;
      case OPS.fill:
        paint('fill');
        break;
      case OPS.endPath:
        paint(null);
        break;
    }
  }
  return paths;
}

/** `m` first, then the matrix that was there. */
function product([a, b, c, d, e, f]: Matrix, m: Matrix): Matrix {
  return [
    a * m[0] + c * m[1],
    b * m[0] + d * m[1],
    a * m[2] + c * m[3],
    b * m[2] + d * m[3],
    a * m[4] + c * m[5] + e,
    b * m[4] + d * m[5] + f,
  ];
}

function runsOf(
  ops: readonly number[],
  numbers: readonly number[],
  [a, b, c, d, e, f]: Matrix,
): ReadPoint[][] {
  const runs: ReadPoint[][] = [];
  let at = 0;
  let here = { x: 0, y: 0 };
  const take = (): ReadPoint => {
    const [x = 0, y = 0] = numbers.slice(at, at + 2);
    at += 2;
    return { x, y };
  };
  const put = (p: ReadPoint): void => {
    here = p;
    runs.at(-1)?.push({ x: a * p.x + c * p.y + e, y: b * p.x + d * p.y + f });
  };
  for (const op of ops) {
    if (op === OPS.moveTo) {
      runs.push([]);
      put(take());
    } else if (op === OPS.lineTo) {
      put(take());
    } else if (op === OPS.curveTo) {
      const [from, c1, c2, to] = [here, take(), take(), take()];
      for (let i = 1; i <= 64; i++) put(cubicAt(from, c1, c2, to, i / 64));
    } else if (op === OPS.rectangle) {
      const [p, s] = [take(), take()];
      runs.push([]);
      for (const [u, v] of [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
        [0, 0],
      ] as const)
        put({ x: p.x + u * s.x, y: p.y + v * s.y });
    } else if (op === OPS.closePath) {
      const [first] = runs.at(-1) ?? [];
      if (first !== undefined) runs.at(-1)?.push(first);
    } else {
      throw new Error(`Path operator ${op} is not read here.`);
    }
  }
  return runs;
}

function cubicAt(p: ReadPoint, c1: ReadPoint, c2: ReadPoint, q: ReadPoint, t: number): ReadPoint {
  const [k0, k1, k2, k3] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
  return { x: k0 * p.x + k1 * c1.x + k2 * c2.x + k3 * q.x, y: k0 * p.y + k1 * c1.y + k2 * c2.y + k3 * q.y };
}

export function boxOf(points: readonly ReadPoint[]): Box {
  const [xs, ys] = [points.map((p) => p.x), points.map((p) => p.y)];
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
}
