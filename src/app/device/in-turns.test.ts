import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { inTurns } from './in-turns.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

function* counting(done: number[]): Generator<undefined, void> {
  for (const n of [1, 2]) {
    done.push(n);
    yield;
  }
  done.push(3);
}

it('waits, and then does one turn at a time to the end', () => {
  const done: number[] = [];
  inTurns(counting(done), 100);
  vi.advanceTimersByTime(99);
  expect(done).toEqual([]);
  for (const all of [[1], [1, 2], [1, 2, 3], [1, 2, 3]]) {
    vi.advanceTimersToNextTimer();
    expect(done).toEqual(all);
  }
});

it('is broken off between two turns', () => {
  const done: number[] = [];
  const stop = inTurns(counting(done));
  vi.advanceTimersToNextTimer();
  stop();
  vi.runAllTimers();
  expect(done).toEqual([1]);
});
