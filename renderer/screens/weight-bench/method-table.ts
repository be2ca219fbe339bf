import { type Limb, limbs } from '../../../shared/bows.ts';
import { decimal, inchFraction } from '../../../shared/measure.ts';
import type {
  LimbAnswer,
  MethodAnswer,
  MethodOutcomeAnswer,
  Reckoned,
} from '../../../shared/plan-answer.ts';
import { type PlanMethod, planMethodLabels } from '../../../shared/weight-plan.ts';

/** `recommended`: the gentlest way that gets there; `short`: ends over the target. */
export type MethodState = 'recommended' | 'possible' | 'short' | 'refused' | 'no-answer';

export interface MethodColumn {
  method: PlanMethod;
  title: string;
  state: MethodState;
  /** The state in words. */
  said: string;
  /** Null where the method has no modelled answer. */
  plan: MethodAnswer | null;
}

export interface MethodRow {
  name: string;
  /** Draw that the weights of the row belong to. */
  said?: string;
  /** One cell a column, one line a figure; no lines where nothing is told. */
  cells: string[][];
  /** Words over several lines, set smaller. */
  isText?: boolean;
}

export interface MethodTable {
  columns: MethodColumn[];
  rows: MethodRow[];
}

const limbNames: Record<Limb, string> = { upper: 'Upper', lower: 'Lower' };
const limbWord: Record<Limb, string> = { upper: 'upper', lower: 'lower' };
const leastShownIn = 0.0005;
const leastShownThou = 0.05;

const percent = (part: number, digits = 0) => `${decimal(100 * part, digits)} %`;
const inches = (value: number) => `${value.toFixed(3)}"`;
const pounds = (value: number) => `${value.toFixed(1)} lb`;

/** A tiller in 64ths with the limb that is the weaker. */
export function tillerText(tillerIn: number): string {
  const size = inchFraction(Math.abs(tillerIn), 64);
  if (size === '0') return 'even';
  return tillerIn > 0 ? `+${size}"` : `-${size}"`;
}

/** What comes off one limb, each width both per side and in total. */
export function offLines(limb: Limb, { offPerSideIn, offTotalIn, offThou }: LimbAnswer): string[] {
  const lines: string[] = [];
  if (offPerSideIn >= leastShownIn) {
    lines.push(`${inches(offPerSideIn)} per side, ${inches(offTotalIn)} in total`);
  }
  const { belly, back } = offThou;
  const isOff = (thou: number) => thou >= leastShownThou;
  if (isOff(belly) && isOff(back) && Math.abs(belly - back) < leastShownThou) {
    lines.push(`${belly.toFixed(1)} thou off each face`);
  } else {
    if (isOff(belly)) lines.push(`${belly.toFixed(1)} thou off the belly`);
    if (isOff(back)) lines.push(`${back.toFixed(1)} thou off the back`);
  }
  return lines.length === 0
    ? [`${limbNames[limb]}: nothing`]
    : lines.map((text, i) => (i === 0 ? `${limbNames[limb]}: ${text}` : text));
}

function weightLines({ afterWork, afterFinishing, finishingTakesLbf }: MethodAnswer): string[] {
  const [low, high] = afterFinishing.bandLbf;
  return [
    `${pounds(afterFinishing.weightLbf)} when finished`,
    `80 % between ${low.toFixed(1)} and ${high.toFixed(1)}`,
    `${pounds(afterWork.weightLbf)} after the work; sanding takes ${finishingTakesLbf.toFixed(1)}`,
  ];
}

function glassLines(plan: MethodAnswer): string[] {
  return (['back', 'belly'] as const).flatMap((face) => {
    const left = limbs.map((limb) => plan[limb].glassLeftIn[face]);
    const [upper, lower] = left;
    if (typeof upper !== 'number' || typeof lower !== 'number') return [`No glass on the ${face}`];
    const thou = (value: number) => (1000 * value).toFixed(1);
    return Math.abs(upper - lower) < 0.00005
      ? [`${thou(upper)} thou on the ${face}`]
      : [`${thou(upper)} upper, ${thou(lower)} lower, thou on the ${face}`];
  });
}

function narrowestLines({ narrowest }: MethodAnswer): string[] {
  if (narrowest === null) return ['No width comes off'];
  const { widthIn, oldWidthIn, limb, fromFadeIn, thicknessIn } = narrowest;
  return [
    `${inches(widthIn)}, was ${inches(oldWidthIn)}`,
    `${limbWord[limb]} limb, ${decimal(fromFadeIn, 2)}" from the fade`,
    `${decimal(widthIn / thicknessIn, 1)} times its thickness`,
  ];
}

function sideLines({ weakestSide }: MethodAnswer): string[] {
  if (weakestSide === null) return ['Unchanged'];
  const { limb, fromFadeIn, sideStiffness } = weakestSide;
  return [
    `${percent(sideStiffness)} left`,
    `${limbWord[limb]} limb, ${decimal(fromFadeIn, 2)}" from the fade`,
  ];
}

/** Neighbouring places that rise too much are one hinge. */
export function hingeLines({ strain }: MethodAnswer): string[] {
  const said = limbs.flatMap((limb) => {
    const here = strain.hinges.filter((hinge) => hinge.limb === limb);
    if (here.length === 0) return [];
    const at = here.map(({ fromFadeIn }) => fromFadeIn);
    const [from, to] = [Math.min(...at), Math.max(...at)];
    const where =
      from === to ? `at ${decimal(from, 1)}"` : `${decimal(from, 1)}" to ${decimal(to, 1)}"`;
    const worst = Math.max(...here.map(({ risePart }) => risePart));
    return [
      `Hinge: ${limbWord[limb]} limb, ${where} from the fade, up to ${percent(worst, 1)} more`,
    ];
  });
  return said.length === 0 ? ['No hinge'] : said;
}

function strainLines(plan: MethodAnswer): string[] {
  const { peakBefore, peakAfter } = plan.strain;
  const peak = (value: number) => `${(100 * value).toFixed(2)} %`;
  return [`Peak ${peak(peakAfter)}, was ${peak(peakBefore)}`, ...hingeLines(plan)];
}

function tillerLines({ tiller }: MethodAnswer): string[] {
  const lines = [`${tillerText(tiller.afterIn)}, now ${tillerText(tiller.nowIn)}`];
  if (!tiller.reached) lines.push(`not reached: wanted ${tillerText(tiller.targetIn)}`);
  return lines;
}

function tipLines({ tipMass }: MethodAnswer): string[] {
  const { changePart } = tipMass;
  if (Math.abs(changePart) < 0.0005) return ['Unchanged'];
  return [`${decimal(Math.abs(100 * changePart), 1)} % ${changePart < 0 ? 'lighter' : 'heavier'}`];
}

const limitNames: Record<string, string> = {
  glass: 'glass',
  facing: 'facing',
  film: 'finish on the limbs',
  width: 'least width',
  'width-to-thickness': 'width to thickness',
  'side-stiffness': 'side stiffness',
  'steep-recurve': 'steep recurve',
  'total-drop': 'total drop',
  'nothing-to-take': 'nothing to take off',
  material: 'not enough material',
};

/** The limit that forbids a method, as the head of its column says it. */
export const limitName = (limit: string): string => limitNames[limit] ?? limit;

const refusalLines = ({ refusals }: MethodAnswer) => refusals.map(({ sentence }) => sentence);

const weightRows: readonly string[] = ['Weight', 'Stop at'];
const rowsOf: readonly (readonly [string, (plan: MethodAnswer) => string[], boolean?])[] = [
  ['What comes off', (plan) => limbs.flatMap((limb) => offLines(limb, plan[limb]))],
  ['Weight', weightLines],
  ['Stop at', ({ stopAtLbf }) => [pounds(stopAtLbf)]],
  ['Glass left', glassLines],
  ['Narrowest', narrowestLines],
  ['Side stiffness', sideLines],
  ['Strain', strainLines],
  ['Tiller', tillerLines],
  ['Tip mass', tipLines],
  ['To know', ({ notes }) => notes, true],
  ['Refused because', refusalLines, true],
];

function columnOf(outcome: MethodOutcomeAnswer, recommended: PlanMethod | null): MethodColumn {
  const { method } = outcome;
  const title = planMethodLabels[method];
  if (outcome.outcome === 'no-answer') {
    return { method, title, state: 'no-answer', said: 'No answer', plan: null };
  }
  const { plan } = outcome;
  const about = { method, title, plan };
  if (method === recommended) return { ...about, state: 'recommended', said: 'Recommended' };
  const [refusal] = plan.refusals;
  if (refusal !== undefined) {
    return { ...about, state: 'refused', said: `Refused: ${limitName(refusal.limit)}` };
  }
  if (!plan.reachesTarget) return { ...about, state: 'short', said: 'Stays over the target' };
  return { ...about, state: 'possible', said: 'Possible' };
}

/**
 * All ways side by side: sanding first, every row with one cell a way. Empty rows are left out.
 * @param drawIn AMO draw that the weights are reckoned at, inches.
 */
export function methodTable(
  { methods, recommended }: Pick<Reckoned, 'methods' | 'recommended'>,
  drawIn: number,
): MethodTable {
  const columns = methods.map((outcome) => columnOf(outcome, recommended));
  const rows = rowsOf.map(([name, lines, isText = false]) => ({
    name,
    ...(weightRows.includes(name) ? { said: `@ ${decimal(drawIn, 4)}"` } : {}),
    isText,
    cells: methods.map((outcome) => {
      if (outcome.outcome === 'planned') return lines(outcome.plan);
      return name === 'Refused because' ? [outcome.sentence] : [];
    }),
  }));
  return { columns, rows: rows.filter(({ cells }) => cells.some((cell) => cell.length > 0)) };
}

/** What the pictures show: the way that was asked for if it has an answer, else the best there is. */
export function shownColumn(
  columns: readonly MethodColumn[],
  asked: PlanMethod | null,
): MethodColumn | null {
  const answered = columns.filter(({ plan }) => plan !== null);
  return (
    answered.find(({ method }) => method === asked) ??
    answered.find(({ state }) => state === 'recommended') ??
    answered.find(({ state }) => state === 'possible') ??
    answered[0] ??
    null
  );
}

/** Why a way cannot be accepted; null where it can. */
export function whyNotAccept({ title, state, plan }: MethodColumn): string | null {
  if (plan === null || state === 'no-answer') return `${title} has no answer for this bow.`;
  const [refusal] = plan.refusals;
  if (refusal !== undefined) return `${title} is refused. ${refusal.sentence}`;
  if (plan.reachesTarget) return null;
  return `${title} would end at ${pounds(plan.afterFinishing.weightLbf)}, over the target.`;
}
