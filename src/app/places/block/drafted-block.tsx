import { type ReactNode, useState } from 'react';
import { BLOCK_PARAMS } from '../../../engine/block/index.ts';
import type { Body } from '../../../engine/body/index.ts';
import { parseLength } from '../../../engine/units/index.ts';
import { say } from '../../../engine/words/index.ts';
import { Choice } from '../../parts/choice.tsx';
import { LengthField } from '../../parts/length-field.tsx';
import { MoreLink } from '../../parts/more-link.tsx';
import { inUnits } from '../../parts/shown-length.ts';
import { useChild, useOrderFile, useProblemAt, useSession, useUnits } from '../../session/use-session.ts';
import { pathOf, type Scope } from '../scope.ts';
import { fieldsOf, setBlockParam } from './block-of.ts';

const LENGTHS = [
  'chestEase',
  'waistEase',
  'frontShoulderFall',
  'backShoulderFall',
  'backNeckDepth',
  'tummy',
] as const satisfies readonly (keyof typeof BLOCK_PARAMS)[];
type LengthName = (typeof LENGTHS)[number];

const METHODS = BLOCK_PARAMS.method.choices;
type Method = (typeof METHODS)[number];

/** The method, and the lengths that the maker may set over its rules. */
export function DraftedBlock({ scope }: { readonly scope: Scope }): ReactNode {
  const session = useSession();
  const units = useUnits();
  const { work } = useChild();
  const method = useMethod(scope);
  const problem = useProblemAt(`${pathOf(scope)}block.method`);
  return (
    <div className="stack">
      <Choice
        label={say('page.block.method', {}, units)}
        value={method}
        problem={problem}
        options={METHODS.map((id) => ({
          id,
          text: say(`page.block.method.${id}`, {}, units),
          about: say(`page.block.method.${id}.about`, {}, units),
        }))}
        about={say(`page.block.method.${method}.about`, {}, units)}
        onChange={(chosen) =>
          session.change(labelOf(scope, work.name, 'page.block.method'), (file) =>
            setBlockParam(file, scope, 'method', chosen),
          )
        }
      />
      <div className="fields">
        {LENGTHS.map((name) => (
          <BlockLength key={name} name={name} scope={scope} method={method} />
        ))}
      </div>
    </div>
  );
}

const labelOf = (scope: Scope, child: string, word: string) =>
  scope === 'party'
    ? { key: 'page.did.block', values: { what: { word } } }
    : { key: 'page.did.block-of', values: { child, what: { word } } };

function useMethod(scope: Scope): Method {
  const given = useOrderFile((file) => fieldsOf(file, scope).block?.method ?? file.block?.method);
  return METHODS.find((id) => id === given) ?? 'sixth-of-neck';
}

function BlockLength({
  name,
  scope,
  method,
}: {
  readonly name: LengthName;
  readonly scope: Scope;
  readonly method: Method;
}): ReactNode {
  const session = useSession();
  const units = useUnits();
  const { work } = useChild();
  const [ruleShown, setRuleShown] = useState(false);
  const given = useOrderFile((file) => fieldsOf(file, scope).block?.[name]);
  const ofParty = useOrderFile((file) => (scope === 'party' ? undefined : file.block?.[name]));
  const problem = useProblemAt(`${pathOf(scope)}block.${name}`);
  const path = `${pathOf(scope)}block.${name}`;
  const word = say(`page.block.${name}`, {}, units);
  const body = work.report?.dress.body ?? null;
  const before = lengthBefore(name, method, body, ofParty, units);
  const value = typeof given === 'boolean' ? undefined : given;
  const overRule =
    before === null || value === undefined
      ? null
      : say(
          before.isParty ? 'page.block.by-order' : 'page.block.by-rule',
          { length: { mm: before.mm } },
          units,
        );
  return (
    <LengthField
      label={word}
      value={value}
      units={units}
      byRule={before === null ? '' : inUnits(before.mm, units)}
      problem={problem}
      about={ruleShown ? say('page.block.source', { source: BLOCK_PARAMS[name].source }, units) : overRule}
      aside={
        <MoreLink
          word={say('page.block.rule', {}, units)}
          name={say('page.block.rule.what', { what: word }, units)}
          open={ruleShown}
          onChange={setRuleShown}
        />
      }
      onDone={session.settle}
      onChange={(text) =>
        session.change(
          labelOf(scope, work.name, `page.block.${name}`),
          (file) => setBlockParam(file, scope, name, text),
          { cause: path },
        )
      }
    />
  );
}

/** The length that holds while the field is empty: the order's for a child, or else that of the rule. */
function lengthBefore(
  name: LengthName,
  method: Method,
  body: Body | null,
  ofParty: string | number | boolean | undefined,
  units: 'in' | 'cm',
): { readonly mm: number; readonly isParty: boolean } | null {
  if (ofParty !== undefined && typeof ofParty !== 'boolean') {
    const read = parseLength(ofParty, units);
    if (read.ok) return { mm: read.mm, isParty: true };
  }
  return body === null ? null : { mm: BLOCK_PARAMS[name].rule({ body, method }), isParty: false };
}
