import { DESIGN_STEPS, type DesignStep, type STAGES } from '../../../engine/design/index.ts';
import type { ListedStep } from './dress-list.ts';

/** The parts of a dress under which its steps are listed and found, in the order in which she thinks of them. */
export const GROUPS = [
  'figure',
  'bodice',
  'neck',
  'sleeve',
  'opening',
  'skirt',
  'lining',
  'finish',
  'trim',
  'own',
] as const;
export type Group = (typeof GROUPS)[number];

const GROUP_OF = {
  figure: 'figure',
  marking: 'figure',
  shape: 'bodice',
  fitting: 'bodice',
  'style-line': 'bodice',
  panel: 'bodice',
  shoulder: 'bodice',
  neck: 'neck',
  sleeve: 'sleeve',
  'set-in': 'sleeve',
  closing: 'opening',
  opening: 'opening',
  skirt: 'skirt',
  'hem-line': 'skirt',
  'over-skirt': 'skirt',
  lining: 'lining',
  finish: 'finish',
  trim: 'trim',
  own: 'own',
} as const satisfies Readonly<Record<(typeof STAGES)[number], Group>>;

export const groupOf = ({ stage }: DesignStep): Group => GROUP_OF[stage];

export interface Addable {
  readonly known: DesignStep;
  readonly group: Group;
  /** The step that gives way to it. */
  readonly instead: ListedStep | null;
}

/** The steps that can be added to a dress: all but those that stand in it once already. */
export function addableSteps(listed: readonly ListedStep[]): readonly Addable[] {
  return DESIGN_STEPS.flatMap((known): readonly Addable[] => {
    const isThere = listed.some(({ step, on }) => step === known.id && on);
    if (isThere && known.kind !== null) return [];
    const instead = listed.find(
      ({ on, known: other }) => on && known.kind !== null && other.kind === known.kind,
    );
    return [{ known, group: groupOf(known), instead: instead ?? null }];
  });
}

/** Whether a step is meant by what she types: every word begins a word of its name, or stands in the line about it. */
export function isMeant({ words: { title = '', about = '' } }: DesignStep, typed: string): boolean {
  const [name, line] = [title.toLowerCase(), about.toLowerCase()];
  return typed
    .toLowerCase()
    .split(/[\s-]+/)
    .filter((word) => word !== '')
    .every((word) => name.split(/[\s-]+/).some((part) => part.startsWith(word)) || line.includes(word));
}
