import { planBowOf } from '../../core/limb-room/from-input.ts';
import { JobWorld } from '../../demo-data/simulated/job-world.ts';
import { trueBow } from '../../demo-data/simulated/true-bow.ts';
import type { BenchStep, BenchView } from '../../shared/contract/bench-work.ts';
import type { Client } from '../support/doors.ts';
import { seededRandom } from '../support/random.ts';
import { expect, type Page } from './page.ts';

type Step<Kind extends BenchStep['kind']> = Extract<BenchStep, { kind: Kind }>;

/** A bow behind the readings: it agrees with the plan, but only as far as real limbs do. */
export async function bowBehind(client: Client, planId: string, seed: number): Promise<JobWorld> {
  const { input, response } = await client.plans.get({ id: planId });
  const placesIn = response.upper.stations.map(({ fromFadeIn }) => fromFadeIn);
  const at = { tillerIn: input.wish.tillerIn, lbf: input.wish.weightLbf };
  return new JobWorld(trueBow(planBowOf(input).measured, placesIn, at), seededRandom(seed));
}

/** Works at the bench view with keys only: the number pad, a calliper and a scale that type. */
export class BenchViewDriver {
  readonly page: Page;
  readonly client: Client;
  readonly orderId: string;
  readonly world: JobWorld;
  readonly done: BenchStep['kind'][] = [];

  constructor(page: Page, client: Client, orderId: string, world: JobWorld) {
    this.page = page;
    this.client = client;
    this.orderId = orderId;
    this.world = world;
  }

  view(): Promise<BenchView> {
    return this.client.bench.get({ orderId: this.orderId });
  }

  /** Sends what a device or a hand sends, ended by Enter. */
  async enter(text = ''): Promise<void> {
    await this.page.keyboard.type(text);
    await this.page.keyboard.press('Enter');
  }

  get readBack() {
    return this.page.getByRole('region', { name: 'Read back' });
  }

  /** What was keyed in is read back, and saved with Enter. */
  async save(before: BenchView): Promise<void> {
    await expect(this.readBack).toBeVisible();
    await this.enter();
    await expect.poll(async () => (await this.view()).advice).not.toBe(before.advice);
    await expect(this.readBack).toBeHidden();
  }

  /** The first pull settles the bow; the counted ones average to the weight. */
  async weigh(lbf: number): Promise<void> {
    const before = await this.view();
    await expect(this.page.getByText(/This first pull is dropped/)).toBeVisible();
    for (const pull of [lbf + 1, lbf - 0.1, lbf + 0.1]) await this.enter(pull.toFixed(2));
    await this.enter();
    await this.save(before);
  }

  async bite(view: BenchView, step: Step<'bite'>): Promise<void> {
    await expect(this.page.getByText(view.sentence)).toBeVisible();
    await this.enter();
    await this.save(view);
    this.hand(step);
  }

  /** What the hand does at the card. */
  hand({ method, upper, lower, face }: Step<'bite'>): void {
    const limb = (work: typeof upper) => ({
      cuts: work.cuts.map((cut) => ({
        fromFadeIn: cut.fromFadeIn,
        leftIn: cut.offLeftIn,
        rightIn: cut.offRightIn,
      })),
      face,
      bellyThou: work.bellyThou,
      backThou: work.backThou,
      edgeRadiusIn: null,
    });
    const removal = { upper: limb(upper), lower: limb(lower) };
    if (method === 'narrow') this.world.cut(removal);
    else if (method === 'strokes') this.world.stroke(removal);
    else this.world.thin(removal);
  }

  async remeasure(view: BenchView, { places }: Step<'remeasure'>): Promise<void> {
    const read = this.world.widthsIn();
    await expect(this.page.getByRole('heading', { name: /in from the fade/ })).toBeVisible();
    for (const { limb, fromFadeIn } of places) {
      const width = read[limb][this.world.bow.placesIn.indexOf(fromFadeIn)] ?? 0;
      await this.enter(width.toFixed(4));
    }
    await this.enter();
    await this.save(view);
  }

  async lookAtGlass(view: BenchView): Promise<void> {
    await expect(this.page.getByText('UNSTRING - CHECK GLASS')).toBeVisible();
    await this.enter();
    for (let sign = 0; sign < 4; sign += 1) await this.enter('2');
    await this.enter();
    await this.save(view);
  }

  async readTiller(view: BenchView): Promise<void> {
    await expect(this.page.getByText(/Upper minus lower string distance/)).toBeVisible();
    await this.enter(this.world.tiller().toFixed(4));
    for (let limb = 0; limb < 2; limb += 1) await this.enter('2');
    await this.enter();
    await this.save(view);
  }

  /** Stripped and sanded on every face, and said so. */
  async sand(view: BenchView): Promise<void> {
    await expect(this.page.getByText('STOP - SAND ONLY')).toBeVisible();
    await this.enter();
    await this.save(view);
    this.world.stripAndSand('full strip');
  }

  /** The questions in their order; the one that is about `wrong` is answered with no. */
  async answer(view: BenchView, { questions }: Step<'questions'>, wrong: string | null) {
    for (const { about, question } of questions) {
      await expect(this.page.getByText(question)).toBeVisible();
      await this.enter(about === wrong ? '2' : '1');
    }
    await this.save(view);
  }

  /** Does the one step that the bench asks for; false where there is nothing to do by it. */
  async step(): Promise<boolean> {
    const view = await this.view();
    const { step } = view;
    this.done.push(step.kind);
    if (step.kind === 'bite') await this.bite(view, step);
    else if (step.kind === 'remeasure') await this.remeasure(view, step);
    else if (step.kind === 'glass-check') await this.lookAtGlass(view);
    else if (step.kind === 'read-tiller') await this.readTiller(view);
    else if (step.kind === 'weigh' || step.kind === 'weigh-again') {
      await this.weigh(this.world.weigh());
    } else if (step.kind === 'sand-only' && step.here) await this.sand(view);
    else if (step.kind === 'questions') await this.answer(view, step, null);
    else return false;
    return true;
  }

  async until(...kinds: BenchStep['kind'][]): Promise<BenchView> {
    for (let i = 0; i < 120; i += 1) {
      const view = await this.view();
      if (kinds.includes(view.step.kind)) return view;
      if (!(await this.step())) throw new Error(`stopped at ${view.step.kind}: ${view.sentence}`);
    }
    throw new Error(`no end: ${this.done.join(', ')}`);
  }
}
