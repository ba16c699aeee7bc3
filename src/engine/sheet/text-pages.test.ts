import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { paperOf, printableSize } from './paper-format.ts';
import type { Ink, Mark, TextMark } from './scene.ts';
import { clippedText, wrapText } from './text.ts';
import { type FlowBlock, flowPages } from './text-pages.ts';

/** A font of which every letter is 0.6 of its size wide. */
const ink: Ink = { units: 'in', measure: { width: (text, size) => text.length * size * 0.6 } };
const settings = { paper: paperOf('a4'), ink, name: 'List', footer: 'a footer' };

interface Placed {
  readonly mark: TextMark;
  readonly y: number;
}

function placedTexts(marks: readonly Mark[], down = 0): readonly Placed[] {
  return marks.flatMap((mark) => {
    if (mark.kind === 'text') return [{ mark, y: mark.at.y + down }];
    return mark.kind === 'group' ? placedTexts(mark.marks, down + mark.frame.f) : [];
  });
}

const words = fc
  .array(fc.string({ minLength: 1, maxLength: 14 }), { minLength: 1, maxLength: 40 })
  .map((w) => w.join(' '));
const block: fc.Arbitrary<FlowBlock> = fc.oneof(
  words.map((text): FlowBlock => ({ kind: 'paragraph', text })),
  words.map((text): FlowBlock => ({ kind: 'heading', text: text.slice(0, 60) })),
  fc.array(words, { maxLength: 12 }).map((items): FlowBlock => ({ kind: 'ticks', items })),
  fc.array(fc.tuple(words, words), { maxLength: 15 }).map(
    (rows): FlowBlock => ({
      kind: 'table',
      ticked: true,
      rows,
      columns: [
        { heading: 'One', share: 2, align: 'left' },
        { heading: 'Two', share: 3, align: 'left' },
      ],
    }),
  ),
  fc
    .double({ min: 5, max: 120, noNaN: true })
    .map((height): FlowBlock => ({ kind: 'figure', height, draw: () => [] })),
);

describe('pages of text', () => {
  test('nothing is lost and nothing runs over the foot of a page', () => {
    fc.assert(
      fc.property(fc.array(block, { minLength: 1, maxLength: 25 }), (blocks) => {
        const pages = flowPages(blocks, settings);
        const { paper } = settings;
        const foot = paper.margin + printableSize(paper).height;
        const said = pages.flatMap((page) => placedTexts(page.marks));
        for (const { y } of said) {
          expect(y).toBeLessThanOrEqual(foot);
          expect(y).toBeGreaterThan(paper.margin);
        }
        const letters = (text: string): string => text.replace(/\s+/g, '');
        const all = letters(said.map(({ mark }) => mark.text).join(''));
        for (const b of blocks)
          if (b.kind === 'paragraph') expect(all.includes(letters(b.text).slice(0, 10))).toBe(true);
      }),
      { seed: 20260314, numRuns: 60 },
    );
  });

  test('a heading stays with what follows it', () => {
    for (let gap = 200; gap < 277; gap += 3) {
      const pages = flowPages(
        [
          { kind: 'gap', height: gap },
          { kind: 'heading', text: 'Satin' },
          { kind: 'paragraph', text: 'Buy two yards.' },
        ],
        settings,
      );
      const holding = pages.filter((page) =>
        placedTexts(page.marks).some(({ mark }) => mark.text === 'Satin'),
      );
      expect(holding).toHaveLength(1);
      expect(placedTexts(holding[0]?.marks ?? []).map(({ mark }) => mark.text)).toContain('Buy two yards.');
    }
  });

  test('pages carry the footer and their number; a new page begins where it is asked for', () => {
    const pages = flowPages(
      [
        { kind: 'new-page' },
        { kind: 'paragraph', text: 'one' },
        { kind: 'new-page' },
        { kind: 'paragraph', text: 'two' },
      ],
      settings,
    );
    expect(pages.map((page) => page.name)).toEqual(['List 1', 'List 2']);
    expect(placedTexts(pages[1]?.marks ?? []).map(({ mark }) => mark.text)).toEqual([
      'two',
      'a footer',
      '2 of 2',
    ]);
  });
});

describe('breaking lines', () => {
  test('no line is wider than the room, no letter is lost', () => {
    fc.assert(
      fc.property(words, fc.double({ min: 10, max: 120, noNaN: true }), (text, width) => {
        const lines = wrapText(ink.measure, text, 4, 'regular', width);
        for (const line of lines)
          if (line.length > 1)
            expect(ink.measure.width(line, 4, 'regular')).toBeLessThanOrEqual(width + 4 * 0.6 * 2);
        expect(lines.join('').replace(/\s/g, '').normalize('NFC')).toBe(
          text.replace(/\s/g, '').normalize('NFC'),
        );
      }),
      { seed: 20260314 },
    );
  });

  test('a length stays on one line', () => {
    const lines = wrapText(ink.measure, 'Measure down 2 9/16 in and mark the tip', 4, 'regular', 40);
    expect(lines.some((line) => line.includes('2 9/16 in'))).toBe(true);
  });

  test('a text that is cut short ends in an ellipsis and fits', () => {
    const cut = clippedText(ink.measure, 'Front bodice, Back bodice, Skirt', 4, 'regular', 40);
    expect(cut.endsWith('…')).toBe(true);
    expect(ink.measure.width(cut, 4, 'regular')).toBeLessThanOrEqual(40);
    expect(clippedText(ink.measure, 'Front', 4, 'regular', 40)).toBe('Front');
  });
});
