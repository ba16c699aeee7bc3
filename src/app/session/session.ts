import type { Draft } from 'immer';
import { createStore, type StoreApi } from 'zustand/vanilla';
import type { OrderFile } from '../../engine/order/index.ts';
import type { Saying } from '../../engine/words/index.ts';
import type { History, SaveResult, Store, StoredOrder, StoreProblem } from '../../store/index.ts';
import { afterFrame } from '../device/after-frame.ts';
import { type Changed, recordChange, redone, undone } from './history.ts';
import { clearPutBy, putBy } from './stash.ts';
import { createWorkbench, type OrderWork } from './work.ts';

/** How it stands with keeping the order on the device. */
export type Keeping =
  | { readonly kind: 'saved' }
  /** Changed, and on its way to the device. */
  | { readonly kind: 'saving' }
  /** Not kept; the next change tries again, as does `saveNow`. */
  | { readonly kind: 'failed'; readonly problem: StoreProblem }
  /** Another tab changed the order. Both states are on the device; she says with which one to go on. */
  | { readonly kind: 'clash'; readonly theirs: StoredOrder; readonly copy: StoredOrder };

/** All that is known of the open order. Read it through the hooks in `use-session.ts`. */
export interface SessionState {
  /** The order file's own form; texts as she typed them. */
  readonly file: OrderFile;
  /** Index of the child whom the places show. */
  readonly child: number;
  readonly history: History;
  readonly keeping: Keeping;
  readonly work: OrderWork;
}

/** Undoes a change, for the button beside its note; does nothing when she has gone on since. */
type TakeBack = () => void;

/** The open order: one document, changed in one way, undone and kept by itself. */
export interface Session {
  readonly id: string;
  /** As it is now; only the table draws from it. */
  readonly state: StoreApi<SessionState>;
  /** What the places show: the same, but while she drags it stands still until she rests. */
  readonly shown: StoreApi<SessionState>;
  /**
   * The only way to change the order. `label` names the step for undo ("Undo: chest of Amina"); the recipe changes
   * the draft as if it were its own. Changes with the same `cause` in a row become one step until `settle` is
   * called: give the field's path while she types, the handle's name while she drags. The document must stay a
   * valid order in form (`readOrderFile`), but its texts may be nonsense: the sentence then stands at the field.
   */
  change(
    label: Saying,
    recipe: (draft: Draft<OrderFile>) => void,
    how?: { readonly cause?: string },
  ): TakeBack;
  /**
   * The next change comes from a drag: the table follows in the same frame; all else, and the checks, when she rests
   * for a moment or has called `settle`.
   */
  drag(): void;
  /** Ends the step that changes of one cause are joined to: on leaving a field, on letting go of a handle. */
  settle(): void;
  undo(): void;
  redo(): void;
  /** Shows another child. */
  choose(child: number): void;
  /** Writes what is not yet kept, now. */
  saveNow(): Promise<void>;
  /** The page goes away, and may not live to see the answer of the device: puts by at once what is not yet kept. */
  leave(): void;
  /** After a clash: goes on with the other tab's state, or with hers, which is kept under the id that is answered. */
  settleClash(goOnWith: 'theirs' | 'mine'): string;
  /** Writes what is not yet kept, and ends the session. */
  close(): Promise<void>;
}

/** Typing is written to the device when she pauses this long, ms. */
const PAUSE = 400;

/** She rests in a drag when no move has come for this long, ms. */
const DRAG_REST = 160;

/** A new session on a stored order. `today` is printed on pieces where the order names no day. */
export function openSession(stored: StoredOrder, store: Pick<Store, 'save'>, today: string): Session {
  const bench = createWorkbench(today);
  let id = stored.id;
  let revision = stored.revision;
  let settled = true;
  let unsaved = false;
  /** A save that the device has not answered. */
  let onItsWay = false;
  let pause: ReturnType<typeof setTimeout> | undefined;
  let dragging = false;
  let dragRest: ReturnType<typeof setTimeout> | undefined;
  let notInSpareTime = (): void => {};
  let saving: Promise<void> = Promise.resolve();

  const state = createStore<SessionState>(() => ({
    file: stored.file,
    child: 0,
    history: stored.history,
    keeping: { kind: 'saved' },
    work: bench.work(stored.file, 0),
  }));
  const shown = createStore<SessionState>(() => state.getState());
  state.subscribe((now) => {
    if (!dragging) shown.setState(now, true);
  });

  /** The child that is shown is checked, and the others are drawn, one at a time when she rests: no frame waits. */
  const workInSpareTime = (): void => {
    notInSpareTime();
    notInSpareTime = afterFrame(() => {
      const work = bench.workOn();
      if (work === null) return;
      state.setState({ work });
      workInSpareTime();
    });
  };

  const rest = (): void => {
    if (!dragging) return;
    clearTimeout(dragRest);
    dragging = false;
    shown.setState(state.getState(), true);
    workInSpareTime();
  };

  const save = async (): Promise<void> => {
    clearTimeout(pause);
    if (!unsaved || state.getState().keeping.kind === 'clash') return;
    unsaved = false;
    onItsWay = true;
    const { file, history } = state.getState();
    const result = await answered(() => store.save(id, revision, { file, history }));
    onItsWay = false;
    if (result.ok) {
      revision = result.revision;
      if (!unsaved) {
        clearPutBy(id);
        state.setState({ keeping: { kind: 'saved' } });
      }
    } else if (result.conflict !== undefined) {
      state.setState({ keeping: { kind: 'clash', ...result.conflict } });
    } else {
      unsaved = true;
      state.setState({ keeping: { kind: 'failed', problem: result.problem } });
    }
  };

  const saveNow = (): Promise<void> => {
    saving = saving.then(save);
    return saving;
  };

  /** What she changed between a clash and her answer goes into the copy of her state that is on the device. */
  const saveInCopy = (): Promise<void> => {
    const { keeping, file, history } = state.getState();
    if (keeping.kind !== 'clash' || !unsaved) return saving;
    const { copy } = keeping;
    unsaved = false;
    saving = saving.then(async () => {
      const result = await answered(() => store.save(copy.id, copy.revision, { file, history }));
      if (!result.ok && result.conflict === undefined)
        state.setState({ keeping: { kind: 'failed', problem: result.problem } });
    });
    return saving;
  };

  const take = (changed: Changed | null): void => {
    if (changed === null) return;
    const { child: shown } = state.getState();
    const child = Math.min(shown, Math.max(changed.file.children.length - 1, 0));
    const { keeping } = state.getState();
    state.setState({
      ...changed,
      child,
      keeping: keeping.kind === 'clash' ? keeping : { kind: 'saving' },
      work: bench.work(changed.file, child),
    });
    unsaved = true;
    clearTimeout(pause);
    pause = setTimeout(saveNow, PAUSE);
    if (!dragging) workInSpareTime();
  };

  const undo = (): void => {
    settled = true;
    rest();
    take(undone(state.getState()));
  };

  workInSpareTime();
  return {
    get id() {
      return id;
    },
    state,
    shown,
    change: (label, recipe, { cause = '' } = {}) => {
      take(recordChange(state.getState(), label, recipe, cause, !settled));
      settled = false;
      const { steps, position } = state.getState().history;
      const made = steps[position - 1];
      return () => {
        const now = state.getState().history;
        const newest = now.steps[now.position - 1];
        // A step that was typed on since is another object of the same cause.
        if (newest !== undefined && (newest === made || (cause !== '' && newest.cause === cause))) undo();
      };
    },
    drag: () => {
      dragging = true;
      notInSpareTime();
      clearTimeout(dragRest);
      dragRest = setTimeout(rest, DRAG_REST);
    },
    settle: () => {
      settled = true;
      rest();
    },
    undo,
    redo: () => {
      settled = true;
      rest();
      take(redone(state.getState()));
    },
    choose: (child) => {
      const { file } = state.getState();
      if (child === state.getState().child || file.children[child] === undefined) return;
      settled = true;
      rest();
      state.setState({ child, work: bench.work(file, child) });
      workInSpareTime();
    },
    saveNow,
    leave: () => {
      const { keeping, file, history } = state.getState();
      if (!unsaved && !onItsWay) return;
      const at = keeping.kind === 'clash' ? keeping.copy : { id, revision };
      putBy(at.id, { revision: at.revision, file, history });
      void saveNow();
    },
    settleClash: (goOnWith) => {
      const { keeping, child: shown } = state.getState();
      if (keeping.kind !== 'clash') return id;
      settled = true;
      if (goOnWith === 'theirs') void saveInCopy();
      const other = keeping[goOnWith === 'theirs' ? 'theirs' : 'copy'];
      id = other.id;
      revision = other.revision;
      if (goOnWith === 'mine') {
        // What she changed since the clash is not in the copy yet.
        unsaved = true;
        state.setState({ keeping: { kind: 'saving' } });
        void saveNow();
        return id;
      }
      unsaved = false;
      const { file, history } = other;
      const child = Math.min(shown, Math.max(file.children.length - 1, 0));
      state.setState({ file, history, child, keeping: { kind: 'saved' }, work: bench.work(file, child) });
      workInSpareTime();
      return id;
    },
    close: async () => {
      rest();
      notInSpareTime();
      await (state.getState().keeping.kind === 'clash' ? saveInCopy() : saveNow());
    },
  };
}

/**
 * What the store answers. It answers all that a device may refuse; if it throws, that is a bug, and she is told as if
 * the device had refused: what she does next must still be saved.
 */
async function answered(save: () => Promise<SaveResult>): Promise<SaveResult> {
  try {
    return await save();
  } catch (error) {
    console.error(error);
    const said = error instanceof Error ? error.message : String(error);
    return { ok: false, problem: { code: 'failed', say: { key: 'store.failed', values: { said } } } };
  }
}
