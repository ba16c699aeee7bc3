import { type ReactNode, useState } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import type { Page } from '../../../engine/sheet/index.ts';
import { say } from '../../../engine/words/index.ts';
import { Button } from '../../parts/button.tsx';
import { useUnits } from '../../session/use-session.ts';
import { PageMarks } from './page-drawing.tsx';

/** One page large over the page, to be read before it is printed; `index` null shows none. */
export function PageSheet({
  pages,
  index,
  onTurn,
}: {
  readonly pages: readonly Page[];
  readonly index: number | null;
  readonly onTurn: (index: number | null) => void;
}): ReactNode {
  const page = index === null ? undefined : pages[index];
  return (
    <ModalOverlay
      className="overlay"
      isOpen={page !== undefined}
      isDismissable
      onOpenChange={(open) => {
        if (!open) onTurn(null);
      }}
    >
      <Modal className="sheet paper-large">
        {page !== undefined && index !== null && (
          <OnePage page={page} index={index} count={pages.length} onTurn={onTurn} />
        )}
      </Modal>
    </ModalOverlay>
  );
}

function OnePage({
  page,
  index,
  count,
  onTurn,
}: {
  readonly page: Page;
  readonly index: number;
  readonly count: number;
  readonly onTurn: (index: number | null) => void;
}): ReactNode {
  const units = useUnits();
  const [near, setNear] = useState(false);
  return (
    <Dialog className="paper-large-inside">
      <div className="sheet-head">
        <Heading slot="title">
          {say('page.paper.page-of', { page: page.name, number: index + 1, count }, units)}
        </Heading>
        <Button look="quiet" onPress={() => onTurn(null)}>
          {say('page.close', {}, units)}
        </Button>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard. */}
      <div className="paper-large-room" tabIndex={0}>
        <svg
          viewBox={`0 0 ${page.width} ${page.height}`}
          className={near ? 'paper-white paper-near' : 'paper-white paper-whole'}
          style={
            near
              ? { width: `${page.width}mm`, height: `${page.height}mm` }
              : ({ '--ratio': page.width / page.height } as Record<string, number>)
          }
          role="img"
          aria-label={page.name}
        >
          <PageMarks page={page} />
        </svg>
      </div>
      <div className="row row-wrap">
        <Button disabled={index === 0} onPress={() => onTurn(index - 1)}>
          {say('page.paper.page-before', {}, units)}
        </Button>
        <Button disabled={index === count - 1} onPress={() => onTurn(index + 1)}>
          {say('page.paper.page-after', {}, units)}
        </Button>
        <Button look="quiet" onPress={() => setNear(!near)}>
          {say(near ? 'page.paper.whole' : 'page.paper.near', {}, units)}
        </Button>
      </div>
    </Dialog>
  );
}
