import type { WholeBow } from '../../core/limb/bow.ts';
import { modelledWeight } from '../../core/limb/modelled-bow.ts';
import { type BowRemoval, predictRemoval } from '../../core/limb/predict-removal.ts';
import { nothingTaken, type SideCut } from '../../core/limb/removal.ts';
import { solveStaticBow } from '../../core/limb/static-bow.ts';
import { type LimbWishes, longbow } from '../support/sample-limbs.ts';
import { straightBow } from '../support/straight-bow.ts';

/** What a removal does to the weight, as a table to look at. */
const percent = (part: number) => `${(100 * part).toFixed(1).padStart(5)} %`;
const row = (what: string, part: number) => console.log(`${what.padEnd(58)} ${percent(part)}`);

function both(removal: Partial<BowRemoval['upper']>): BowRemoval {
  const limb = { ...nothingTaken, ...removal };
  return { upper: limb, lower: limb };
}

function drop(removal: BowRemoval, wishes: LimbWishes = {}): number {
  const solved = predictRemoval(longbow(wishes), removal, {
    drawIn: 28,
    weightLbf: 1,
    weightSdLbf: 0,
    effectiveness: { mean: 1, sd: 0 },
  });
  if (solved.status !== 'converged') throw new Error(solved.why);
  return solved.value.modelledDrop;
}

function weightOf(bow: WholeBow): number {
  const solved = solveStaticBow(bow, { braceIn: 6, drawsIn: [29.75], segments: 90 });
  if (solved.status !== 'converged') throw new Error(solved.why);
  return solved.value.draws[0]?.forceLbf ?? Number.NaN;
}

console.log('Straight bow, stiffness falling to nothing: a tenth narrower over one third');
for (const [third, name] of ['inner', 'middle', 'outer'].entries()) {
  const [from, to] = [(third * 32) / 3, ((third + 1) * 32) / 3];
  const narrowed = straightBow((s) => (s >= from && s < to ? 0.9 : 1));
  row(`${name} third`, 1 - weightOf(narrowed) / weightOf(straightBow()));
}

const cut = (shape: (s: number) => number): SideCut[] =>
  Array.from({ length: 27 }, (_, s) => ({
    fromFadeIn: s,
    leftIn: 0.125 * shape(s / 26),
    rightIn: 0.125 * shape(s / 26),
  }));

console.log('\nLongbow of 66 in, a quarter inch in total, by the shape of the cut');
row('even from fade to tip', drop(both({ cuts: cut(() => 1) })));
row('tapering out over the outer half', drop(both({ cuts: cut((t) => Math.min(1, 2 - 2 * t)) })));
row('half a sine', drop(both({ cuts: cut((t) => Math.sin(Math.PI * t)) })));

console.log('\nLongbow of 66 in, thickness and edges');
row('1 thou off both faces', drop(both({ bellyThou: 1, backThou: 1 })));
row('a full strip, 1.4 thou a face', drop(both({ bellyThou: 1.4, backThou: 1.4 })));
row('final sanding only, 0.6 thou a face', drop(both({ bellyThou: 0.6, backThou: 0.6 })));
row('square edges rounded to 1/16 in', drop(both({ edgeRadiusIn: 1 / 16 }), { edgeRadiusIn: 0 }));

console.log('\nThe same tapered quarter inch, by what is not known of the bow');
const tapered = both({ cuts: cut((t) => Math.min(1, 2 - 2 * t)) });
row('as measured', drop(tapered));
for (const [name, wishes] of [
  ['limbs a tenth thicker at the tip', { tipThicknessIn: 0.308 }],
  ['limbs a tenth thinner at the tip', { tipThicknessIn: 0.252 }],
  ['glass of 30 thou', { glassIn: 0.03 }],
  ['glass of 50 thou', { glassIn: 0.05 }],
  ['an inch longer limbs', { lengthIn: 27 }],
] as const) {
  row(name, drop(tapered, wishes));
}

const weight = modelledWeight(longbow(), 28);
if (weight.status !== 'converged') throw new Error(weight.why);
console.log(`\nThe longbow as modelled: ${weight.value.toFixed(1)} lbf at 28 in AMO`);
