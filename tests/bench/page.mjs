// Times the program and the port in the page that it runs in.

import init, { Grid, Work, sizes } from './farend_bench.js';
import { ledger, stagesOf } from './port.mjs';

// A batch takes at least this many milliseconds, so that the clock's steps are nothing beside it.
const BATCH = 50;
const BATCHES = 15;

/** Median times in microseconds, and what program and port say arrives, in kW. */
export async function run() {
  const program = await init();
  const work = new Work();
  const figures = JSON.parse(work.figures());
  const stages = stagesOf(figures);
  const tasks = {
    comparison: (times) => work.comparison(times),
    likely: (times) => work.likely(times),
    route: (times) => work.route(times),
    curve: (times) => work.curve(times),
    yard: (times) => work.yard(times),
    port: (times) => repeat(times, () => delivered(ledger(figures, stages))),
  };
  const times = Object.entries(tasks).map(([name, task]) => [name, median(task)]);
  const all = [...sizes()];
  const pairs = all.flatMap((size, place) => (place % 2 ? [] : [[size, all[place + 1]]]));
  const grids = pairs.map(([machines, implements_]) => {
    const grid = new Grid(machines, implements_);
    return [`grid-${machines}-${implements_}`, once(() => grid.reckon())];
  });
  const memory = [
    ['grid-megabytes', program.memory.buffer.byteLength / 1e6],
    ['grid-bytes', new Grid(...pairs.at(-1)).bytes()],
  ];
  return {
    times: Object.fromEntries([...times, ...grids, ...memory]),
    program: tasks.route(1),
    port: tasks.port(1),
  };
}

/** The median of three in microseconds, of what takes long enough to be timed alone. */
function once(task) {
  const runs = [0, 0, 0].map(() => {
    const started = performance.now();
    task();
    return performance.now() - started;
  });
  return runs.sort((a, b) => a - b)[1] * 1e3;
}

function delivered(passages) {
  const { gives } = passages.at(-1);
  return gives.stall ? 0 : gives.power / 1e3;
}

function repeat(times, task) {
  let result = 0;
  for (let time = 0; time < times; time += 1) result = task();
  return result;
}

function median(task) {
  const batch = (times) => {
    const started = performance.now();
    task(times);
    return performance.now() - started;
  };
  let times = 1;
  while (batch(times) < BATCH) times *= 2;
  const batches = Array.from({ length: BATCHES }, () => batch(times)).sort((a, b) => a - b);
  return (batches[BATCHES >> 1] * 1e3) / times;
}
