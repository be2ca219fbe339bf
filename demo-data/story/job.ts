import { addAttachment } from '../../core/shop/attachments/add.ts';
import { recordEntry } from '../../core/shop/entries/entries.ts';
import { addFinding } from '../../core/shop/findings/findings.ts';
import { getOrder } from '../../core/shop/orders/detail.ts';
import { moveOrder } from '../../core/shop/orders/move.ts';
import { readOrder } from '../../core/shop/orders/order-row.ts';
import type { AttachmentSubject } from '../../shared/attachments.ts';
import type { EntryItem } from '../../shared/entries.ts';
import type { Role } from '../../shared/people.ts';
import { type Stage, stageLabels } from '../../shared/stages.ts';
import type { DemoFinish } from '../cast/finishes.ts';
import type { DemoBow } from '../cast/make-bow.ts';
import type { Subject } from '../pictures/pictures.ts';
import type { AtTheCard } from './by-the-card.ts';
import type { Chronicle } from './chronicle.ts';
import type { PictureBook } from './picture-book.ts';
import type { Plan, PlannedFinding } from './plan.ts';

/** What every order of the shop may refer to. */
export interface Cast {
  chronicle: Chronicle;
  pictures: PictureBook;
  scales: readonly string[];
  customerIds: ReadonlyMap<string, string>;
  bowIds: ReadonlyMap<string, string>;
  limbSetIds: ReadonlyMap<string, readonly string[]>;
  /** Finishes whose data sheets were copied, once they are. */
  finishIds: ReadonlyMap<DemoFinish, string>;
  /** The carrier the shop sends with. */
  carrier(): Promise<{ carrierId: string; name: string }>;
  /** Hangs two known loads on a scale where nobody has that day. */
  checkScale(scaleId: string): Promise<void>;
}

interface AttachedTo {
  findingId?: string;
  incidentId?: string;
  shipmentId?: string;
  about?: AttachmentSubject;
}

/** One order, and what the shop's people do to it: every act is a command of the core. */
export class Job {
  readonly cast: Cast;
  readonly plan: Plan;
  readonly bow: DemoBow;
  orderId = '';
  /** Where a plan was reckoned for it: the bow on the bench. */
  card: AtTheCard | null = null;

  constructor(cast: Cast, plan: Plan, bow: DemoBow) {
    this.cast = cast;
    this.plan = plan;
    this.bow = bow;
  }

  get chronicle(): Chronicle {
    return this.cast.chronicle;
  }

  /** Pounds at the target's draw once nothing more comes off. */
  get finalLbf(): number {
    const { weights } = this.plan;
    return this.card?.lastLbf ?? weights?.sanded ?? weights?.arrival ?? 0;
  }

  /** When something happens: working days ago, at this hour. */
  at(daysAgo: number, hour: number): number {
    return this.chronicle.workday(daysAgo, hour);
  }

  as(role: Role) {
    return this.chronicle.as(role);
  }

  command() {
    return { commandId: this.chronicle.newId() };
  }

  order() {
    return getOrder(this.chronicle.shop, this.orderId);
  }

  /** What a command that changes the order itself needs. */
  async version() {
    const { row_version } = await readOrder(this.chronicle.shop.read, this.orderId);
    return { ...this.command(), id: this.orderId, rowVersion: row_version };
  }

  /** Moves on, and fails where a gate is shut: the story has to meet it first. */
  async move(
    to: Stage,
    role: Role = 'bench',
    words: { reason?: string; override?: { reason: string } } = {},
  ): Promise<void> {
    const moved = await moveOrder(this.as(role), { ...(await this.version()), to, ...words });
    if (moved.outcome === 'moved') return;
    const missing = moved.missing.map((item) => item.sentence).join(' ');
    throw new Error(`${this.bow.key} cannot enter "${stageLabels[to]}": ${missing}`);
  }

  async note(item: EntryItem, note: string, role: Role = 'bench'): Promise<void> {
    const result = await recordEntry(this.as(role), {
      ...this.command(),
      orderId: this.orderId,
      item,
      outcome: 'ok',
      doneOn: this.chronicle.today,
      note,
    });
    if (result.outcome === 'recorded') return;
    const missing = result.missing.map((each) => each.sentence).join(' ');
    throw new Error(`${this.bow.key} cannot note ${item}: ${missing}`);
  }

  async find(finding: PlannedFinding, role: Role = 'bench'): Promise<string> {
    const { id } = await addFinding(this.as(role), {
      ...this.command(),
      orderId: this.orderId,
      grade: finding.grade,
      place: finding.place,
      note: finding.note,
    });
    if (finding.picture !== undefined) {
      await this.photograph(finding.picture, finding.place, { findingId: id, about: 'finding' });
    }
    return id;
  }

  /** Takes a photograph and keeps it with the order. */
  async photograph(subject: Subject, caption: string, to: AttachedTo = {}): Promise<void> {
    const bytes = await this.cast.pictures.take(subject, this.bow);
    const name = `${subject} ${this.chronicle.today}.jpg`;
    await addAttachment(this.as('bench'), {
      ...this.command(),
      file: new File([bytes as BlobPart], name, { type: 'image/jpeg' }),
      about: to.about ?? 'bow',
      orderId: this.orderId,
      bowId: null,
      findingId: to.findingId ?? null,
      incidentId: to.incidentId ?? null,
      shipmentId: to.shipmentId ?? null,
      caption,
    });
  }
}
