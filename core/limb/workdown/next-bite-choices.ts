import { type Candidate, candidateOf, type LimbBite, limbBite } from './next-bite-candidate.ts';
import {
  type BiteRules,
  type Forecast,
  forecastOf,
  type NextBiteOptions,
} from './next-bite-forecast.ts';

/** More steps than any one bite has. */
const mostSteps = 64;

/** One limb's bites of none, one, two ... steps, as long as they alone take no more than a drop. */
function ladder(options: NextBiteOptions, name: 'upper' | 'lower', mostDrop: number): LimbBite[] {
  const { response, method, tracking = { upper: null, lower: null } } = options;
  const rungs: LimbBite[] = [];
  for (let steps = 0; steps <= mostSteps; steps += 1) {
    const bite = limbBite(response, method, name, steps, tracking);
    if (1 - Math.exp(-bite.effect.drop) > mostDrop) break;
    rungs.push(bite);
  }
  return rungs;
}

export interface Choice {
  bite: Candidate;
  forecast: Forecast;
  /** Smaller is better: squared misses of tiller and weight, each in units of what is tolerable. */
  cost: number;
}

/**
 * Tiller may stand off its target by this as it would be read, inches: the tolerance, and half of
 * the 1/64 in that a rule is read to.
 */
const tillerMoves = ({ tillerToleranceIn }: BiteRules) => tillerToleranceIn + 1 / 128;

const mostChance = ({ sandingThou }: NextBiteOptions, rules: BiteRules) =>
  sandingThou === null ? rules.lastChanceUnder : rules.chanceUnder;

function choicesWithin(
  options: NextBiteOptions,
  rules: BiteRules,
  leftLbf: number,
  mostLbf: number,
): Choice[] {
  const { state, tiller, wanted } = options;
  const perDrop = state.weightLbf * state.effectiveness;
  const off = Math.abs(tiller.nowIn - tiller.targetIn);
  const [uppers, lowers] = [
    ladder(options, 'upper', mostLbf / perDrop),
    ladder(options, 'lower', mostLbf / perDrop),
  ];
  const choices: Choice[] = [];
  for (const upper of uppers) {
    for (const lower of lowers) {
      const bite = candidateOf(upper, lower);
      const dropLbf = perDrop * bite.modelledDrop;
      if (!(bite.modelledDrop > 0 && dropLbf <= mostLbf)) continue;
      const forecast = forecastOf(options, rules, bite);
      const offAfter = Math.abs(forecast.tillerIn - tiller.targetIn);
      if (forecast.chanceUnder > mostChance(options, rules)) continue;
      // Within its tolerance it may wander; the next bite, or a light pass, brings it back.
      if (offAfter > Math.max(off, tillerMoves(rules))) continue;
      if (wanted === 'tiller' && !(offAfter < off)) continue;
      const spare = wanted === 'tiller' ? dropLbf : leftLbf - dropLbf;
      const cost = (offAfter / rules.tillerToleranceIn) ** 2 + (spare / leftLbf) ** 2;
      choices.push({ bite, forecast, cost });
    }
  }
  return choices.sort((a, b) => a.cost - b.cost);
}

/** The bites that fit, best first: within the part, else one step within all that is left. */
export function choicesOf(options: NextBiteOptions, rules: BiteRules, leftLbf: number): Choice[] {
  const part = options.bitesTaken === 0 ? rules.firstPart : rules.laterPart;
  const within = choicesWithin(options, rules, leftLbf, part * leftLbf);
  if (within.length > 0) return within;
  return choicesWithin(options, rules, leftLbf, leftLbf).filter(
    ({ bite }) => bite.upper.steps <= 1 && bite.lower.steps <= 1,
  );
}

/** The smallest bite and the rule that leaves it out. */
export interface NoChoice {
  /** It may end under the target; it spoils the tiller; it takes more than what is left. */
  of: 'chance' | 'tiller' | 'size';
  /** What the bite would take off, lbf. */
  dropLbf: number;
  forecast: Forecast;
}

const oneStepEach = [
  [1, 0],
  [0, 1],
  [1, 1],
] as const;

/**
 * The bite of one step that takes least, and which rule leaves it out; null where no step of the
 * method takes anything. For the sentence at the bench: that cutting ends well above the weight
 * that sanding alone would need is no fault of the bow.
 */
export function noChoiceOf(options: NextBiteOptions, rules: BiteRules): NoChoice | null {
  const { response, method, state, tiller, tracking = { upper: null, lower: null } } = options;
  const bites = oneStepEach
    .map(([upper, lower]) =>
      candidateOf(
        limbBite(response, method, 'upper', upper, tracking),
        limbBite(response, method, 'lower', lower, tracking),
      ),
    )
    .filter(({ modelledDrop }) => modelledDrop > 0)
    .map((bite) => {
      const dropLbf = state.weightLbf * state.effectiveness * bite.modelledDrop;
      return { dropLbf, forecast: forecastOf(options, rules, bite) };
    });
  const off = Math.max(Math.abs(tiller.nowIn - tiller.targetIn), tillerMoves(rules));
  const keepTiller = bites.filter(
    ({ forecast }) => Math.abs(forecast.tillerIn - tiller.targetIn) <= off,
  );
  const smallest = (keepTiller.length > 0 ? keepTiller : bites).toSorted(
    (a, b) => a.dropLbf - b.dropLbf,
  )[0];
  if (smallest === undefined) return null;
  if (keepTiller.length === 0) return { of: 'tiller', ...smallest };
  const isUnsure = smallest.forecast.chanceUnder > mostChance(options, rules);
  return { of: isUnsure ? 'chance' : 'size', ...smallest };
}
