import type { CutPiece } from '../cut/index.ts';
import {
  formatSellingLength,
  type LaidStretch,
  type Lay,
  type LayCloth,
  layOffcuts,
  type Offcut,
  type SavedCloth,
} from '../lay/index.ts';
import { say, speak, type WordKey, type WordValues } from '../words/index.ts';
import { clothLength, type LetteredOffcut, stretchRows } from './lay-drawing.ts';
import { placingName } from './lay-names.ts';
import { type Paper, printableSize } from './paper-format.ts';
import type { Ink, Page } from './scene.ts';
import { capitalised } from './text.ts';
import { type FlowBlock, flowPages } from './text-pages.ts';

/** All that is cut from one cloth, of one child or of several, and how it is laid. Lengths in mm. */
export interface ClothCutList {
  readonly cloth: LayCloth;
  readonly pieces: readonly CutPiece[];
  /** Lengths at hand first, then what is bought. */
  readonly lengths: readonly LaidOnLength[];
  readonly toBuy: number;
  /** What one lay for several children saves; null where it is not known. */
  readonly saved: SavedCloth | null;
  /** What the width table would have had bought, mm; left out where that is not known. */
  readonly byTable?: number;
}

export interface LaidOnLength {
  /** Its place among the lengths at hand, null for cloth to be bought. */
  readonly at: number | null;
  readonly lay: Lay;
}

export interface LayPagesJob {
  /** Whose lay it is: the child, or the party. */
  readonly title: string;
  readonly date: string;
  readonly cloths: readonly ClothCutList[];
  readonly paper: Paper;
  readonly ink: Ink;
}

/** The lay of every cloth drawn to scale, with the measures by which each piece is pinned where it lies. */
export function layPages({ title, date, cloths, paper, ink }: LayPagesJob): readonly Page[] {
  const name = say('paper.lay.name', {}, ink.units);
  const footer = `${name} - ${title} - ${date}`;
  const blocks = cloths.flatMap((list, i): readonly FlowBlock[] => [
    ...(i === 0 ? [] : [{ kind: 'new-page' } as const]),
    ...clothBlocks(list, title, paper, ink),
  ]);
  return flowPages(blocks, { paper, ink, name, footer });
}

function clothBlocks(list: ClothCutList, title: string, paper: Paper, ink: Ink): readonly FlowBlock[] {
  const { cloth, lengths, toBuy, saved, byTable } = list;
  const told = (key: WordKey, values: WordValues = {}): string => say(key, values, ink.units);
  const sold = (length: number): string => formatSellingLength(length, cloth.unit);
  const children = new Set(list.pieces.map(({ label }) => label.child));
  const whose = children.size === 1 ? ([...children][0] ?? title) : title;
  const facts = [
    toBuy === 0 ? told('paper.lay.buy-none') : told('paper.lay.buy', { length: sold(toBuy) }),
    ...(saved === null || saved.saved <= 0
      ? []
      : [told('paper.lay.saved', { alone: sold(saved.alone), saved: sold(saved.saved) })]),
    ...(byTable === undefined || byTable <= toBuy
      ? []
      : [told('paper.lay.by-table', { table: sold(byTable), saved: sold(byTable - toBuy) })]),
  ];
  return [
    { kind: 'title', text: told('paper.lay.title', { cloth: capitalised(cloth.name), title: whose }) },
    ...facts.map((text): FlowBlock => ({ kind: 'paragraph', text, weight: 'bold' })),
    { kind: 'paragraph', text: told('paper.lay.about') },
    ...lengths.flatMap((length, i): readonly FlowBlock[] => [
      ...(i === 0 ? [] : [{ kind: 'new-page' } as const]),
      ...lengthBlocks(length, list, paper, ink),
    ]),
  ];
}

function lengthBlocks(
  { at, lay }: LaidOnLength,
  { pieces, lengths }: ClothCutList,
  paper: Paper,
  ink: Ink,
): readonly FlowBlock[] {
  const { cloth } = lay;
  const told = (key: WordKey, values: WordValues = {}): string => say(key, values, ink.units);
  const offcuts = layOffcuts(lay);
  const heading = at === null ? told('paper.lay.bought') : told('paper.lay.at-hand', { number: at + 1 });
  const laid = told('paper.lay.facts', {
    length: clothLength(lay.length, ink),
    width: clothLength(cloth.usableWidth, ink),
    percent: Math.round(lay.density * 100),
  });
  const alike = cloth.garmentOneWay === true ? 'paper.lay.child-one-way' : 'paper.lay.both-ways';
  const way = cloth.way === 'one-way' ? 'paper.lay.one-way' : alike;
  const shrinks = cloth.shrinkage > 0 && at === null;
  const percent = Math.round(cloth.shrinkage * 1000) / 10;
  return [
    ...(lengths.length > 1 ? [{ kind: 'heading', text: heading } as const] : []),
    { kind: 'paragraph', text: `${laid} ${told(way)}` },
    ...(shrinks ? [{ kind: 'paragraph', text: told('paper.lay.shrinks', { percent }) } as const] : []),
    ...lay.notes.map((note): FlowBlock => ({ kind: 'paragraph', text: speak(note, ink.units) })),
    ...lay.stretches.flatMap((stretch, i) =>
      stretchBlocks(lay, stretch, lettered(offcuts, i), pieces, paper, ink),
    ),
    ...(offcuts.length === 0 ? [] : offcutBlocks(offcuts, ink)),
  ];
}

const offcutLetter = (index: number): string => String.fromCharCode(65 + index);

const lettered = (offcuts: readonly Offcut[], stretch: number): readonly LetteredOffcut[] =>
  offcuts
    .map((offcut, i) => ({ ...offcut, letter: offcutLetter(i) }))
    .filter((offcut) => offcut.stretch === stretch);

/** Scales that a ruler reads easily: the first at which the cloth fits on the page is taken. */
const SHRINKS = [4, 5, 8, 10, 12, 15, 20, 25, 30] as const;
/** The most of a page's height that cloth takes on one row, and where it needs several, mm. */
const TALLEST = { one: 135, several: 98 };

export function shrinkFor({ depth, length }: LaidStretch, width: number, tallest = TALLEST): number {
  const fits = (shrink: number): boolean =>
    depth / shrink <= (length / shrink <= width ? tallest.one : tallest.several);
  return SHRINKS.find(fits) ?? Math.ceil(depth / tallest.several);
}

function stretchBlocks(
  lay: Lay,
  stretch: LaidStretch,
  offcuts: readonly LetteredOffcut[],
  pieces: readonly CutPiece[],
  paper: Paper,
  ink: Ink,
): readonly FlowBlock[] {
  const told = (key: WordKey, values: WordValues = {}): string => say(key, values, ink.units);
  const { width } = printableSize(paper);
  const shrink = shrinkFor(stretch, width);
  const rows = stretchRows({ lay, stretch, offcuts, shrink }, width, ink);
  const where =
    stretch.from === 0
      ? told(`paper.lay.${stretch.folding}`)
      : told('paper.lay.then', {
          how: told(`paper.lay.${stretch.folding}`),
          from: clothLength(stretch.from, ink),
        });
  return [
    { kind: 'subheading', text: `${where} ${told('paper.lay.scale', { shrink })}` },
    ...rows.map(
      ({ marks, height }): FlowBlock => ({ kind: 'figure', height: height + 2, draw: () => marks }),
    ),
    pinTable(lay, stretch, pieces, ink),
  ];
}

/** Where each piece is pinned: both ends of its grain line, along the cloth and in from its edge. */
function pinTable(lay: Lay, { pieces: laid }: LaidStretch, pieces: readonly CutPiece[], ink: Ink): FlowBlock {
  const told = (key: WordKey, values: WordValues = {}): string => say(key, values, ink.units);
  const isParty = new Set(pieces.map(({ label }) => label.child)).size > 1;
  const rows = [...laid]
    .sort((a, b) => a.at.x - b.at.x || a.piece - b.piece)
    .map((piece) => {
      const [head, foot] = piece.pins;
      const measured = (pin: typeof head): string =>
        pin === undefined
          ? ''
          : told('paper.lay.pin', {
              along: clothLength(pin.along, ink),
              across: clothLength(pin.across, ink),
            });
      const edge = head === undefined ? '' : told(head.edge);
      const how = [
        ...(isParty ? [piece.child] : []),
        ...(piece.layer === 'double' ? [told('paper.lay.double')] : []),
        ...(piece.layer === 'on-fold' ? [told('paper.lay.on-fold')] : []),
        ...(piece.layer === 'single' && piece.mirrored ? [told('paper.lay.mirrored')] : []),
      ];
      const title = how.length === 0 ? piece.title : `${piece.title} (${how.join(', ')})`;
      return [placingName(piece, lay), title, measured(head), measured(foot), edge];
    });
  const column = (key: WordKey, share: number) => ({ heading: told(key), share, align: 'left' }) as const;
  const columns = [
    column('paper.lay.number', 1.3),
    column('paper.lay.piece', 6),
    column('paper.lay.head', 4.2),
    column('paper.lay.foot', 4.2),
    column('paper.lay.edge', 3.4),
  ];
  return { kind: 'table', columns, rows, ticked: true };
}

function offcutBlocks(offcuts: readonly Offcut[], ink: Ink): readonly FlowBlock[] {
  const told = (key: WordKey, values: WordValues = {}): string => say(key, values, ink.units);
  const rows = offcuts.map((offcut, i) => {
    const size = told('paper.lay.size', {
      along: clothLength(offcut.along, ink),
      across: clothLength(offcut.across, ink),
    });
    const twice = offcut.layers === 2 ? ` ${told('paper.lay.twice')}` : '';
    const uses = offcut.uses.map((use) => speak(use, ink.units)).join('; ');
    return [offcutLetter(i), `${size}${twice}`, uses];
  });
  const column = (key: WordKey, share: number) => ({ heading: told(key), share, align: 'left' }) as const;
  const columns = [
    column('paper.lay.letter', 1),
    column('paper.lay.measures', 5),
    column('paper.lay.uses', 8),
  ];
  return [
    { kind: 'heading', text: told('paper.lay.offcuts') },
    { kind: 'table', columns, rows, ticked: false },
  ];
}
