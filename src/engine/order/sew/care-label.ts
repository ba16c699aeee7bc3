import { CLOTH_KINDS, type ClothKind } from '../../check/index.ts';
import type { Garment } from '../../piece/index.ts';
import type { Saying, WordKey } from '../../words/index.ts';
import type { Order } from '../order.ts';
import { clothOf } from '../read-cloths.ts';

/** From what bears the most washing to what bears the least; the label follows the most delicate cloth. */
const CARE: Readonly<Record<ClothKind, WordKey>> = {
  cotton: 'sew.care.wash',
  lining: 'sew.care.gentle',
  crepe: 'sew.care.gentle',
  satin: 'sew.care.hand',
  taffeta: 'sew.care.hand',
  lace: 'sew.care.hand',
  net: 'sew.care.hand',
  organza: 'sew.care.hand',
  chiffon: 'sew.care.hand',
  velvet: 'sew.care.clean',
};
const FROM_HARDY: readonly WordKey[] = [
  'sew.care.wash',
  'sew.care.gentle',
  'sew.care.hand',
  'sew.care.clean',
];

/**
 * What to write on the care label: a line for the fibres of every cloth, which only she knows, and how it is washed.
 * Fibre content, maker and care are asked of clothes for sale (United States: 16 CFR 303 and 423; from memory).
 */
export function careLabel(order: Order, garment: Garment): readonly Saying[] {
  const cloths = new Map(
    garment.pieces.map(({ cloth }) => [clothOf(order.cloths, cloth).name, clothOf(order.cloths, cloth)]),
  );
  const kinds = [...cloths.values()].flatMap(({ kind }) => kind ?? []);
  const care = CLOTH_KINDS.filter((kind) => kinds.includes(kind)).map((kind) =>
    FROM_HARDY.indexOf(CARE[kind]),
  );
  const worst = FROM_HARDY[Math.max(...care, 1)] ?? 'sew.care.hand';
  return [
    ...[...cloths.keys()].map((cloth): Saying => ({ key: 'sew.care.fibres', values: { cloth } })),
    { key: worst, values: {} },
    ...(kinds.includes('net') ? [{ key: 'sew.care.fire', values: {} } as const] : []),
    { key: 'sew.care.maker', values: {} },
    { key: 'sew.care.law', values: {} },
  ];
}
