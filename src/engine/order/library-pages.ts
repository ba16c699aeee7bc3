import { completeBody } from '../body/index.ts';
import { designDress, LIBRARY, tell } from '../design/index.ts';
import { type FlowBlock, flowPages, type Ink, type Page, type Paper, sketchFigure } from '../sheet/index.ts';
import { sketchDress } from '../sketch/index.ts';
import { say, type WordKey } from '../words/index.ts';

/** The sketches are of a child in the middle of the ages, in cloth 140 cm wide. */
const AGE_MONTHS = 72;
const CLOTH = 1400;
const PER_PAGE = 2;
/** So tall that as many dresses fit on a small page, mm. */
const TALLEST_SKETCH = 92;

/** Every dress of the library, front and back, with its name and a line about it. */
export function libraryPages(paper: Paper, ink: Ink): readonly Page[] {
  const told = (key: string): string => tell({ key, values: {} }, ink.units);
  const name = say('order.library.title', {}, ink.units);
  const blocks: FlowBlock[] = [{ kind: 'title', text: name }];
  for (const [i, { id, steps }] of LIBRARY.entries()) {
    const completed = completeBody({ ageMonths: AGE_MONTHS, measured: {} });
    if (!completed.ok) throw new Error('The middle child of an age has a body.');
    const dress = designDress({
      body: completed.body,
      block: { kind: 'drafted', given: {} },
      steps,
      clothWidth: { main: CLOTH, yoke: CLOTH, skirt: CLOTH, lining: CLOTH, net: CLOTH, trim: CLOTH },
      units: ink.units,
      ruler: null,
    });
    if (!dress.ok) throw new Error(`The library's dress "${id}" can't be drawn.`);
    if (i > 0 && i % PER_PAGE === 0) blocks.push({ kind: 'new-page' });
    blocks.push(
      { kind: 'heading', text: told(`dress.${id}`) },
      { kind: 'paragraph', text: told(`dress.${id}.about`) },
      sketchFigure(
        (['front', 'back'] as const).map((side) => ({
          sketch: sketchDress(dress.garment, side),
          caption: say(`order.dress.${side}` satisfies WordKey, {}, ink.units),
        })),
        paper,
        TALLEST_SKETCH,
      ),
    );
  }
  return flowPages(blocks, { paper, ink, name, footer: name });
}
