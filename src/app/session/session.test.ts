import { describe, expect, it, vi } from 'vitest';
import example from '../../../examples/wedding-party.json?raw';
import { type OrderFile, readOrderFile } from '../../engine/order/index.ts';
import type { OrderContent, SaveResult, Store, StoredOrder } from '../../store/index.ts';
import { NO_HISTORY } from '../../store/index.ts';
import { openSession, type Session } from './session.ts';

function exampleFile(): OrderFile {
  const read = readOrderFile(JSON.parse(example));
  if (!read.ok) throw new Error('The example order must be an order.');
  return read.order;
}

const stored = (id: string, file: OrderFile, revision = 1): StoredOrder => ({
  id,
  revision,
  origin: { kind: 'new' },
  createdAt: '2027-01-01T00:00:00.000Z',
  changedAt: '2027-01-01T00:00:00.000Z',
  archived: false,
  deletedAt: null,
  file,
  history: NO_HISTORY,
});

/** Keeps what it is given, or answers as it is told. */
function fakeStore(answers: SaveResult[] = []) {
  const saves: { id: string; revision: number; content: OrderContent }[] = [];
  const store: Pick<Store, 'save'> = {
    save: async (id, revision, content) => {
      saves.push({ id, revision, content });
      return answers.shift() ?? { ok: true, revision: revision + 1, changedAt: '2027-01-01T00:00:01.000Z' };
    },
  };
  return { store, saves };
}

const open = (store = fakeStore().store): Session =>
  openSession(stored('a', exampleFile()), store, '2027-03-01');

function setHeight(session: Session, text: string, cause = 'height'): void {
  session.change(
    { key: 'page.did.title', values: {} },
    (file) => {
      const [amina] = file.children;
      if (amina?.measures !== undefined) amina.measures.height = text;
    },
    { cause },
  );
}

const height = (session: Session): unknown => session.state.getState().file.children[0]?.measures?.height;
const work = (session: Session, index = 0) => {
  const child = session.state.getState().work.children[index];
  if (child === undefined) throw new Error('The example has this child.');
  return child;
};

/** Until every child of the order has been looked at. */
const rest = (session: Session): Promise<void> =>
  vi.waitFor(() => {
    expect(session.state.getState().work.children.some(({ pending }) => pending)).toBe(false);
  }, 20_000);

/** A session whose first save met the state of another tab; hers lies on the device as order `b`. */
async function clash(theirFile = exampleFile()) {
  const [theirs, copy] = [stored('a', theirFile, 7), stored('b', exampleFile(), 1)];
  const { store, saves } = fakeStore([{ ok: false, conflict: { theirs, copy } }]);
  const session = open(store);
  setHeight(session, '33');
  await session.saveNow();
  return { session, saves };
}

describe('the open order', () => {
  it('joins the changes of one cause into one step, until it is settled', () => {
    const session = open();
    for (const text of ['3', '32', '32 1', '32 1/2']) setHeight(session, text);
    session.settle();
    setHeight(session, '33');
    expect(session.state.getState().history.position).toBe(2);
    session.undo();
    expect(height(session)).toBe('32 1/2');
    session.undo();
    expect(height(session)).toBe('31 3/4');
    session.undo();
    session.redo();
    session.redo();
    expect(height(session)).toBe('33');
    session.undo();
    setHeight(session, '34');
    expect(session.state.getState().history.steps).toHaveLength(2);
  });

  it('keeps a step that changes two places whole, going back and forth', () => {
    const session = open();
    const before = session.state.getState().file;
    for (const n of [1, 2, 3]) {
      session.change(
        { key: 'page.did.title', values: {} },
        (file) => {
          file.title = `Party ${n}`;
          file.cloths.push({ name: `cloth ${n}`, use: ['trim'], width: '45' });
        },
        { cause: 'both' },
      );
    }
    const after = session.state.getState().file;
    session.undo();
    expect(session.state.getState().file).toEqual(before);
    session.redo();
    expect(session.state.getState().file).toEqual(after);
  });

  it('takes back the change that a note speaks of, and no other', () => {
    const session = open();
    const takeBack = session.change({ key: 'page.did.title', values: {} }, (file) => {
      file.children.splice(1, 1);
    });
    setHeight(session, '33');
    takeBack();
    expect(session.state.getState().file.children).toHaveLength(4);
    session.undo();
    takeBack();
    expect(session.state.getState().file.children).toHaveLength(5);
  });

  it('keeps the last good drawing of a child whose number cannot be used, and the others go on', async () => {
    const session = open();
    await rest(session);
    const good = work(session).report;
    setHeight(session, '3 x');
    expect(work(session)).toMatchObject({ old: true, report: good });
    expect(work(session).problems[0]).toMatchObject({ path: 'children[0].measures.height' });
    session.choose(2);
    expect(work(session, 2)).toMatchObject({ old: false, name: 'Efua', problems: [] });
    session.choose(0);
    setHeight(session, '33');
    expect(work(session).old).toBe(false);
    await rest(session);
    expect(work(session).report).not.toBe(good);
  });

  it('a bad field of the party is told, and the dress goes on by the last good one', async () => {
    const session = open();
    await rest(session);
    session.change({ key: 'page.did.due', values: {} }, (file) => {
      file.dueDay = 'some day';
    });
    expect(session.state.getState().work.problems.map(({ path }) => path)).toEqual(['dueDay']);
    expect(work(session).report).not.toBeNull();
    setHeight(session, '33');
    await rest(session);
    expect(work(session).report?.dress.body.values.height.mm).toBeCloseTo(33 * 25.4, 6);
  });

  it('draws anew only the child whose numbers changed', async () => {
    const session = open();
    await rest(session);
    const before = [work(session, 0), work(session, 1)];
    setHeight(session, '33');
    expect(work(session, 0).drawing).not.toBe(before[0]?.drawing);
    expect(work(session, 1)).toEqual(before[1]);
  });

  it('draws at once, and checks when she rests: the report then belongs to the drawing', async () => {
    const session = open();
    await rest(session);
    const before = work(session);
    expect(before.report?.dress.garment).toBe(before.drawing?.drawn.garment);
    setHeight(session, '33');
    expect(work(session)).toMatchObject({ pending: true, old: false, report: before.report });
    expect(work(session).drawing?.drawn.body.values.height.mm).toBeCloseTo(33 * 25.4, 6);
    await rest(session);
    const after = work(session);
    expect(after.report?.dress.garment).toBe(after.drawing?.drawn.garment);
    expect(after.report?.pieces).toBe(after.drawing?.pieces);
    expect(after.report?.findings).not.toBe(before.report?.findings);
  });

  it('lets only the table follow a drag, and everything when she rests or lets go', async () => {
    const session = open();
    await rest(session);
    const before = session.shown.getState();
    session.drag();
    setHeight(session, '33');
    expect(work(session).drawing?.drawn.body.values.height.mm).toBeCloseTo(33 * 25.4, 6);
    expect(session.shown.getState()).toBe(before);
    session.settle();
    expect(session.shown.getState()).toBe(session.state.getState());
    session.drag();
    setHeight(session, '34');
    expect(session.shown.getState().file.children[0]?.measures?.height).toBe('33');
    await vi.waitFor(() => expect(session.shown.getState()).toBe(session.state.getState()), 2000);
    await rest(session);
    expect(session.shown.getState().work.children[0]?.report?.dress.body.values.height.mm).toBeCloseTo(
      34 * 25.4,
      6,
    );
  });

  it('saves with its history, and saves once what was typed while saving', async () => {
    const { store, saves } = fakeStore();
    const session = open(store);
    setHeight(session, '33');
    const first = session.saveNow();
    await first;
    expect(saves).toMatchObject([{ id: 'a', revision: 1 }]);
    expect(saves[0]?.content.history?.position).toBe(1);
    expect(session.state.getState().keeping).toEqual({ kind: 'saved' });
    await session.close();
    expect(saves).toHaveLength(1);
  });

  it('tells when the device is full, and tries again', async () => {
    const problem = { code: 'storage-full', say: { key: 'x', values: {} } } as const;
    const { store, saves } = fakeStore([{ ok: false, problem }]);
    const session = open(store);
    setHeight(session, '33');
    await session.saveNow();
    expect(session.state.getState().keeping).toEqual({ kind: 'failed', problem });
    await session.saveNow();
    expect(session.state.getState().keeping).toEqual({ kind: 'saved' });
    expect(saves).toHaveLength(2);
  });

  it('asks when another tab changed the order, saves no more until she has said, and goes on with either', async () => {
    const { session, saves } = await clash({ ...exampleFile(), title: 'Theirs' });
    expect(session.state.getState().keeping.kind).toBe('clash');
    setHeight(session, '34', 'other');
    await session.saveNow();
    expect(saves).toHaveLength(1);
    session.settleClash('theirs');
    expect(session.state.getState().file.title).toBe('Theirs');
    setHeight(session, '35');
    await session.saveNow();
    expect(saves.at(-1)).toMatchObject({ id: 'a', revision: 7 });
    await session.close();
  });

  it('loses nothing that was typed between the clash and the answer', async () => {
    const { session, saves } = await clash();
    setHeight(session, '34');
    expect(session.settleClash('mine')).toBe('b');
    await session.saveNow();
    expect(saves.at(-1)).toMatchObject({ id: 'b', revision: 1 });
    expect(saves.at(-1)?.content.file.children[0]?.measures?.height).toBe('34');
    await session.close();
  });

  it('keeps beside it what was typed between the clash and the answer, when the other state is taken', async () => {
    const { session, saves } = await clash();
    setHeight(session, '34');
    session.settleClash('theirs');
    expect(height(session)).toBe('31 3/4');
    await session.saveNow();
    expect(saves.at(-1)).toMatchObject({ id: 'b', revision: 1 });
    expect(saves.at(-1)?.content.file.children[0]?.measures?.height).toBe('34');
  });

  it('keeps it too when the order is left without an answer', async () => {
    const { session, saves } = await clash();
    setHeight(session, '34');
    await session.close();
    expect(saves.at(-1)?.id).toBe('b');
    expect(saves.at(-1)?.content.file.children[0]?.measures?.height).toBe('34');
  });

  it('tells of a save that throws, and saves what comes after it', async () => {
    const told = vi.spyOn(console, 'error').mockImplementation(() => {});
    const { store, saves } = fakeStore();
    let throws = true;
    const session = open({
      save: (...given) => {
        if (!throws) return store.save(...given);
        throws = false;
        throw new Error('no room for this');
      },
    });
    setHeight(session, '33');
    await session.saveNow();
    expect(session.state.getState().keeping).toMatchObject({
      kind: 'failed',
      problem: { say: { values: { said: 'no room for this' } } },
    });
    setHeight(session, '34');
    await session.saveNow();
    expect(session.state.getState().keeping).toEqual({ kind: 'saved' });
    expect(saves.at(-1)?.content.file.children[0]?.measures?.height).toBe('34');
    expect(told).toHaveBeenCalledOnce();
    told.mockRestore();
  });
});
