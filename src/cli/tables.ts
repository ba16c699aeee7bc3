import { tell } from '../engine/design/index.ts';
import { type ChildReport, type Finding, LEVELS, sizeText } from '../engine/order/index.ts';
import type { UnitSystem } from '../engine/units/index.ts';
import { say } from '../engine/words/index.ts';

/** What was found about one child's dress, for reading on a screen; what fits is only counted unless asked for. */
export function findingLines(report: ChildReport, units: UnitSystem, withFits: boolean): readonly string[] {
  const { name, findings, dress } = report;
  const shown = findings.filter(({ level }) => withFits || level !== 'ok');
  const fits = findings.length - shown.length;
  const short = LEVELS.map((level) => say(`order.level.${level}.short`, {}, units).length);
  const wide = Math.max(...short);
  return [
    `${name} (${sizeText(dress.body, units)})`,
    ...shown.flatMap(({ level, say: what, todo }) => [
      `  ${say(`order.level.${level}.short`, {}, units).padEnd(wide)}  ${tell(what, units)}`,
      ...(todo === null ? [] : [`  ${' '.repeat(wide)}  ${tell(todo, units)}`]),
    ]),
    ...(fits === 0 ? [] : [`  ${say('cli.check.fits', { count: fits }, units)}`]),
  ];
}

/** The same for other programs: numbers in mm, degrees or counts as the checks give them. */
export function findingData({ code, level, say: what, todo }: Finding, units: UnitSystem): object {
  return {
    code,
    level,
    values: what.values,
    sentence: tell(what, units),
    advice: todo === null ? null : tell(todo, units),
  };
}

export const reportData = (report: ChildReport, units: UnitSystem): object => ({
  name: report.name,
  findings: report.findings.map((finding) => findingData(finding, units)),
});
