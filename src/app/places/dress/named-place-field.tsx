import { type ReactNode, useEffect, useState } from 'react';
import type { StepContext } from '../../../engine/design/index.ts';
import type { Piece } from '../../../engine/piece/index.ts';
import { say } from '../../../engine/words/index.ts';
import { Choice, type Option } from '../../parts/choice.tsx';
import { useChild } from '../../session/use-session.ts';
import { useLook, useLooking } from '../../shell/looking.ts';
import { edgeTitle, pieceTitle, type TablePlace } from '../../table/index.ts';
import type { Scope } from '../scope.ts';
import { setParam } from './change-dress.ts';
import { didSaying, useDesk } from './dress-desk.ts';
import { givenAt, type ListedStep } from './dress-list.ts';
import type { StepParam } from './step-facts.ts';

/** In lists of pieces: every outer piece that has the edge. */
const ALL = 'all';

/** A piece or an edge of the dress, chosen by its name or by touching it on the table. */
export function NamedPlaceField(props: {
  readonly listed: ListedStep;
  readonly scope: Scope;
  readonly name: string;
  readonly context: StepContext | null;
  readonly names: NonNullable<Extract<StepParam, { kind: 'text' }>['names']>;
  readonly label: string;
  readonly value: string;
  readonly problem: string | null;
  readonly onChange: (value: string) => void;
}): ReactNode {
  const { listed, scope, name, names, context, label, value, problem, onChange } = props;
  const { units } = useDesk();
  const { work } = useChild();
  const garment = context?.garment ?? work.report?.dress.garment;
  const pieces = garment?.pieces ?? [];
  const { picking, start, leave } = usePick(props);
  const options =
    names === 'edge'
      ? edgeOptions(pieces, pieceNamed(listed, scope, context), units)
      : [
          ...(names === 'piece-or-all' ? [{ id: ALL, text: say('page.dress.all-pieces', {}, units) }] : []),
          ...pieces.map((piece) => ({ id: piece.id, text: pieceTitle(piece, units) })),
        ];
  const known = options.some(({ id }) => id === value);
  const missing = { id: value, text: say('page.dress.not-there', { name: value }, units) };
  return (
    <div className="stack-close" data-param={name}>
      <Choice
        label={label}
        value={value}
        options={known || value === '' ? options : [missing, ...options]}
        problem={problem}
        onChange={onChange}
      />
      {picking ? (
        <p className="picking small" role="status">
          {say(names === 'edge' ? 'page.dress.pick.edge' : 'page.dress.pick.piece', {}, units)}{' '}
          <button type="button" className="link small" onClick={leave}>
            {say('page.dress.pick.end', {}, units)}
          </button>
        </p>
      ) : (
        <button
          type="button"
          className="link small pick-link"
          aria-label={say('page.dress.pick.what', { what: label }, units)}
          onClick={start}
        >
          {say('page.dress.pick', {}, units)}
        </button>
      )}
    </div>
  );
}

/** The piece on which the edge lies, as the same step names it; null for every piece. */
function pieceNamed(listed: ListedStep, scope: Scope, context: StepContext | null): string | null {
  const param = listed.known.params.piece;
  if (param === undefined) return null;
  const at = givenAt(listed, scope, 'piece');
  const value = at.own ?? at.under.value ?? (context === null ? undefined : param.rule(context));
  return value === undefined || value === ALL ? null : String(value);
}

/** The edges of one piece, or those of all outer pieces, each name once. */
function edgeOptions(
  pieces: readonly Piece[],
  of: string | null,
  units: 'in' | 'cm',
): readonly Option<string>[] {
  const on = pieces.filter(({ id, layer }) => (of === null ? layer === 'shell' : id === of));
  const edges = on.flatMap((piece) => piece.edges);
  return edges
    .filter((edge, i) => edges.findIndex(({ name }) => name === edge.name) === i)
    .map((edge) => ({ id: edge.name, text: edgeTitle(edge, units) }));
}

/** Waits for her to touch the table, and writes the piece, the edge and the end that she touched. */
function usePick({
  listed,
  scope,
  name,
  names,
}: Pick<Parameters<typeof NamedPlaceField>[0], 'listed' | 'scope' | 'name' | 'names'>) {
  const desk = useDesk();
  const look = useLook();
  const picked = useLooking((state) => state.picked);
  const view = useLooking((state) => state.look);
  const [picking, setPicking] = useState(false);

  // biome-ignore lint/correctness/useExhaustiveDependencies: it is asked only when she touches the table.
  useEffect(() => {
    if (!picking || picked === null || (names === 'edge' && picked.kind === 'piece')) return;
    setPicking(false);
    const label = didSaying(desk, scope, 'step-param', listed, { what: { word: `${listed.step}.${name}` } });
    desk.session.change(label, (file) => {
      for (const [param, value] of written(listed, name, names, picked))
        setParam(file, scope, listed, param, value);
    });
  }, [picking, picked]);

  return {
    picking,
    start: () => {
      const flat = view.view === 'pieces' || view.view === 'sewn';
      look({ picked: null, ...(flat ? {} : { look: { ...view, view: 'pieces' } }) });
      setPicking(true);
    },
    leave: () => setPicking(false),
  };
}

/** What a touch says: the piece; the edge; and with a corner, which end of it is meant. */
function written(
  { known: { params } }: ListedStep,
  name: string,
  names: string,
  place: TablePlace,
): readonly (readonly [param: string, value: string])[] {
  if (names !== 'edge') return [[name, place.piece]];
  if (place.kind === 'piece') return [];
  const end = params.end;
  const hasEnds = end?.kind === 'choice' && end.choices.includes('start');
  return [
    ...(params.piece === undefined ? [] : [['piece', place.piece] as const]),
    [name, place.edge],
    ...(place.kind === 'corner' && hasEnds ? [['end', 'start'] as const] : []),
  ];
}
