import type { BenchStep, BenchView } from '../../shared/contract/bench-work.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { BenchViewDriver } from './bench-view-driver.ts';
import { weighBehind } from './shop-scale.ts';

type Step<Kind extends BenchStep['kind']> = Extract<BenchStep, { kind: Kind }>;

/** Goes on with a job without a screen, as the bench advises. */
export class BenchBehind extends BenchViewDriver {
  readonly scaleId: string;

  constructor(driver: BenchViewDriver, scaleId: string) {
    super(driver.page, driver.client, driver.orderId, driver.world);
    this.scaleId = scaleId;
  }

  override async bite({ advice }: BenchView, step: Step<'bite'>): Promise<void> {
    const { orderId } = this;
    await this.client.bench.takeBite({
      commandId: newCommandId(),
      orderId,
      advice,
      other: null,
      tool: '',
      note: '',
    });
    this.hand(step);
  }

  override async remeasure(_: BenchView, step: Step<'remeasure'>): Promise<void> {
    const read = this.world.widthsIn();
    const { removalId, rowVersion, places } = step;
    const widths = places.map(({ limb, fromFadeIn }) => {
      const widthIn = read[limb][this.world.bow.placesIn.indexOf(fromFadeIn)] ?? 0;
      return { limb, fromFadeIn, widthIn };
    });
    const commandId = newCommandId();
    await this.client.bench.remeasure({ commandId, removalId, rowVersion, widths, faces: [] });
  }

  override async lookAtGlass(): Promise<void> {
    const { orderId } = this;
    const seen = { showThrough: false, strands: false, runOut: false, exposedCore: false };
    await this.client.bench.checkGlass({ commandId: newCommandId(), orderId, ...seen, note: '' });
  }

  override async readTiller(): Promise<void> {
    await this.client.bench.readTiller({
      commandId: newCommandId(),
      orderId: this.orderId,
      tillerIn: this.world.tiller(),
      upperTrack: 'centre',
      lowerTrack: 'centre',
      braceIn: null,
      note: '',
    });
  }

  override async weigh(forceLbf: number): Promise<void> {
    const { orderId, scaleId } = this;
    const phase = this.done.includes('sand-only') ? 'after-sanding' : 'work';
    await weighBehind(this.client, { orderId, scaleId, phase, forceLbf });
  }

  override async sand({ advice }: BenchView): Promise<void> {
    const { orderId } = this;
    const input = { commandId: newCommandId(), orderId, advice };
    await this.client.bench.recordSanding({ ...input, tool: 'P320', note: '' });
    this.world.stripAndSand('full strip');
  }
}
