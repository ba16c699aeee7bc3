// The drag of a point on the drafting table, timed: by the clock of the page, and by the clock of its main thread, which
// stands still while another program has the processor.

/** Opens a step of the example dress and answers where the point lies that its number governs. */
async function pointToDrag(page, step, param) {
  const row = page.locator(`li[data-step="${step}"]`);
  if ((await row.locator('.step-inside').count()) === 0) await row.locator('.step-title').click();
  await row.locator(`[data-param="${param}"]`).getByRole('textbox').focus();
  const handle = page.locator('[data-handle] .t-handle-reach').first();
  await handle.waitFor();
  const box = await handle.boundingBox();
  if (box === null) throw new Error('The point to drag is not on the screen.');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** From here on the page notes, for each move of the pointer, when its redraw and its frame were done. */
async function watchMoves(page) {
  await page.evaluate(() => {
    const moves = [];
    let open = null;
    document.addEventListener(
      'pointermove',
      (event) => {
        const move = { at: event.timeStamp, heard: performance.now(), drawn: null, frame: null };
        open = move;
        moves.push(move);
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => {
            move.frame = performance.now();
          };
          port2.postMessage(null);
        });
      },
      { capture: true },
    );
    // The lines of the pieces; the words follow later.
    new MutationObserver((changes) => {
      const lines = changes.some(({ target }) => target.classList.contains('t-cloth'));
      if (lines && open !== null) open.drawn ??= performance.now();
    }).observe(document.querySelector('.t-drawing'), { subtree: true, attributeFilter: ['d'] });
    globalThis.movesOfDrag = moves;
  });
}

/** The main thread's own time in the task that holds each move of the pointer, ms, from a trace of the browser. */
function busyTimes(events) {
  const tasks = events.filter(({ name }) => name === 'RunTask');
  const moves = events
    .filter(({ name, args }) => name === 'EventDispatch' && args?.data?.type === 'pointermove')
    .sort((a, b) => a.ts - b.ts);
  return moves.map(({ pid, tid, ts }) => {
    const around = tasks.filter(
      (task) => task.pid === pid && task.tid === tid && task.ts <= ts && ts <= task.ts + task.dur,
    );
    const [task] = around.sort((a, b) => b.dur - a.dur);
    return (task?.tdur ?? Number.NaN) / 1000;
  });
}

async function traced(client, run) {
  const events = [];
  client.on('Tracing.dataCollected', ({ value }) => events.push(...value));
  const done = new Promise((resolve) => client.once('Tracing.tracingComplete', resolve));
  await client.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: {
      includedCategories: ['toplevel', 'devtools.timeline', 'disabled-by-default-devtools.timeline'],
    },
  });
  await run();
  await client.send('Tracing.end');
  await done;
  return events;
}

/**
 * Drags a point to and fro, `rounds` times in `count` moves, one for each frame, and answers the times of those that drew anew, ms:
 * `redraw` from the page hearing of the move to the lines being in the page, `waited` the same from the moment the
 * browser got the move, `frame` from then to the frame that shows it, `busy` the main thread's own time for the move.
 */
export async function timedDrag(page, client, { step, param, reach = 40, count = 240, rounds = 3 }) {
  const from = await pointToDrag(page, step, param);
  await page.waitForTimeout(1500);
  await watchMoves(page);
  const events = await traced(client, async () => {
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    for (let i = 1; i <= count; i++) {
      await page.mouse.move(from.x, from.y + reach * Math.sin((i / count) * 2 * rounds * Math.PI));
      await page.waitForTimeout(16);
    }
    await page.mouse.up();
  });
  const busy = busyTimes(events);
  const told = await page.evaluate(() => globalThis.movesOfDrag);
  if (told.length !== busy.length) throw new Error('The trace and the page know of different moves.');
  const moves = told.map((move, i) => ({ ...move, busy: busy[i] })).filter(({ drawn }) => drawn !== null);
  return {
    redraw: moves.map(({ heard, drawn }) => drawn - heard),
    waited: moves.map(({ at, drawn }) => drawn - at),
    frame: moves.flatMap(({ at, frame }) => (frame === null ? [] : [frame - at])),
    busy: moves.map((move) => move.busy),
  };
}
