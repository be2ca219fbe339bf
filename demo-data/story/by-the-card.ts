import { getBench } from '../../core/shop/bench/bench-view.ts';
import { checkGlass } from '../../core/shop/bench/glass-checks.ts';
import { remeasure } from '../../core/shop/bench/remeasure.ts';
import { recordSanding } from '../../core/shop/bench/sanding.ts';
import { answerSurprise } from '../../core/shop/bench/surprise.ts';
import { takeBite } from '../../core/shop/bench/take-bite.ts';
import { readTiller } from '../../core/shop/bench/tiller-readings.ts';
import type { RemovalMethod } from '../../shared/bench.ts';
import type { BenchStep, BenchView } from '../../shared/contract/bench-work.ts';
import { followCard, widthsAt } from '../simulated/follow-card.ts';
import type { JobWorld } from '../simulated/job-world.ts';
import type { Job } from './job.ts';
import { braceOf, weigh } from './weigh.ts';

type Step<Kind extends BenchStep['kind']> = Extract<BenchStep, { kind: Kind }>;
type Refusable = Awaited<ReturnType<typeof takeBite>>;

/** What material comes off with. */
const tools: Partial<Record<RemovalMethod, string>> = {
  narrow: 'Spokeshave, then a 120 grit block',
  thin: 'Cabinet scraper, then 150 grit',
  scrape: 'Cabinet scraper',
  strokes: '320 grit on a hard block',
};

/** What the glass, and the string on it, look like when nothing is wrong. */
export const nothingSeen = {
  showThrough: false,
  strands: false,
  runOut: false,
  exposedCore: false,
  note: 'Unstrung and looked at.',
};

/** One bow on the bench, and a bowyer who does what the bench says. */
export class AtTheCard {
  readonly #job: Job;
  readonly #world: JobWorld;
  /** Weighed last at the target's draw, lbf. */
  lastLbf = 0;

  constructor(job: Job, world: JobWorld) {
    this.#job = job;
    this.#world = world;
  }

  view(): Promise<BenchView> {
    return getBench(this.#job.chronicle.shop, this.#job.orderId);
  }

  #this() {
    return { ...this.#job.command(), orderId: this.#job.orderId };
  }

  #recorded(result: Refusable): void {
    if (result.outcome === 'recorded') return;
    const missing = result.missing.map(({ sentence }) => sentence).join(' ');
    throw new Error(`${this.#job.bow.key}: ${missing}`);
  }

  async #bite({ advice }: BenchView, step: Step<'bite'>): Promise<void> {
    followCard(this.#world, step);
    const tool = tools[step.method] ?? '';
    const bite = { ...this.#this(), advice, other: null, tool, note: '' };
    this.#recorded(await takeBite(this.#job.as('bench'), bite));
  }

  async #sand({ advice }: BenchView): Promise<void> {
    const wide = this.#job.plan.services.includes('strip-refinish');
    this.#world.stripAndSand('full strip');
    const tool = wide ? 'Scraper, then 180 to 320 grit' : '220 to 320 grit';
    const sanded = { ...this.#this(), advice, tool, note: '' };
    this.#recorded(await recordSanding(this.#job.as('bench'), sanded));
  }

  async #remeasure(step: Step<'remeasure'>): Promise<void> {
    const { removalId, rowVersion } = step;
    const widths = widthsAt(this.#world, step);
    const measured = { ...this.#job.command(), removalId, rowVersion, widths, faces: [] };
    await remeasure(this.#job.as('bench'), measured);
  }

  async #readTiller(): Promise<void> {
    await readTiller(this.#job.as('bench'), {
      ...this.#this(),
      tillerIn: this.#world.tiller(),
      upperTrack: 'centre',
      lowerTrack: 'centre',
      braceIn: braceOf(this.#job),
      note: '',
    });
  }

  async #answer({ readingId, rowVersion, questions }: Step<'questions'>): Promise<void> {
    const answers = questions.map(({ about }) => ({ about, isRight: true }));
    const note = 'Gone through one by one: all as before.';
    const answered = { ...this.#job.command(), readingId, rowVersion, answers, note };
    await answerSurprise(this.#job.as('bench'), answered);
  }

  async #weigh(phase: 'work' | 'after-sanding'): Promise<void> {
    this.lastLbf = this.#world.weigh();
    await weigh(this.#job, phase, this.lastLbf, { tillerIn: null });
  }

  /** Does what the bench asks for; false where it asks for nothing that is done here. */
  async do(view: BenchView, phase: 'work' | 'after-sanding'): Promise<boolean> {
    const { step } = view;
    switch (step.kind) {
      case 'bite':
        await this.#bite(view, step);
        return true;
      case 'remeasure':
        await this.#remeasure(step);
        return true;
      case 'glass-check':
        await checkGlass(this.#job.as('bench'), { ...this.#this(), ...nothingSeen });
        return true;
      case 'read-tiller':
        await this.#readTiller();
        return true;
      case 'weigh':
      case 'weigh-again':
        await this.#weigh(phase);
        return true;
      case 'questions':
        await this.#answer(step);
        return true;
      case 'sand-only':
        if (step.here) await this.#sand(view);
        return step.here;
      default:
        return false;
    }
  }
}
