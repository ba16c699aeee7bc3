import { DESIGN_STEPS, type DesignStep, tell } from '../engine/design/index.ts';
import { say } from '../engine/words/index.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';

/** Lists the design steps that a dress can be made of, with the numbers that each takes. */
export function stepsCommand(io: Io, json: boolean): ExitCode {
  if (json) io.out(`${JSON.stringify({ ok: true, steps: DESIGN_STEPS.map(stepData) }, null, 2)}\n`);
  else io.out(`${DESIGN_STEPS.map((step) => stepLines(step).join('\n')).join('\n\n')}\n`);
  return EXIT.fine;
}

const told = (key: string): string => tell({ key, values: {} }, 'cm');

type AnyParam = DesignStep['params'][string];

function stepLines({ id, params }: DesignStep): readonly string[] {
  const wide = Math.max(...Object.keys(params).map((name) => name.length));
  return [
    `${id}: ${told(`${id}.about`)}`,
    ...Object.entries(params).map(
      ([name, param]) =>
        `  ${name.padEnd(wide)}  ${told(`${id}.${name}`)}: ${kindOf(`${id}.${name}`, param)}`,
    ),
  ];
}

function kindOf(key: string, param: AnyParam): string {
  if (param.kind !== 'choice') return say(`cli.steps.${param.kind}`, {}, 'cm');
  return param.choices.map((choice) => `${choice} (${told(`${key}.${choice}`)})`).join('; ');
}

const stepData = ({ id, stage, kind, params }: DesignStep): object => ({
  step: id,
  stage,
  kind,
  about: told(`${id}.about`),
  params: Object.entries(params).map(([name, param]) => ({
    name,
    kind: param.kind,
    about: told(`${id}.${name}`),
    ...(param.kind === 'choice' ? { choices: param.choices } : {}),
    source: param.source,
  })),
});
