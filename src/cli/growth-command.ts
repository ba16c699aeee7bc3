import { dayText, growthBand, MEASURE_IDS } from '../engine/body/index.ts';
import {
  type GrowthReport,
  type GrowthSection,
  growthReport,
  growthSections,
  growthSheet,
  type OrderChild,
} from '../engine/order/index.ts';
import { say } from '../engine/words/index.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { openOrder } from './order-file.ts';
import { sayRefusal } from './refusal.ts';
import { sheetProblem, writeSheet } from './write-sheet.ts';

export interface GrowthWish {
  /** A new PDF file for the reports with their charts; null for none. */
  readonly sheet: string | null;
  readonly json: boolean;
}

/** Says where each child of an order stands among children of the age, and what it will measure on the due day. */
export async function growthCommand(io: Io, file: string, { sheet, json }: GrowthWish): Promise<ExitCode> {
  const opened = await openOrder(io, file);
  if (!opened.ok) return sayRefusal(io, opened, json);
  const { order } = opened;
  const wrong = sheetProblem(sheet);
  if (wrong !== null) return sayRefusal(io, wrong, json);
  const reports = order.children.map((child) => ({ child, report: growthReport(order, child, io.today()) }));
  if (sheet !== null) {
    return writeSheet(io, order, { file: sheet, title: 'growth.page.name', json }, (tools) =>
      reports.flatMap(({ child, report }) => growthSheet(order, child, report, tools)),
    );
  }
  if (json) {
    const children = reports.map(({ child, report }) => growthData(child, report));
    io.out(`${JSON.stringify({ ok: true, children }, null, 2)}\n`);
  } else {
    for (const { child, report } of reports) {
      const lines = growthSections(child, report, order.units).flatMap(sectionLines);
      io.out(`${lines.join('\n')}\n\n`);
    }
    if (reports.some(({ report }) => report.kind === 'told')) {
      io.out(`${say('growth.limits.girths', {}, order.units)}\n`);
    }
  }
  return EXIT.fine;
}

function sectionLines({ heading, rows, sentences }: GrowthSection, i: number): readonly string[] {
  const wide = Math.max(0, ...rows.map(({ name }) => name.length));
  return [
    i === 0 ? heading : `  ${heading}`,
    ...rows.map(({ name, text }) => `    ${name.padEnd(wide)}  ${text}`),
    ...sentences.map((sentence) => `    ${sentence}`),
  ];
}

/** The same for other programs: mm, kg, months and standard deviations. */
function growthData({ name }: OrderChild, report: GrowthReport): object {
  if (report.kind === 'no-days')
    return { name, told: false, problems: ['growth.report.no-days'], labels: report.labels };
  if (report.kind === 'refused')
    return { name, told: false, problems: report.problems.map(({ code }) => code) };
  const { grown, warnings, standing, advice, labels, chestEase } = report.told;
  const values = MEASURE_IDS.flatMap((measure) => {
    const value = grown.values[measure];
    return value === undefined ? [] : [{ measure, ...value, band: growthBand(grown, measure) }];
  });
  return {
    name,
    told: true,
    problems: warnings.map(({ code }) => code),
    ages: grown.ages,
    standing,
    values,
    weight: grown.weight,
    chestEase,
    advice:
      advice === null
        ? null
        : {
            ...advice,
            measureAgain: { ...advice.measureAgain, day: dayText(advice.measureAgain.day) },
            oneSizeMore:
              advice.oneSizeMore === null
                ? null
                : {
                    ...advice.oneSizeMore,
                    reached: advice.oneSizeMore.reached === null ? null : dayText(advice.oneSizeMore.reached),
                  },
          },
    labels,
  };
}
