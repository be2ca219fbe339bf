import { planBowOf } from '../../core/limb-room/from-input.ts';
import { getBench } from '../../core/shop/bench/bench-view.ts';
import { checkGlass } from '../../core/shop/bench/glass-checks.ts';
import { remeasure } from '../../core/shop/bench/remeasure.ts';
import { recordSanding } from '../../core/shop/bench/sanding.ts';
import { strikeOutRemoval } from '../../core/shop/bench/strike-out.ts';
import { answerSurprise } from '../../core/shop/bench/surprise.ts';
import { takeBite } from '../../core/shop/bench/take-bite.ts';
import { readTiller } from '../../core/shop/bench/tiller-readings.ts';
import { inputOf, responseOf, standingPlan } from '../../core/shop/plans/stored.ts';
import { addReading } from '../../core/shop/readings/readings.ts';
import { followCard, widthsAt } from '../../demo-data/simulated/follow-card.ts';
import { JobWorld } from '../../demo-data/simulated/job-world.ts';
import { drawIn } from '../../demo-data/simulated/simulated-bow.ts';
import { trueBow } from '../../demo-data/simulated/true-bow.ts';
import type { BenchStep, BenchView } from '../../shared/contract/bench-work.ts';
import type { Stage } from '../../shared/stages.ts';
import { type PlanShop, planShop } from './plan-shop.ts';
import { seededRandom } from './random.ts';
import { newCommandId, type TestShop } from './test-shop.ts';

type Step<Kind extends BenchStep['kind']> = Extract<BenchStep, { kind: Kind }>;

/** A bowyer who does what the bench says, on a bow that nobody knows exactly. */
export class BenchJob {
  readonly kit: PlanShop;
  readonly world: JobWorld;
  /** Kinds of the steps that were done. */
  readonly done: string[] = [];

  constructor(kit: PlanShop, world: JobWorld) {
    this.kit = kit;
    this.world = world;
  }

  get owner() {
    return this.kit.shop.owner;
  }
  get orderId() {
    return this.kit.orderId;
  }

  view(): Promise<BenchView> {
    return getBench(this.owner, this.orderId);
  }

  /** Puts the order straight into a stage: the way there is tested with the gates. */
  async place(stage: Stage) {
    const { write } = this.kit.shop.core.shop();
    await write.updateTable('shop_order').set({ stage }).where('id', '=', this.orderId).execute();
  }

  async weigh(lbf: number, phase: 'work' | 'after-sanding' = 'work') {
    const drawn = (forceLbf: number) => ({ drawIn, forceLbf });
    return addReading(this.owner, {
      commandId: newCommandId(),
      orderId: this.orderId,
      phase,
      drawReference: 'amo',
      scaleId: this.kit.scaleId,
      rigZeroLbf: 0,
      braceIn: 7.25,
      stringNote: 'shop string, 14 strand',
      stringTrack: '',
      limbSetId: null,
      riserNote: '',
      moisturePct: null,
      strungMinutes: null,
      supportPoint: 'throat',
      pullPoint: 'nock point',
      tillerIn: null,
      temperatureF: 68,
      flexedFirst: true,
      note: '',
      pulls: [lbf + 1, lbf, lbf, lbf].map(drawn),
    });
  }

  async takeBite(view: BenchView, other: { upper: number; lower: number } | null = null) {
    const taken = await takeBite(this.owner, {
      commandId: newCommandId(),
      orderId: this.orderId,
      advice: view.advice,
      other,
      tool: 'scraper',
      note: '',
    });
    if (taken.outcome !== 'recorded') throw new Error(JSON.stringify(taken));
    return taken;
  }

  remeasure(step: Step<'remeasure'>) {
    const { removalId, rowVersion } = step;
    const widths = widthsAt(this.world, step);
    return this.measure({ removalId, rowVersion, widths, faces: [] });
  }

  measure(input: Omit<Parameters<typeof remeasure>[1], 'commandId'>) {
    return remeasure(this.owner, { commandId: newCommandId(), ...input });
  }

  strikeOutRemoval(id: string, rowVersion: number) {
    const input = { commandId: newCommandId(), id, rowVersion, reason: 'never done' };
    return strikeOutRemoval(this.owner, input);
  }

  checkGlass(seen: Partial<Record<'showThrough' | 'strands', boolean>> = {}) {
    return checkGlass(this.owner, {
      commandId: newCommandId(),
      orderId: this.orderId,
      showThrough: false,
      strands: false,
      runOut: false,
      exposedCore: false,
      note: '',
      ...seen,
    });
  }

  readTiller(tillerIn = this.world.tiller()) {
    return readTiller(this.owner, {
      commandId: newCommandId(),
      orderId: this.orderId,
      tillerIn,
      upperTrack: 'centre',
      lowerTrack: 'centre',
      braceIn: null,
      note: '',
    });
  }

  answer({ readingId, rowVersion, questions }: Step<'questions'>, wrong: string | null = null) {
    return answerSurprise(this.owner, {
      commandId: newCommandId(),
      readingId,
      rowVersion,
      answers: questions.map(({ about }) => ({ about, isRight: about !== wrong })),
      note: '',
    });
  }

  async sand(view: BenchView) {
    this.world.stripAndSand('full strip');
    const input = { commandId: newCommandId(), orderId: this.orderId, advice: view.advice };
    const sanded = await recordSanding(this.owner, { ...input, tool: '320 grit', note: '' });
    if (sanded.outcome !== 'recorded') throw new Error(JSON.stringify(sanded));
  }

  /** Does the one step; false where the bench has nothing more to do. */
  async step(): Promise<boolean> {
    const view = await this.view();
    const { step } = view;
    this.done.push(step.kind === 'bite' && step.isLightPass ? 'light pass' : step.kind);
    switch (step.kind) {
      case 'bite':
        await this.takeBite(view);
        followCard(this.world, step);
        return true;
      case 'remeasure':
        await this.remeasure(step);
        return true;
      case 'glass-check':
        await this.checkGlass();
        return true;
      case 'read-tiller':
        await this.readTiller();
        return true;
      case 'weigh':
      case 'weigh-again': {
        const sanded = this.done.includes('sand');
        await this.weigh(this.world.weigh(), sanded ? 'after-sanding' : 'work');
        return true;
      }
      case 'questions':
        await this.answer(step);
        return true;
      case 'sand-only':
        if (!step.here) {
          await this.place('strip-sand');
          return true;
        }
        await this.sand(view);
        this.done.push('sand');
        return true;
      default:
        return false;
    }
  }

  /** Steps until the bench asks for one of these. */
  async until(...kinds: BenchStep['kind'][]): Promise<BenchView> {
    for (let i = 0; i < 120; i += 1) {
      const view = await this.view();
      if (kinds.includes(view.step.kind)) return view;
      if (!(await this.step())) throw new Error(`stopped: ${JSON.stringify(view.step)}`);
    }
    throw new Error(`no end: ${this.done.join(', ')}`);
  }

  async finish(): Promise<BenchView> {
    for (let i = 0; i < 200; i += 1) if (!(await this.step())) return this.view();
    throw new Error(`no end: ${this.done.join(', ')}`);
  }
}

/** The 52 lb longbow with its plan accepted, at weight work; the true bow comes from a seed. */
export async function benchJob(
  seed = 1,
  accept: Parameters<PlanShop['accept']>[0] = {},
  shop?: TestShop,
): Promise<BenchJob> {
  const kit = await planShop(true, shop);
  await kit.accept(accept);
  await kit.flow.grant('alteration-acknowledgement');
  const plan = await standingPlan(kit.shop.owner.read, kit.orderId);
  if (plan === null) throw new Error('no plan');
  const placesIn = responseOf(plan).upper.stations.map(({ fromFadeIn }) => fromFadeIn);
  const at = { tillerIn: inputOf(plan).wish.tillerIn, lbf: plan.weight_lbf };
  const bow = trueBow(planBowOf(inputOf(plan)).measured, placesIn, at);
  const job = new BenchJob(kit, new JobWorld(bow, seededRandom(seed)));
  await job.place('weight-work');
  return job;
}
