import type { BowKind } from '../../core/limb/plan/bow.ts';
import { planReduction } from '../../core/limb/plan/plan.ts';
import { seededRandom } from '../support/random.ts';
import { plainBow, plainWish, randomPlan } from '../support/random-plan.ts';

/** A whole plan, all methods with their bands, best of several; 50 ms on one core are asked. */
const askedMs = 50;
const runs = 15;

/** Processor time, milliseconds: what one core needs, whatever else the machine does. */
function time(work: () => unknown): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < runs; i += 1) {
    const start = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(start);
    best = Math.min(best, (user + system) / 1000);
  }
  return best;
}

const row = (what: string, ms: number) =>
  console.log(`${what.padEnd(52)} ${ms.toFixed(1).padStart(6)} ms`);

for (let i = 0; i < 20; i += 1) planReduction(plainBow(), plainWish);
const carbon = plainBow({ bellyFacing: 'carbon', backFacing: 'carbon' });
const fixed = [
  ['longbow, 52 to 45 lb', () => planReduction(plainBow(), plainWish)],
  ['longbow, nothing reaches 40 lb', () => planReduction(carbon, { ...plainWish, targetLbf: 40 })],
] as const;
const times = fixed.map(([name, work]) => {
  const ms = time(work);
  row(name, ms);
  return ms;
});
for (const kind of ['longbow', 'hybrid', 'recurve'] satisfies BowKind[]) {
  const ms = Array.from({ length: 12 }, (_, i) => {
    const { bow, wish } = randomPlan(seededRandom(4200 + i), kind);
    return time(() => planReduction(bow, wish));
  });
  row(`twelve random ${kind}s, the slowest`, Math.max(...ms));
  times.push(...ms);
}
const slowest = Math.max(...times);
row(`slowest of all, ${askedMs} ms are asked`, slowest);
process.exit(slowest <= askedMs ? 0 : 1);
