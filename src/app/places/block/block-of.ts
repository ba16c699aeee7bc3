import { draftBlock, measureHalf, type OwnHalf } from '../../../engine/block/index.ts';
import { createBench } from '../../../engine/construct/index.ts';
import type { ChildFile, OrderFile, PaperBlockFile } from '../../../engine/order/index.ts';
import { formatLength, type UnitSystem } from '../../../engine/units/index.ts';
import type { Session } from '../../session/session.ts';
import type { ChildWork } from '../../session/work.ts';
import { holderOf, type Scope } from '../scope.ts';

type BlockKind = 'party' | 'drafted' | 'paper';

type BlockFields = Pick<ChildFile, 'block' | 'paperBlock'>;

/** The fields that hold a block: of the order, or of one child. */
export const fieldsOf = (file: OrderFile, scope: Scope): BlockFields => holderOf(file, scope) ?? {};

/** Gives a number of the block, or takes it back (`undefined`), so that its rule holds again. */
export function setBlockParam(
  file: OrderFile,
  scope: Scope,
  param: string,
  value: string | number | undefined,
): void {
  const fields = fieldsOf(file, scope);
  const block: Record<string, string | number | boolean | undefined> = { ...fields.block };
  if (value === undefined) delete block[param];
  else block[param] = value;
  fields.block = block as NonNullable<OrderFile['block']>;
}

export function blockOf(file: OrderFile, scope: Scope): { readonly kind: BlockKind } {
  const { block, paperBlock } = fieldsOf(file, scope);
  if (paperBlock !== undefined) return { kind: 'paper' };
  return { kind: block === undefined && scope !== 'party' ? 'party' : 'drafted' };
}

/** Chooses another kind of block. A paper block begins with the measures of the block that is drawn now. */
export function setBlockKind(session: Session, scope: Scope, kind: BlockKind, shown: ChildWork): void {
  const { units } = session.state.getState().file;
  const label =
    scope === 'party'
      ? { key: 'page.did.block', values: { what: { word: `page.block.kind.${kind}` } } }
      : {
          key: 'page.did.block-of',
          values: { child: shown.name, what: { word: `page.block.kind.${kind}` } },
        };
  session.change(label, (file) => {
    const fields = fieldsOf(file, scope);
    if (kind !== 'paper') delete fields.paperBlock;
    if (kind === 'paper') {
      const child = file.children[session.state.getState().child];
      fields.paperBlock = { ...paperOf(shown, units), fits: whomItFits(shown, child?.measures) };
      delete fields.block;
    } else if (kind === 'drafted') fields.block ??= {};
    else delete fields.block;
  });
}

function paperOf({ report }: ChildWork, units: UnitSystem): PaperBlockFile {
  const halves = report === null ? null : drawnHalves(report.dress, units);
  const told = (half: OwnHalf | undefined): PaperBlockFile['front'] => {
    const length = (mm: number | undefined): string => (mm === undefined ? '' : formatLength(mm, units));
    return {
      neckWidth: length(half?.neckWidth),
      neckDepth: length(half?.neckDepth),
      shoulder: length(half?.shoulder),
      shoulderFall: length(half?.shoulderFall),
      armholeDepth: length(half?.armholeDepth),
      armholeHollow: length(half?.armholeHollow),
      chestWidth: length(half?.chestWidth),
      waistWidth: length(half?.waistWidth),
      sideWaistLevel: length(half?.sideWaistLevel),
      centreLength: length(half?.centreLength),
    };
  };
  return { front: told(halves?.front), back: told(halves?.back) };
}

/** The paper begins as the block of the child that is shown, so she is the one whom it fits. */
function whomItFits({ report }: ChildWork, measures: ChildFile['measures']): PaperBlockFile['fits'] {
  const ageMonths = report?.dress.body.ageMonths ?? null;
  return {
    ...(ageMonths === null ? {} : { ageMonths }),
    ...(measures === undefined ? {} : { measures: { ...measures } }),
  };
}

type Drawn = NonNullable<ChildWork['report']>['dress'];

function drawnHalves({ body, child }: Drawn, units: UnitSystem): { front: OwnHalf; back: OwnHalf } | null {
  const drafted = draftBlock(createBench(), body, child.block.choice, units);
  if (!drafted.ok) return null;
  return { front: measureHalf(drafted.block.front), back: measureHalf(drafted.block.back) };
}
