import {
  type ChildDrawing,
  drawChild,
  type Order,
  type OrderFile,
  readOrderValue,
} from '../../engine/order/index.ts';

/** An invented child of four. */
export const GUIDE_CHILD = 'Ada';

const DRESS: NonNullable<OrderFile['dress']> = [
  { step: 'neckline', shape: 'round' },
  { step: 'drop-shoulder', finish: 'cap-rounded' },
  { step: 'yoke', line: 'curved' },
  { step: 'back-zip' },
  { step: 'gathered-skirt' },
  { step: 'lining', cut: 'whole' },
];

const orderWith = (dress: typeof DRESS): OrderFile => ({
  frockwright: 1,
  title: 'Guide',
  dueDay: '2027-06-12',
  madeOn: '2027-05-01',
  units: 'in',
  cloths: [
    { name: 'satin', use: ['main', 'skirt'], kind: 'satin', width: '58' },
    { name: 'net', use: ['yoke'], kind: 'net', width: '54' },
    { name: 'lawn', use: ['lining'], kind: 'cotton', width: '44' },
  ],
  block: { method: 'sixth-of-neck' },
  dress,
  children: [
    {
      name: GUIDE_CHILD,
      born: '2023-03-01',
      measures: {
        height: '41',
        chestGirth: '22',
        waistGirth: '21',
        backNeckToWaist: '9 1/2',
        shoulderLength: '3 1/4',
      },
    },
  ],
});

export interface GuideDress {
  readonly order: Order;
  readonly drawing: ChildDrawing;
}

/** The dress of the guide, and the bodice under it before anything but the neck is changed. */
export const guideDress = (): GuideDress => drawn(orderWith(DRESS));
export const guideBlock = (): GuideDress => drawn(orderWith(DRESS.slice(0, 1)));

function drawn(file: OrderFile): GuideDress {
  const read = readOrderValue(file);
  const [child] = read.ok ? read.order.children : [];
  if (!read.ok || child === undefined) throw new Error('The order of the guide must be an order.');
  const result = drawChild(read.order, child, file.madeOn ?? '');
  if (!result.ok) throw new Error('The dress of the guide must be drawn.');
  return { order: read.order, drawing: result.drawing };
}
