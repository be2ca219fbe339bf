import { ShopError } from '../../../shared/errors.ts';
import { decimal } from '../../../shared/measure.ts';
import { type PlanMethod, planMethods } from '../../../shared/weight-plan.ts';
import type { PlanBow } from './bow.ts';
import type { PlanLimits } from './limits.ts';
import type { Refusal } from './refusals.ts';
import { type PlanSetting, trial } from './setting.ts';
import type { UnitOfWork } from './work.ts';

const narrows: readonly PlanMethod[] = ['narrowing', 'mixed'];
const thins: readonly PlanMethod[] = ['thinning', 'mixed'];
/** Methods that take thickness. */
const facesFrom: readonly PlanMethod[] = [...thins, 'belly-scrape'];

/** Methods that a construction allows at all. The back of an all-wood bow is never thinned. */
export function methodsFor({ construction }: PlanBow): PlanMethod[] {
  return planMethods.filter((method) =>
    construction === 'all-wood' ? !thins.includes(method) : method !== 'belly-scrape',
  );
}

function refuse(sentence: string): never {
  throw new ShopError('BAD_INPUT', sentence, { methods: sentence });
}

/** Faces that may be thinned: plain glass that nothing lies under but core. */
const mayBeThinned = ({ bellyFacing, backFacing }: PlanBow) =>
  bellyFacing === 'E-glass' && backFacing === 'E-glass';

function unthinnedFacing({ bellyFacing, backFacing }: PlanBow): string {
  const [face, facing] =
    bellyFacing === 'E-glass' ? (['back', backFacing] as const) : (['belly', bellyFacing] as const);
  return facing === 'unknown'
    ? `nobody knows the facing of the ${face}`
    : `the ${face} is faced with ${facing}`;
}

/**
 * Methods that were asked for, in the order they are tried, or all that suit the bow.
 * @throws ShopError BAD_INPUT for thinning or a mix on an all-wood bow, a belly scrape on another,
 * or thinning alone where a facing forbids it
 */
export function methodsAsked(bow: PlanBow, asked: readonly PlanMethod[] | null): PlanMethod[] {
  if (asked === null) return methodsFor(bow);
  if (asked.length === 0) refuse('Choose at least one way to take weight off.');
  if (bow.construction === 'all-wood' && asked.some((method) => thins.includes(method))) {
    refuse('The back of an all-wood bow is never thinned: scrape its belly instead.');
  }
  if (bow.construction !== 'all-wood' && asked.includes('belly-scrape')) {
    refuse('Only the belly of an all-wood bow is scraped: narrow this bow or thin both its faces.');
  }
  if (asked.every((method) => method === 'thinning') && !mayBeThinned(bow)) {
    refuse(`This bow is not thinned, because ${unthinnedFacing(bow)}: choose another way.`);
  }
  return planMethods.filter((method) => asked.includes(method));
}

/** Degrees that the hook of a recurve turns through, from the shape of the unstrung limb. */
function hookDeg(bow: PlanBow): number {
  const of = (limb: 'upper' | 'lower') => {
    const { lengthIn, unstrung } = bow.measured[limb].profile;
    if (unstrung.recurveIn === 0) return 0;
    // Curvature grows evenly over the hook of length l: depth c l^3 / 6, angle c l^2 / 2.
    return ((3 * unstrung.recurveIn) / (lengthIn - unstrung.recurveFromIn)) * (180 / Math.PI);
  };
  return Math.max(of('upper'), of('lower'));
}

/** What forbids a method on this bow whatever the amount. */
export function bans(bow: PlanBow, method: PlanMethod, limits: PlanLimits): Refusal[] {
  const found: Refusal[] = [];
  if (bow.overFinish === true && facesFrom.includes(method)) {
    const sentence =
      'Old finish: no thinning, because thickness was measured over it: strip and measure bare.';
    found.push({ limit: 'film', sentence });
  }
  if (thins.includes(method) && !mayBeThinned(bow)) {
    const sentence = `Facing: no thinning, because ${unthinnedFacing(bow)}.`;
    found.push({ limit: 'facing', sentence });
  }
  const turn = hookDeg(bow);
  if (narrows.includes(method) && turn > limits.steepRecurveDeg) {
    const sentence = `Steep recurve: no narrowing, because the hook turns through ${decimal(turn, 0)} degrees, over ${decimal(limits.steepRecurveDeg, 0)}.`;
    found.push({ limit: 'steep-recurve', sentence });
  }
  return found;
}

const narrowingUnit: UnitOfWork = { sideIn: 1 / 16, bellyThou: 0, backThou: 0 };
const thinningUnit: UnitOfWork = { sideIn: 0, bellyThou: 2, backThou: 2 };

/** Half of the drop by each: as many thousandths as take what one unit of narrowing takes. */
function mixedUnit(setting: PlanSetting): UnitOfWork {
  const once = { upper: 0.5, lower: 0.5 };
  const drop = (unit: UnitOfWork) => {
    const after = trial(setting, unit, once);
    return after === null ? Number.NaN : setting.atNone.weightPart - after.weightPart;
  };
  const ratio = drop(narrowingUnit) / drop(thinningUnit);
  const faceThou = Number.isFinite(ratio) && ratio > 0 ? thinningUnit.bellyThou * ratio : 2;
  return { sideIn: narrowingUnit.sideIn / 2, bellyThou: faceThou / 2, backThou: faceThou / 2 };
}

/** What one unit of a method takes off; about a pound or two. */
export function unitOf(method: PlanMethod, setting: PlanSetting): UnitOfWork {
  switch (method) {
    case 'sanding':
      return { sideIn: 0, bellyThou: 0, backThou: 0 };
    case 'narrowing':
      return narrowingUnit;
    case 'thinning':
      return thinningUnit;
    case 'mixed':
      return mixedUnit(setting);
    case 'belly-scrape':
      return { sideIn: 0, bellyThou: 4, backThou: 0 };
  }
}
