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

/** Tiller may wander by this while it stands well, inches: half its tolerance. */
const tillerMoves = (rules: BiteRules) => rules.tillerToleranceIn / 2;

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
