import type { BenchStep, BenchView } from '../../shared/contract/bench-work.ts';
import { decimal } from '../../shared/measure.ts';
import { BenchViewDriver } from './bench-view-driver.ts';
import { OrderDriver } from './order-driver.ts';
import { expect } from './page.ts';
import type { Session } from './session.ts';

type Step<Kind extends BenchStep['kind']> = Extract<BenchStep, { kind: Kind }>;

/** Works with a mouse: bites at the bench view, everything else from the page of the order. */
export class DeskBenchDriver extends BenchViewDriver {
  readonly session: Session;

  constructor(session: Session, ...[client, orderId, world]: BehindOf) {
    super(session.page, client, orderId, world);
    this.session = session;
  }

  get order(): OrderDriver {
    return new OrderDriver(this.page);
  }

  get records() {
    return this.page.getByRole('region', { name: 'Bites, glass and tiller' });
  }

  async atBench(): Promise<void> {
    await this.page.goto(this.session.at(`bench/${this.orderId}`));
  }

  async atOrder(): Promise<void> {
    await this.page.goto(this.session.at(`orders/${this.orderId}`));
  }

  async #click(name: string | RegExp): Promise<void> {
    await this.page.getByRole('button', { name }).click();
  }

  async #saved(before: BenchView): Promise<void> {
    await expect.poll(async () => (await this.view()).advice).not.toBe(before.advice);
  }

  override async bite(view: BenchView, step: Step<'bite'>): Promise<void> {
    await this.atBench();
    await expect(this.page.getByText(view.sentence)).toBeVisible();
    await this.#click(/^Cut done - re-measure/);
    await this.#click(/^Yes, that is off/);
    await this.#saved(view);
    this.hand(step);
  }

  override async remeasure(view: BenchView, { places }: Step<'remeasure'>): Promise<void> {
    const read = this.world.widthsIn();
    await this.atBench();
    const pad = this.page.getByRole('group', { name: 'Number pad' });
    for (const { limb, fromFadeIn } of places) {
      const width = read[limb][this.world.bow.placesIn.indexOf(fromFadeIn)] ?? 0;
      for (const key of width.toFixed(3)) {
        await pad.getByRole('button', { name: key, exact: true }).click();
      }
      await this.#click(/^Take this width/);
    }
    await this.#click(/^Read back/);
    await this.#click(/^Yes, save/);
    await this.#saved(view);
  }

  override async lookAtGlass(view: BenchView): Promise<void> {
    await this.atOrder();
    await this.records.getByRole('button', { name: 'Check the glass' }).click();
    await this.#click('Record: nothing seen');
    await this.#saved(view);
  }

  override async readTiller(view: BenchView): Promise<void> {
    await this.atOrder();
    await this.records.getByRole('button', { name: 'Read the tiller' }).click();
    const form = this.page.getByRole('form', { name: 'Read the tiller' });
    await form.getByLabel(/^Tiller, in/).fill(decimal(this.world.tiller(), 4));
    await form.getByRole('button', { name: 'Record the tiller' }).click();
    await this.#saved(view);
  }

  override async weigh(lbf: number): Promise<void> {
    const before = await this.view();
    await this.atOrder();
    const weight = this.page.getByRole('region', { name: 'Weight', exact: true });
    await weight.getByRole('button', { name: 'Weigh', exact: true }).click();
    await this.order.pull(Number(lbf.toFixed(2)));
    await this.#saved(before);
  }
}

type BehindOf = [
  client: BenchViewDriver['client'],
  orderId: string,
  world: BenchViewDriver['world'],
];
