import type { WholeBow } from '../../core/limb/bow.ts';
import { modelledWeight } from '../../core/limb/modelled-bow.ts';
import { type BowRemoval, predictRemoval } from '../../core/limb/predict-removal.ts';
import { nothingTaken } from '../../core/limb/removal.ts';
import type { SideCut } from '../../core/limb/side-cut.ts';
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

function drop(removal: BowRemoval, wishes: LimbWishes & { fadeIn?: number } = {}): number {
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

const cut = (shape: (t: number) => number): SideCut[] =>
  Array.from({ length: 27 }, (_, s) => ({
    fromFadeIn: s,
    leftIn: 0.125 * shape(s / 26),
    rightIn: 0.125 * shape(s / 26),
  }));
/** Full from an inch or two past the fade, tapering out over the outer two fifths. */
const tapered = both({ cuts: cut((t) => Math.min(1, t / 0.1, (1 - t) / 0.4)) });
const wide = { parallelIn: 13, fadeThicknessIn: 0.4 };

console.log(
  '\nLongbow of 66 in, parallel to mid-limb: a quarter inch in total, by the shape of the cut',
);
row('even from fade to tip', drop(both({ cuts: cut(() => 1) }), wide));
row('tapering out over the outer two fifths', drop(tapered, wide));
row('half a sine', drop(both({ cuts: cut((t) => Math.sin(Math.PI * t)) }), wide));

console.log('\nThe tapered cut, by what is not known of the bow');
for (const [name, wishes] of [
  ['glass 17 % less stiff', { glassFactor: 0.83 }],
  ['glass 17 % stiffer', { glassFactor: 1.17 }],
  ['core 15 % less stiff', { coreFactor: 0.85 }],
  ['core 15 % stiffer', { coreFactor: 1.15 }],
  ['riser an inch shorter to each fade', { fadeIn: 6 }],
  ['riser an inch longer to each fade', { fadeIn: 8 }],
  ['tip 30 thou thicker', { tipThicknessIn: 0.31 }],
  ['tip 30 thou thinner', { tipThicknessIn: 0.25 }],
] as const) {
  row(name, drop(tapered, { ...wide, ...wishes }));
}

console.log('\nLongbow of 66 in, thickness and edges');
row('1 thou off both faces', drop(both({ bellyThou: 1, backThou: 1 })));
row('a full strip, 1.4 thou a face', drop(both({ bellyThou: 1.4, backThou: 1.4 })));
row('final sanding only, 0.6 thou a face', drop(both({ bellyThou: 0.6, backThou: 0.6 })));
row('square edges rounded to 1/16 in', drop(both({ edgeRadiusIn: 1 / 16 }), { edgeRadiusIn: 0 }));

const weight = modelledWeight(longbow(), 28);
if (weight.status !== 'converged') throw new Error(weight.why);
console.log(`\nThe longbow as modelled: ${weight.value.toFixed(1)} lbf at 28 in AMO`);
