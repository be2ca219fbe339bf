import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { expect, onTestFinished, test } from 'vitest';
import { LimbRoom } from '../../../core/limb-room/limb-room.ts';
import { usualBenchPolicy } from '../../../shared/bench-policy.ts';
import { changedInput, longbowInput } from '../../support/plan-input.ts';

function openRoom(): LimbRoom {
  const room = new LimbRoom();
  onTestFinished(() => room.close());
  return room;
}

const rules = { limits: usualBenchPolicy.limits, stripThou: 1.4 };
const job = (input = longbowInput) => ({
  kind: 'reckon' as const,
  what: { asked: { input, detail: 'sliding' as const }, rules },
});

test('answers on a thread of its own', async () => {
  const answer = await openRoom().do(job());
  expect(answer).toMatchObject({ outcome: 'reckoned', recommended: 'narrowing' });
});

test('a refusal of the mechanics comes back as one, and the room goes on', async () => {
  const room = openRoom();
  await expect(room.do(job(changedInput({ wish: { targetLbf: 60 } })))).rejects.toMatchObject({
    name: 'ShopError',
    code: 'BAD_INPUT',
    details: { targetLbf: expect.stringContaining('weight is not put back') },
  });
  expect(await room.do(job())).toMatchObject({ outcome: 'reckoned' });
});

test('of a slider that moved on, only what had begun is worked out', async () => {
  const room = openRoom();
  const first = room.do(job());
  const given = Array.from({ length: 20 }, () => {
    const stop = new AbortController();
    return { stop, answer: room.do(job(), stop.signal) };
  });
  const last = room.do(job(changedInput({ wish: { targetLbf: 47 } })));
  for (const { stop } of given) stop.abort(new Error('moved on'));
  const answers = await Promise.allSettled(given.map(({ answer }) => answer));
  expect(answers.every(({ status }) => status === 'rejected')).toBe(true);
  await first;
  expect(await last).toMatchObject({ outcome: 'reckoned', drop: { lbf: 5 } });
  expect(room.begun).toBe(2);
});

test('a job given up while it runs is answered at once, and the next one is its own answer', async () => {
  const room = openRoom();
  const stop = new AbortController();
  const running = room.do(job(), stop.signal);
  const next = room.do(job(changedInput({ wish: { targetLbf: 48 } })));
  stop.abort(new Error('moved on'));
  await expect(running).rejects.toThrow('moved on');
  expect(await next).toMatchObject({ drop: { lbf: 4 } });
});

test('a job given up before it was asked never begins', async () => {
  const room = openRoom();
  await expect(room.do(job(), AbortSignal.abort(new Error('gone')))).rejects.toThrow('gone');
  expect(room.begun).toBe(0);
});

test('a process that has used the room waits for its answer, and ends by itself after it', async () => {
  const room = new URL('../../../core/limb-room/limb-room.ts', import.meta.url).href;
  const code = `import(${JSON.stringify(room)})
    .then(({ inLimbRoom }) => inLimbRoom(${JSON.stringify(job())}))
    .then(({ outcome }) => console.log(outcome));`;
  const run = promisify(execFile);
  const { stdout } = await run(process.execPath, ['--eval', code], { timeout: 15_000 });
  expect(stdout.trim()).toBe('reckoned');
});
