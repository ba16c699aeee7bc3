import { checkOrder, mustNotBeCut } from '../engine/order/index.ts';
import { say } from '../engine/words/index.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { openOrder } from './order-file.ts';
import { orderRefusal, sayRefusal } from './refusal.ts';
import { findingLines, reportData } from './tables.ts';

export interface CheckWish {
  readonly json: boolean;
  /** Tell what fits as well. */
  readonly all: boolean;
}

/** Draws every dress of an order and says what was found, without writing anything. */
export async function checkCommand(io: Io, file: string, { json, all }: CheckWish): Promise<ExitCode> {
  const opened = await openOrder(io, file);
  if (!opened.ok) return sayRefusal(io, opened, json);
  const { order } = opened;
  const report = checkOrder(order, io.today());
  if (!report.ok) return sayRefusal(io, orderRefusal(report.problems, order.units), json);
  const barred = report.children.filter(mustNotBeCut);
  if (json) {
    const children = report.children.map((child) => reportData(child, order.units));
    io.out(`${JSON.stringify({ ok: barred.length === 0, children }, null, 2)}\n`);
  } else {
    for (const child of report.children) io.out(`${findingLines(child, order.units, all).join('\n')}\n\n`);
    const names = barred.map(({ name }) => name).join(', ');
    const verdict =
      barred.length === 0
        ? say('cli.check.go', {}, order.units)
        : say('cli.check.stop', { names }, order.units);
    io.out(`${verdict}\n`);
  }
  return barred.length === 0 ? EXIT.fine : EXIT.stop;
}
