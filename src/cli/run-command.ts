import { Command, CommanderError } from 'commander';
import { say } from '../engine/words/index.ts';
import { type AverageWish, averageCommand } from './average-command.ts';
import { type BillWish, billCommand, workroomCommand } from './bill-command.ts';
import { checkCommand } from './check-command.ts';
import { dressesCommand } from './dresses-command.ts';
import { exampleCommand } from './example-command.ts';
import { growthCommand } from './growth-command.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { type LayWish, layCommand } from './lay-command.ts';
import { measuresCommand } from './measures-command.ts';
import { packCommand } from './pack-command.ts';
import { refusal, sayRefusal } from './refusal.ts';
import { type SewWish, sewCommand } from './sew-command.ts';
import { stepsCommand } from './steps-command.ts';

/**
 * Runs one command of the program, `argv` without the program's own name, and gives its exit code. Whatever goes
 * wrong is told as a sentence; nothing is thrown.
 */
export async function runCommand(argv: readonly string[], io: Io): Promise<ExitCode> {
  let exit: ExitCode = EXIT.fine;
  const program = createProgram(io, (code) => {
    exit = code;
  });
  try {
    await program.parseAsync(argv.length === 0 ? ['--help'] : [...argv], { from: 'user' });
    return exit;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.fine : EXIT.unusable;
    const what = error instanceof Error ? error.message : String(error);
    return sayRefusal(io, refusal(EXIT.fault, 'cli.fault', { what }), argv.includes('--json'));
  }
}

const JSON_HELP = 'say it as JSON, for other programs';

/** The options without a value; one that was not given is not there. */
type Flags = Readonly<
  Partial<Record<'batches' | 'replace' | 'evenSo' | 'progress' | 'all' | 'json' | 'boy' | 'inches', boolean>>
>;
type MeasuresGiven = Readonly<Partial<Record<'steps' | 'sheet' | 'child', string>>>;
type BillGiven = Omit<BillWish, 'json'>;
type LayGiven = Omit<LayWish, 'json'>;
type SewGiven = Pick<SewWish, 'child' | 'sheet'>;
type AverageGiven = Pick<AverageWish, 'age' | 'height' | 'weight'>;

function createProgram(io: Io, finish: (code: ExitCode) => void): Command {
  const program = new Command('frockwright')
    .description(
      "Makes checked, true-size patterns for children's occasion dresses from an order: who wears them, what they are made of, and the design.",
    )
    .helpCommand(false)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => io.out(text),
      writeErr: (text) => io.err(text),
      outputError: (text, write) => write(asSentence(text)),
    })
    .addHelpText(
      'after',
      `
Begin with the example:
  frockwright example my-order.json    then change what it says
  frockwright check my-order.json      see what fits before anything is printed
  frockwright pack my-order.json       make the folder of patterns

What it hands back to the shell: ${say('cli.exits', {}, 'cm')}`,
    );

  program
    .command('pack')
    .description('make all the papers of an order: patterns, cut lists, checks, sheets for drawing by hand')
    .argument('<order>', 'the order, a .json file')
    .option('--into <folder>', 'where to put them (else a folder named after the order, beside it)')
    .option('--replace', 'take the place of an older pack in that folder')
    .option('--even-so', 'make them although a check says that something must not be cut; it is marked')
    .option('--progress', 'say each step on a line of its own')
    .option('--json', JSON_HELP)
    .action(async (file: string, { into, ...given }: Flags & { into?: string }) => {
      const { replace = false, evenSo = false, progress = false, json = false } = given;
      finish(await packCommand(io, file, { into: into ?? null, replace, evenSo, progress, json }));
    });

  program
    .command('lay')
    .description('lay all pieces of an order on their cloths with as little cloth as can be, and draw it')
    .argument('<order>', 'the order, a .json file')
    .option(
      '--seconds <seconds>',
      'how long to search on all cloths together (else 60); Ctrl-C ends it sooner',
    )
    .option('--tries <count>', 'search by so many tries on each cloth instead: always the same lay')
    .option('--seed <number>', 'another search gives another lay')
    .option('--child <name>', 'one child alone (else all together)')
    .option('--sheet <file>', 'draw the lays into this new file: .pdf, or .svg for each page a file')
    .option('--json', JSON_HELP)
    .action(async (file: string, { json = false, ...given }: Flags & LayGiven) =>
      finish(await layCommand(io, file, { ...given, json })),
    );

  program
    .command('sew')
    .description(
      'say in which order the dresses are sewn, with reasons, minutes (by your own times in this order), and what can hurt a child',
    )
    .argument('<order>', 'the order, a .json file')
    .option('--child <name>', 'one child alone (else all of the order)')
    .option('--batches', 'one step for all children, then the next')
    .option('--sheet <file>', 'write the plan with its drawings into this new PDF file')
    .option('--json', JSON_HELP)
    .action(async (file: string, { batches = false, json = false, ...given }: Flags & SewGiven) =>
      finish(await sewCommand(io, file, { ...given, batches, json })),
    );

  program
    .command('bill')
    .description('say what an order takes, costs and when it is worked on, and write quotes, lists and bills')
    .argument('<order>', 'the order, a .json file')
    .option('--workroom <file>', 'your prices, rates, hours and what you have, a .json file')
    .option(
      '--papers <list>',
      'shopping, timetable, quote, invoice, receipt, calendar: any of them, by commas',
    )
    .option('--into <folder>', 'where to write them (else here)')
    .option('--number <number>', 'of the invoice or the receipt; one that was never used')
    .option('--names <names>', 'what a calendar calls the order: title (else), letters, or children')
    .option('--json', JSON_HELP)
    .action(async (file: string, { json = false, ...given }: Flags & BillGiven) =>
      finish(await billCommand(io, file, { ...given, json })),
    );

  program
    .command('workroom')
    .description('write a workroom to begin with: prices, rates, hours of work, what lies in the cupboard')
    .argument('[file]', 'a new file to write it to (else it is printed here)')
    .option('--json', JSON_HELP)
    .action(async (file: string | undefined, { json = false }: Flags) =>
      finish(await workroomCommand(io, file ?? null, json)),
    );

  program
    .command('check')
    .description('say what fits in an order and what does not, without writing anything')
    .argument('<order>', 'the order, a .json file')
    .option('--all', 'say what fits as well')
    .option('--json', JSON_HELP)
    .action(async (file: string, { all = false, json = false }: Flags) =>
      finish(await checkCommand(io, file, { all, json })),
    );

  program
    .command('measures')
    .description('say which measurements a dress needs, which are known, and how the others are taken')
    .argument('[order]', 'the order, a .json file')
    .option('--steps <list>', 'a design instead of an order: its steps, as in neckline,yoke,pleated-skirt')
    .option('--sheet <file>', 'draw measuring sheets with blanks to fill in into this new PDF file')
    .option('--child <name>', 'one child alone (else all of the order)')
    .option('--json', JSON_HELP)
    .action(async (file: string | undefined, given: Flags & MeasuresGiven) => {
      const { steps = '', sheet = null, child = null, json = false } = given;
      const list = steps.split(',').flatMap((step) => step.trim() || []);
      finish(await measuresCommand(io, { file: file ?? null, steps: list, sheet, child, json }));
    });

  program
    .command('growth')
    .description('say where each child stands, what it will measure on the day, and what room to leave')
    .argument('<order>', 'the order, a .json file')
    .option('--sheet <file>', 'draw it with growth charts into this new PDF file')
    .option('--json', JSON_HELP)
    .action(async (file: string, { sheet, json = false }: Flags & { sheet?: string }) =>
      finish(await growthCommand(io, file, { sheet: sheet ?? null, json })),
    );

  program
    .command('average')
    .description('say what children of an age, a height, or a height and weight measure on average')
    .option('--age <months>', 'in months')
    .option('--height <length>', 'with its unit, as in "116 cm"')
    .option('--weight <weight>', 'with its unit, as in "21 kg"; goes with a height')
    .option('--boy', 'a boy (else a girl)')
    .option('--inches', 'say it in inches (else in centimetres)')
    .option('--json', JSON_HELP)
    .action(({ boy = false, inches = false, json = false, ...given }: Flags & AverageGiven) =>
      finish(averageCommand(io, { ...given, boy, inches, json })),
    );

  program
    .command('steps')
    .description('list the design steps that a dress can be made of')
    .option('--json', JSON_HELP)
    .action(({ json = false }: Flags) => finish(stepsCommand(io, json)));

  program
    .command('dresses')
    .description('list the dresses to begin with')
    .option('--sheet <file>', 'draw them, front and back, into this new PDF file')
    .option('--json', JSON_HELP)
    .action(async ({ sheet, json = false }: Flags & { sheet?: string }) =>
      finish(await dressesCommand(io, sheet ?? null, json)),
    );

  program
    .command('example')
    .description('write an order to begin with: flower girls for a wedding')
    .argument('[file]', 'a new file to write it to (else it is printed here)')
    .option('--json', JSON_HELP)
    .action(async (file: string | undefined, { json = false }: Flags) =>
      finish(await exampleCommand(io, file ?? null, json)),
    );
  return program;
}

/** The library begins its messages with "error:" in small letters and ends them without a stop. */
function asSentence(text: string): string {
  const plain = text
    .replace(/^error: /, '')
    .trim()
    .replace(/\n\((.*)\)$/, '. $1');
  return `${plain.slice(0, 1).toUpperCase()}${plain.slice(1)}${/[.?]$/.test(plain) ? '' : '.'}\n`;
}
