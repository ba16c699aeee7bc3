import { memo, type ReactNode, useMemo, useState } from 'react';
import type { Page } from '../../../engine/sheet/index.ts';
import { say } from '../../../engine/words/index.ts';
import { useUnits } from '../../session/use-session.ts';
import { useDesk } from './desk.ts';
import { PageMarks } from './page-drawing.tsx';
import { PageSheet } from './page-sheet.tsx';
import { joinedLayout, type PageLayout, type ShownPage, singlePages } from './sheet-map.ts';
import { usePapersShown } from './use-paper-look.ts';

/** The pages of the chosen paper on the table: joined as she tapes them, and the others beside. A tap shows one large. */
export function PaperTable(): ReactNode {
  const units = useUnits();
  const look = usePapersShown();
  const drawing = useDesk((desk) => desk.drawing);
  const [large, setLarge] = useState<number | null>(null);
  const joined = useMemo(() => (look === null ? null : joinedLayout(look.pages)), [look]);
  const single = useMemo(() => (look === null ? [] : singlePages(look.pages, joined)), [look, joined]);
  if (look === null) {
    return (
      <p className="paper-none quiet">{say(drawing ? 'page.paper.drawing' : 'page.paper.none', {}, units)}</p>
    );
  }
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard.
    <div className="paper-pages" data-drawing={drawing} tabIndex={0}>
      {look.pages.length === 0 && <p className="quiet">{say('page.paper.no-pages', {}, units)}</p>}
      {joined !== null && <JoinedPages layout={joined} onOpen={setLarge} />}
      {single.length > 0 && (
        <ul className="paper-singles">
          {single.map((shown) => (
            <li key={shown.index}>
              <SinglePage shown={shown} onOpen={setLarge} />
            </li>
          ))}
        </ul>
      )}
      <PageSheet pages={look.pages} index={large} onTurn={setLarge} />
    </div>
  );
}

const openName = (page: Page): string => say('page.paper.open-page', { page: page.name }, 'in');

const SinglePage = memo(function SinglePage({
  shown: { page, index },
  onOpen,
}: {
  readonly shown: ShownPage;
  readonly onOpen: (index: number) => void;
}): ReactNode {
  return (
    <button type="button" className="paper-single" aria-label={openName(page)} onClick={() => onOpen(index)}>
      <svg viewBox={`0 0 ${page.width} ${page.height}`} aria-hidden="true" className="paper-white">
        <PageMarks page={page} />
      </svg>
      <span className="small">{page.name}</span>
    </button>
  );
});

/** In hundredths of the whole, for buttons that lie over the drawing. */
const share = (part: number, whole: number): string => `${(100 * part) / whole}%`;

const JoinedPages = memo(function JoinedPages({
  layout: { pages, width, height },
  onOpen,
}: {
  readonly layout: PageLayout;
  readonly onOpen: (index: number) => void;
}): ReactNode {
  return (
    <div className="paper-joined" style={{ aspectRatio: `${width} / ${height}` }}>
      {pages.map(({ index, page, window, shift }) => {
        const [wide, high] = [window.maxX - window.minX, window.maxY - window.minY];
        return (
          <button
            key={index}
            type="button"
            className="paper-tile paper-white"
            aria-label={openName(page)}
            onClick={() => onOpen(index)}
            style={{
              left: share(window.minX, width),
              top: share(window.minY, height),
              width: share(wide, width),
              height: share(high, height),
            }}
          >
            <svg
              viewBox={`${window.minX - shift.x} ${window.minY - shift.y} ${wide} ${high}`}
              preserveAspectRatio="none"
              aria-hidden="true"
            >
              <PageMarks page={page} />
            </svg>
            <span className="paper-tile-name" aria-hidden="true">
              {page.name}
            </span>
          </button>
        );
      })}
    </div>
  );
});
