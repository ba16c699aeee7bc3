import { sewPlan } from '../../sew/index.ts';
import type { ChildReport } from '../check-order.ts';
import type { Order } from '../order.ts';
import { clothOf } from '../read-cloths.ts';
import { CLOTH_ROLES } from '../schema.ts';

/** How long the sewing plan of a child's dress takes, min; null where it can't be sewn as it is designed. */
export function sewingMinutes(order: Order, { dress: { garment }, pieces }: ChildReport): number | null {
  const clothKinds = Object.fromEntries(CLOTH_ROLES.map((role) => [role, clothOf(order.cloths, role).kind]));
  const result = sewPlan({ garment, cut: pieces, clothKinds });
  return result.ok ? result.plan.minutes : null;
}
