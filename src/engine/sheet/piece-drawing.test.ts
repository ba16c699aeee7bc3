import { describe, expect, test } from 'vitest';
import { bodiceBack, bodiceFront, bowKnot, dressOf, yokeFront } from '../../../tests/fixtures/cut-pieces.ts';
import type { CutPiece } from '../cut/index.ts';
import { outlineContains, type Path, pathEnd, pathJoin, pathStart } from '../geometry/index.ts';
import { drawPiece } from './piece-drawing.ts';
import type { Ink, StrokeMark, TextMark } from './scene.ts';

/** A font of which every letter is 0.6 of its size wide. */
const ink: Ink = { units: 'cm', measure: { width: (text, size) => text.length * size * 0.6 } };

const texts = (piece: CutPiece): readonly TextMark[] =>
  drawPiece(piece, ink).marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
const strokes = (piece: CutPiece, line: string): readonly StrokeMark[] =>
  drawPiece(piece, ink).marks.flatMap((mark) => (mark.kind === 'stroke' && mark.line === line ? [mark] : []));

/** Corners of the box that a line of text fills, turned with it. */
function corners({ text, at, size, align, turn }: TextMark): readonly { x: number; y: number }[] {
  const width = ink.measure.width(text, size, 'regular');
  const left = { left: 0, centre: -width / 2, right: -width }[align];
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  return [
    [left, -size * 0.7],
    [left + width, -size * 0.7],
    [left + width, 0],
    [left, 0],
  ].map(([u = 0, v = 0]) => ({ x: at.x + u * cos - v * sin, y: at.y + u * sin + v * cos }));
}

const longNamed = { child: 'Oluwaseyifunmi Adébáyọ̀-Featherstonehaugh', size: 'made to measure, 18 months' };

describe('the label', () => {
  const cases: [string, CutPiece][] = [0.5, 0.75, 1, 1.4].flatMap((k) =>
    [...dressOf(k), ...dressOf(k, longNamed)].map((piece): [string, CutPiece] => [
      `${piece.label.title}, ${k}`,
      piece,
    ]),
  );
  test.each(cases)('lies inside the stitching line: %s', (_, piece) => {
    const [first, ...rest] = piece.piece.edges.map((edge) => edge.path);
    if (first === undefined) throw new Error('A piece has edges.');
    const outline = pathJoin(first, ...rest);
    const inLabel = texts(piece).filter((mark) => mark.text.length > 0 && !/^\d/.test(mark.text));
    expect(inLabel.length).toBeGreaterThan(0);
    for (const mark of inLabel) {
      for (const corner of corners(mark)) {
        expect(outlineContains(outline, corner), `${mark.text} at ${corner.x}, ${corner.y}`).toBe(true);
      }
    }
  });

  test('holds title, cutting, child, size, date and what is included, where there is room', () => {
    const said = texts(bodiceFront())
      .map((mark) => mark.text)
      .join(' ');
    for (const words of [
      'Front bodice',
      'Cut 1 in satin',
      'Adaeze, made to measure',
      '14 March 2026',
      'are included',
    ]) {
      expect(said).toContain(words);
    }
  });

  test('the title is on every piece, however small', () => {
    const tiny = { ...bowKnot(), labelAt: { x: 20, y: 35 } };
    const small = drawPiece({ ...tiny, label: { ...tiny.label, title: 'Knot of the bow at the back' } }, ink);
    const said = small.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])).join(' ');
    expect(said).toContain('Knot of the bow at the back');
  });

  describe('on pages that part the piece', () => {
    const front = bodiceFront();
    const [above, below] = [
      { minX: -50, minY: -50, maxX: 300, maxY: front.labelAt.y + 5 },
      { minX: -50, minY: front.labelAt.y - 5, maxX: 300, maxY: 500 },
    ];
    const drawing = drawPiece(front, ink, { turns: 0, windows: [above, below], clear: [above, below] });
    const wholeOn = (lines: readonly TextMark[], page: typeof above): boolean =>
      lines.flatMap(corners).every(({ y }) => y >= page.minY && y <= page.maxY);

    test('every wording is whole on one of them', () => {
      expect(drawing.words.length).toBeGreaterThan(5);
      for (const lines of drawing.words) expect(wholeOn(lines, above) || wholeOn(lines, below)).toBe(true);
    });

    test('the page without the label has the name', () => {
      const named = drawing.words.filter((lines) =>
        lines
          .map(({ text }) => text)
          .join(' ')
          .includes('Front bodice'),
      );
      expect(named).toHaveLength(2);
      for (const page of [above, below]) expect(named.some((lines) => wholeOn(lines, page))).toBe(true);
    });
  });

  test.each([0, 1, 2, 3] as const)('is not upside down after %i quarter turns', (turns) => {
    const pieces = dressOf().map((piece) => drawPiece(piece, ink, { turns, windows: [], clear: [] }));
    for (const mark of pieces.flatMap(({ words }) => words.flat())) {
      const onPaper = ((mark.turn + 90 * turns) * Math.PI) / 180;
      expect(Math.cos(onPaper), mark.text).toBeGreaterThanOrEqual(-0.01);
    }
  });
});

describe('lines', () => {
  test('a fold is not drawn as a line to cut, and reaches from cut edge to cut edge', () => {
    const front = bodiceFront();
    const fold = strokes(front, 'fold');
    expect(fold).toHaveLength(1);
    for (const { path } of fold) {
      expect([pathStart(path).x, pathEnd(path).x]).toEqual([0, 0]);
      // 12 mm of waist allowance below, 6 mm of neck allowance above.
      expect(Math.abs(pathStart(path).y - pathEnd(path).y)).toBeCloseTo(285 - 62 + 12 + 6, 6);
    }
    for (const { path } of strokes(front, 'cutting')) {
      expect(path.segments.every((s) => Math.abs(s.from.x) > 1e-6 || Math.abs(s.to.x) > 1e-6)).toBe(true);
    }
    expect(texts(front).map((mark) => mark.text)).toContain('Place on fold');
  });

  test('a piece without a fold has none and says nothing of one', () => {
    expect(strokes(bodiceBack(), 'fold')).toHaveLength(0);
    expect(texts(bodiceBack()).map((mark) => mark.text)).not.toContain('Place on fold');
  });

  test("every allowance is written in the maker's units, none on the fold", () => {
    const figures = texts(bodiceFront())
      .map((mark) => mark.text)
      .filter((text) => /^\d/.test(text) && text.endsWith('cm'));
    expect([...figures].sort()).toEqual(['0.6 cm', '1 cm', '1.2 cm', '1.2 cm', '2.5 cm']);
  });

  test('cloths differ by hatch, so that a black-and-white print tells them apart', () => {
    const hatch = (piece: CutPiece): string | undefined =>
      drawPiece(piece, ink).marks.flatMap((mark) => (mark.kind === 'hatch' ? [mark.hatch] : []))[0];
    expect(hatch(bodiceFront())).toBe('plain');
    expect(hatch(yokeFront())).toBe('net');
    expect(hatch({ ...bodiceFront(), piece: { ...bodiceFront().piece, cloth: 'lining' } })).toBe('diagonal');
  });
});

describe('a line for the lower side', () => {
  test.each(['left', 'right'] as const)('has a dash of its own and names the %s side', (side) => {
    const cut = bodiceFront();
    const path: Path = { segments: [{ kind: 'line', from: { x: 50, y: 60 }, to: { x: 110, y: 80 } }] };
    const marked: CutPiece = {
      ...cut,
      piece: { ...cut.piece, markings: [...cut.piece.markings, { kind: 'lower-side', side, path }] },
    };
    expect(strokes(marked, 'lower-side').map((mark) => mark.path)).toEqual([path]);
    expect(texts(marked).map((mark) => mark.text)).toContain(`${side} side only`);
  });
});
