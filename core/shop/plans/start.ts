import type { PlanStart } from '../../../shared/plan-record.ts';
import { weightText } from '../../../shared/weight-text.ts';
import type { OpenShop } from '../../storage/context.ts';
import { benchPolicyOf } from '../bench-policy/policy.ts';
import { bowLine } from '../bows/bow-line.ts';
import { limbSetOfBow } from '../bows/limb-sets.ts';
import { allowanceFrom, effectivenessFrom } from '../learned/figures.ts';
import { type Construction, closedJobs } from '../learned/jobs.ts';
import { readOrder } from '../orders/order-row.ts';
import { phaseWords } from '../readings/phases.ts';
import { sessionWeights } from '../readings/weights.ts';
import { blankBow } from './blank.ts';
import { whyNoPlan } from './may-plan.ts';
import { recordsOfBow, recordsOfOrder, type StartRecords } from './records.ts';
import { startBow } from './start-bow.ts';
import { type Figures, startWish } from './start-wish.ts';

type Db = OpenShop['read'];

/** Common practice: blends out 2 to 3 in from the fade, even to half the limb, tapering out. */
const usualChoices = {
  cutShape: { fromIn: 2, fullFromIn: 3, carriedPart: 0.5, endsShortIn: 0 },
  face: 'both' as const,
  methods: null,
};

async function figuresOf(
  db: Db,
  construction: Construction,
  section: 'measured' | 'unknown',
): Promise<Figures> {
  const jobs = await closedJobs(db);
  const policy = await benchPolicyOf(db);
  const of = (sanding: keyof Figures['allowances']) =>
    allowanceFrom(jobs, { construction, sanding }, policy);
  return {
    allowances: {
      'full strip': of('full strip'),
      'final sanding only': of('final sanding only'),
    },
    effectiveness: effectivenessFrom(jobs, section),
  };
}

function readingOf({ reading, weightLbf, drawIn }: StartRecords): PlanStart['reading'] {
  if (reading === null || weightLbf === null) return null;
  return {
    id: reading.id,
    phase: phaseWords[reading.phase],
    weighedAt: reading.weighed_at,
    text: weightText(weightLbf, drawIn, reading.draw_reference),
  };
}

function weightsOf({ reading }: StartRecords): PlanStart['input']['readings'] {
  if (reading === null) return [];
  return sessionWeights(reading.pulls, reading.draw_reference).map(({ drawIn, forceLbf }) => ({
    drawIn,
    forceLbf: Number(forceLbf.toFixed(3)),
  }));
}

async function startOf(db: Db, records: StartRecords): Promise<PlanStart> {
  const { bow, order, limbSet, geometry } = records;
  const policy = await benchPolicyOf(db);
  const started = startBow(records);
  const figures = await figuresOf(db, bow.construction, started.bow.section);
  const wished = startWish(records, policy, figures);
  return {
    input: {
      bow: started.bow,
      wish: wished.wish,
      choices: usualChoices,
      readings: weightsOf(records),
      ownDrawIn: records.ownDrawIn,
    },
    about: {
      orderId: order?.id ?? null,
      orderNumber: order?.number ?? null,
      rowVersion: order?.row_version ?? null,
      bowId: bow.id,
      bowName: bowLine(bow),
      limbSetId: limbSet?.id ?? null,
      limbSetName: limbSet?.name ?? null,
    },
    geometry:
      geometry === null
        ? null
        : { id: geometry.id, version: geometry.version, measuredAt: geometry.measured_at },
    reading: readingOf(records),
    gaps: [...started.gaps, ...wished.gaps].slice(0, 60),
    ...figures,
    notNow: order === null ? null : whyNoPlan(order),
  };
}

/** @see contract.plans.start */
export async function startPlan(shop: OpenShop, orderId: string): Promise<PlanStart> {
  const order = await readOrder(shop.read, orderId);
  if (order.bow_id === null) {
    const blank = await startBlank(shop);
    const { id, number, row_version: rowVersion } = order;
    const about = { ...blank.about, orderId: id, orderNumber: number, rowVersion };
    return { ...blank, about, notNow: whyNoPlan(order) };
  }
  return startOf(shop.read, await recordsOfOrder(shop.read, { ...order, bow_id: order.bow_id }));
}

/** @see contract.plans.startFromBow */
export async function startFromBow(
  shop: OpenShop,
  { bowId, limbSetId }: { bowId: string; limbSetId: string | null },
): Promise<PlanStart> {
  if (limbSetId !== null) await limbSetOfBow(shop.read, limbSetId, bowId);
  return startOf(shop.read, await recordsOfBow(shop.read, bowId, limbSetId));
}

/** @see contract.plans.startBlank */
export async function startBlank(shop: OpenShop): Promise<PlanStart> {
  const policy = await benchPolicyOf(shop.read);
  const figures = await figuresOf(shop.read, 'glass-laminated', 'unknown');
  const { mean, sd } = figures.allowances['full strip'];
  return {
    input: {
      bow: blankBow,
      wish: {
        weightLbf: 50,
        weightSdLbf: 0.3,
        drawIn: 28,
        targetLbf: 45,
        tillerIn: 0.0625,
        tillerTargetIn: 0.0625,
        sanding: 'full strip',
        allowanceMeanThou: mean,
        allowanceSdThou: sd,
        reserveLbf: policy.reserveLbf,
        effectivenessMean: figures.effectiveness.mean,
        effectivenessSd: figures.effectiveness.sd,
      },
      choices: usualChoices,
      readings: [],
      ownDrawIn: null,
    },
    about: {
      orderId: null,
      orderNumber: null,
      rowVersion: null,
      bowId: null,
      bowName: '',
      limbSetId: null,
      limbSetName: null,
    },
    geometry: null,
    reading: null,
    gaps: [],
    ...figures,
    notNow: null,
  };
}
