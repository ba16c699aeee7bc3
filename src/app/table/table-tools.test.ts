import { describe, expect, it } from 'vitest';
import { linePath, type Point } from '../../engine/geometry/index.ts';
import type { Edge, Piece } from '../../engine/piece/index.ts';
import { RULERS } from '../../engine/units/index.ts';
import { alignChildren } from './align-children.ts';
import { cameraOn, panned, pinched, toScreen, toTable, zoomedAt } from './camera.ts';
import { paperAt, played } from './drafting-play.ts';
import { layPieces } from './lay-pieces.ts';
import { lengthText } from './length-text.ts';
import { applyTo } from './motion.ts';
import { cornerAngle, readEdge } from './read-edge.ts';
import { readTape, tapeEnd } from './tape.ts';
import { cutsOf, libraryDress, libraryWish, tableDressOf } from './test-dress.ts';
import { touched } from './touch.ts';

describe('camera', () => {
  const screen = { width: 800, height: 600 };
  const camera = cameraOn({ minX: -100, minY: 0, maxX: 900, maxY: 400 }, screen);

  it('shows all of a box in the middle', () => {
    const [a, b] = [toScreen(camera, { x: -100, y: 0 }), toScreen(camera, { x: 900, y: 400 })];
    expect(a.x).toBeGreaterThan(0);
    expect(b.x).toBeLessThan(800);
    expect(a.x + b.x).toBeCloseTo(800, 6);
    expect(a.y + b.y).toBeCloseTo(600, 6);
  });

  it('comes nearer while what lies under the finger stays there', () => {
    const finger = { x: 123, y: 456 };
    const under = toTable(camera, finger);
    const after = toScreen(zoomedAt(camera, 3, finger), under);
    expect(after.x).toBeCloseTo(finger.x, 6);
    expect(after.y).toBeCloseTo(finger.y, 6);
  });

  it('follows two fingers: what lay under each is under it still', () => {
    const from: [Point, Point] = [
      { x: 100, y: 100 },
      { x: 200, y: 100 },
    ];
    const to: [Point, Point] = [
      { x: 150, y: 220 },
      { x: 350, y: 220 },
    ];
    const places = from.map((at) => toTable(camera, at));
    const after = pinched(camera, from, to);
    expect(after.zoom).toBeCloseTo(camera.zoom * 2, 9);
    for (const [i, at] of places.entries()) {
      expect(toScreen(after, at).x).toBeCloseTo(to[i]?.x ?? 0, 6);
      expect(toScreen(after, at).y).toBeCloseTo(to[i]?.y ?? 0, 6);
    }
  });

  it('never goes so near or so far that the way back is lost', () => {
    const near = zoomedAt(camera, 1e9, { x: 0, y: 0 });
    const far = zoomedAt(camera, 1e-9, { x: 0, y: 0 });
    expect(near.zoom).toBe(40);
    expect(far.zoom).toBe(0.02);
    expect(panned(camera, { x: 5, y: 7 })).toEqual({ ...camera, x: camera.x + 5, y: camera.y + 7 });
  });
});

/** A right-angled piece of 30 by 40: corners of 90 degrees, and of 36.87 and 53.13 (the 3-4-5 triangle, Euclid I.47). */
const [CORNER, ACROSS, DOWN] = [
  { x: 0, y: 0 },
  { x: 30, y: 0 },
  { x: 0, y: 40 },
];
const edge = (name: string, from: Point, to: Point): Edge => ({
  name,
  kind: 'free',
  path: linePath(from, to),
});
const triangle: Piece = {
  id: 'triangle',
  title: { key: 'piece.front', values: {} },
  edges: [edge('top', CORNER, ACROSS), edge('slant', ACROSS, DOWN), edge('left', DOWN, CORNER)],
  cloth: 'main',
  layer: 'shell',
  cutting: { as: 'single', copies: 1 },
  grain: { from: { x: 5, y: 15 }, to: { x: 5, y: 5 } },
  notches: [{ edge: 'slant', at: 20, style: 'single', match: 'm' }],
  markings: [],
};
const garment = { pieces: [triangle], seams: [], whole: {}, closing: null, trims: [] };
const laidTriangle = layPieces(cutsOf(garment), 1, true);

describe('reading', () => {
  it('tells the angle of the cloth at a corner', () => {
    expect(cornerAngle(triangle, 'top')).toBeCloseTo(90, 6);
    expect(cornerAngle(triangle, 'slant')).toBeCloseTo(53.1301, 4);
    expect(cornerAngle(triangle, 'left')).toBeCloseTo(36.8699, 4);
    expect(cornerAngle(triangle, 'none')).toBeNull();
  });

  it('tells the length of an edge, what it is sewn to and how', () => {
    expect(readEdge(garment, 'triangle', 'slant')).toMatchObject({ length: 50, sewn: [] });
    expect(readEdge(garment, 'triangle', 'none')).toBeNull();
    const dress = libraryDress('minnow');
    const side = readEdge(dress, 'front', 'side')?.sewn[0];
    expect(side?.others.map(({ piece, edge: { name } }) => `${piece.id} ${name}`)).toEqual(['back side']);
    expect(side?.own).toBeCloseTo(side?.other ?? 0, 1);
    const waist = readEdge(dress, 'skirt-front', 'waist')?.sewn.find(({ join }) => join.kind === 'gathered');
    expect((waist?.own ?? 0) / (waist?.other ?? 1)).toBeCloseTo(2.5, 2);
  });

  it('a touch takes the corner, then the edge, then the piece', () => {
    const frame = laidTriangle[0]?.frame;
    if (frame === undefined) throw new Error('not laid');
    const touch = (x: number, y: number): unknown => touched(laidTriangle, applyTo(frame, { x, y }), 3);
    expect(touch(1, -1)).toEqual({ kind: 'corner', piece: 'triangle', edge: 'top' });
    expect(touch(15, -2)).toEqual({ kind: 'edge', piece: 'triangle', edge: 'top' });
    expect(touch(10, 10)).toEqual({ kind: 'piece', piece: 'triangle' });
    expect(touch(60, 60)).toBeNull();
  });
});

describe('tape', () => {
  const frame = laidTriangle[0]?.frame;
  if (frame === undefined) throw new Error('not laid');
  const end = (x: number, y: number) => tapeEnd(laidTriangle, applyTo(frame, { x, y }), 6);

  it('catches on corners and notches before edges, and lies free elsewhere', () => {
    expect(end(28, 1).caught).toBe('corner');
    // 20 along the slant from (30, 0) toward (0, 40).
    expect(end(18.5, 16.5)).toMatchObject({ caught: 'notch', on: { edge: 'slant', along: 20 } });
    expect(end(15, 1).caught).toBe('edge');
    expect(end(100, 100).caught).toBeNull();
  });

  it('measures straight and along the edge, the shorter way round', () => {
    const read = readTape(laidTriangle, end(30, 0), end(0, 40));
    expect(read.straight).toBeCloseTo(50, 6);
    expect(read.along).toBeCloseTo(50, 6);
    const bent = readTape(laidTriangle, end(30, 0), end(0, 10));
    expect(bent.straight).toBeCloseTo(Math.hypot(30, 10), 6);
    expect(bent.along).toBeCloseTo(40, 6);
    expect(readTape(laidTriangle, end(30, 0), end(100, 100)).along).toBeNull();
  });
});

describe('children over each other', () => {
  it('lie on the centre line and on the neck point, whatever their yokes', () => {
    const small = tableDressOf(libraryWish('clover', {}, 30));
    const tall = tableDressOf(libraryWish('minnow', {}, 110));
    const [a, b] = alignChildren(
      [
        { ...small, name: 'Ada' },
        { ...tall, name: 'Bola' },
      ],
      1.5,
    ).map(({ lines }) => ({
      top: Math.min(...tops(lines, 'front')),
      left: Math.min(...lefts(lines, 'front')),
      foot: Math.max(...feet(lines, 'front')),
    }));
    expect(a?.left).toBeCloseTo(b?.left ?? 0, 6);
    expect(a?.top).toBeCloseTo(b?.top ?? 0, 6);
    expect(a?.foot).toBeLessThan(b?.foot ?? 0);
  });
});

type Lines = ReturnType<typeof alignChildren>[number]['lines'];
const pointsOf = (lines: Lines, half: string): readonly Point[] =>
  lines
    .filter(({ key }) => key === half || key === `${half}-yoke`)
    .flatMap(({ path }) => path.segments.map(({ from }) => from));
const tops = (lines: Lines, half: string): number[] => pointsOf(lines, half).map(({ y }) => y);
const lefts = (lines: Lines, half: string): number[] => pointsOf(lines, half).map(({ x }) => x);
const feet = tops;

describe('drafting step by step', () => {
  const { draft } = tableDressOf(libraryWish('clover'));
  const all = draft.reduce((sum, { steps }) => sum + steps.length, 0);

  it('goes on through every step of every part once, and back again to empty paper', () => {
    let at = { part: 0, step: 0 };
    const seen = new Set<string>();
    for (let i = 0; i < all; i++) {
      at = played(draft, at, 'on');
      seen.add(`${at.part} ${at.step}`);
      expect(paperAt(draft, at).live).toBe(draft[at.part]?.steps[at.step - 1]);
    }
    expect(seen.size).toBe(all);
    expect(played(draft, at, 'on')).toEqual(at);
    for (let i = 0; i < all; i++) at = played(draft, at, 'back');
    expect(at).toEqual({ part: 0, step: 0 });
    expect(paperAt(draft, at).live).toBeNull();
  });

  it('shows all of a part', () => {
    const at = played(draft, { part: 2, step: 0 }, 'all');
    expect(at.step).toBe(draft[2]?.steps.length);
    expect(paperAt(draft, at).drawn).toHaveLength(at.step - 1);
  });
});

describe('lengths with real fractions', () => {
  it.each([
    [25.4 * 20.5, 'in', '20½ in'],
    [25.4 * 3.1875, 'in', '3³⁄₁₆ in'],
    [25.4 * 0.75, 'in', '¾ in'],
    [0, 'in', '0 in'],
    [-12.7, 'in', '−½ in'],
    [525, 'cm', '52.5 cm'],
  ] as const)('%d mm in %s', (mm, units, text) => {
    expect(lengthText(mm, units)).toBe(text);
  });

  it('on her ruler', () => {
    expect(lengthText(25.4 * 3.1875, 'in', RULERS.quarter)).toBe('3¼ in');
  });
});
