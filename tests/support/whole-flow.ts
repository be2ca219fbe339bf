import { completeArrival, recordArrival } from '../../core/shop/arrival/arrival.ts';
import { addBelongings, tickBack } from '../../core/shop/arrival/belongings.ts';
import { checkGlass } from '../../core/shop/bench/glass-checks.ts';
import { noteRemoval } from '../../core/shop/bench/noted-removal.ts';
import { readTiller } from '../../core/shop/bench/tiller-readings.ts';
import { listCarriers } from '../../core/shop/carriers/carriers.ts';
import { answerConsent } from '../../core/shop/consents/answer.ts';
import { askConsent, proposeConsent } from '../../core/shop/consents/ask.ts';
import { recordEntry } from '../../core/shop/entries/entries.ts';
import { recordFinalCheck } from '../../core/shop/final-check/record.ts';
import { recordGrit } from '../../core/shop/finish/sandings.ts';
import { getOrder } from '../../core/shop/orders/detail.ts';
import { moveOrder } from '../../core/shop/orders/move.ts';
import { addReading } from '../../core/shop/readings/readings.ts';
import { recordShipment } from '../../core/shop/shipments/shipments.ts';
import type { ConsentKind } from '../../shared/consents.ts';
import type { ArrivalFields } from '../../shared/contract/arrival.ts';
import type { EntryItem } from '../../shared/entries.ts';
import type { Stage } from '../../shared/stages.ts';
import { newCommandId, type TestShop } from './test-shop.ts';

/** A bow that came well packed, was looked over and strung. */
export const arrivalFields: ArrivalFields = {
  openedOn: '2026-03-02',
  cameBy: 'carrier',
  packaging: 'tube with caps, kept',
  packagingKept: true,
  packagingDamaged: false,
  condition: 'finish worn at the grip',
  nothingCameAlong: false,
  restingSince: null,
  lookedOver: true,
  strung: 'strung',
  notStrungBecause: '',
  alignment: 'limbs in line, no twist',
  braceIn: 7.25,
  tillerIn: 0.125,
  stringTrack: 'down the middle of both limbs',
  note: '',
};

/** Acts on one order as the shop would, through the same commands as the screens. */
export class Flow {
  readonly shop: TestShop;
  readonly orderId: string;

  constructor(shop: TestShop, orderId: string) {
    this.shop = shop;
    this.orderId = orderId;
  }

  order() {
    return getOrder(this.shop.owner, this.orderId);
  }

  async move(
    to: Stage,
    more: { reason?: string; override?: { reason: string } } = {},
    ctx = this.shop.owner,
  ) {
    const { rowVersion } = (await this.order()).card;
    return moveOrder(ctx, { commandId: newCommandId(), id: this.orderId, rowVersion, to, ...more });
  }

  note(item: EntryItem, note = 'seen and noted', outcome: 'ok' | 'not-ok' = 'ok') {
    return recordEntry(this.shop.owner, {
      commandId: newCommandId(),
      orderId: this.orderId,
      item,
      outcome,
      doneOn: '2026-03-02',
      note,
    });
  }

  /** A bite written down in words. */
  bite(note = 'upper and lower, 1/64 per side') {
    return noteRemoval(this.shop.owner, {
      commandId: newCommandId(),
      orderId: this.orderId,
      note,
    });
  }

  /** Looks at the glass after a bite: nothing seen, unless said otherwise. */
  checkGlass(seen: { showThrough?: boolean } = {}, note = '') {
    return checkGlass(this.shop.owner, {
      commandId: newCommandId(),
      orderId: this.orderId,
      showThrough: seen.showThrough ?? false,
      strands: false,
      runOut: false,
      exposedCore: false,
      note,
    });
  }

  readTiller(tillerIn = 0.125) {
    return readTiller(this.shop.owner, {
      commandId: newCommandId(),
      orderId: this.orderId,
      tillerIn,
      upperTrack: 'centre',
      lowerTrack: 'centre',
      braceIn: 7.25,
      note: '',
    });
  }

  /** Both limbs sanded to their last grit; answers the command that wrote it down. */
  async sand(grit = 320): Promise<{ commandId: string }> {
    const commandId = newCommandId();
    await recordGrit(this.shop.owner, {
      commandId,
      orderId: this.orderId,
      parts: [
        { section: 'upper-limb', substrate: 'glass' },
        { section: 'lower-limb', substrate: 'glass' },
      ],
      grit: { grit, scale: 'P' },
      strokes: null,
      wiped: true,
      isLast: true,
      note: '',
      at: null,
    });
    return { commandId };
  }

  async ask(kind: ConsentKind): Promise<{ id: string; textSha256: string }> {
    const { text } = await proposeConsent(this.shop.owner, { orderId: this.orderId, kind });
    const { id } = await askConsent(this.shop.owner, {
      commandId: newCommandId(),
      orderId: this.orderId,
      kind,
      text,
      askedHow: 'e-mail',
    });
    const asked = (await this.order()).consents.find((consent) => consent.id === id);
    return { id, textSha256: asked?.textSha256 ?? '' };
  }

  answer(
    consent: { id: string; textSha256: string },
    answer: 'granted' | 'declined' | 'withdrawn',
  ) {
    return answerConsent(this.shop.owner, {
      commandId: newCommandId(),
      consentId: consent.id,
      textSha256: consent.textSha256,
      answer,
      answeredAt: '2026-03-02T10:00:00.000Z',
      channel: 'phone',
      answeredBy: 'Nora Hale',
      contact: '555 0142',
      words: 'Yes, go ahead as written.',
      costChangeCents: 0,
    });
  }

  async grant(kind: ConsentKind) {
    const asked = await this.ask(kind);
    await this.answer(asked, 'granted');
    return asked;
  }

  weigh(
    scaleId: string,
    phase: 'arrival' | 'work' | 'after-sanding' | 'final',
    forceLbf: number,
    more: { drawIn?: number; drawReference?: 'amo' | 'to-back' | 'unknown' } = {},
  ) {
    const drawIn = more.drawIn ?? 28;
    return addReading(this.shop.owner, {
      commandId: newCommandId(),
      orderId: this.orderId,
      phase,
      drawReference: more.drawReference ?? 'amo',
      scaleId,
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
      tillerIn: 0.125,
      temperatureF: 68,
      flexedFirst: true,
      note: '',
      pulls: [
        { drawIn, forceLbf: forceLbf + 2 },
        { drawIn, forceLbf: forceLbf - 0.1 },
        { drawIn, forceLbf: forceLbf + 0.1 },
      ],
    });
  }

  /** The unpacking table: the record of the box and what came along with the bow. */
  async unpack(change: Partial<ArrivalFields> = {}, belongings: readonly string[] = ['string']) {
    const before = (await this.order()).arrival;
    await recordArrival(this.shop.owner, {
      commandId: newCommandId(),
      orderId: this.orderId,
      rowVersion: before?.rowVersion ?? null,
      ...arrivalFields,
      ...change,
    });
    if (belongings.length === 0 || (await this.order()).belongings.length > 0) return;
    await addBelongings(this.shop.owner, {
      commandId: newCommandId(),
      orderId: this.orderId,
      what: [...belongings],
    });
  }

  async completeArrival() {
    const rowVersion = (await this.order()).arrival?.rowVersion ?? 1;
    return completeArrival(this.shop.owner, {
      commandId: newCommandId(),
      orderId: this.orderId,
      rowVersion,
    });
  }

  async tickAllBack() {
    for (const { id, rowVersion, backAt } of (await this.order()).belongings) {
      if (backAt !== null) continue;
      await tickBack(this.shop.owner, { commandId: newCommandId(), id, rowVersion, note: '' });
    }
  }

  /** Every check that applies to this bow, in order. */
  async finalCheck() {
    const { finalCheck } = await this.order();
    return recordFinalCheck(this.shop.owner, {
      commandId: newCommandId(),
      orderId: this.orderId,
      doneOn: '2026-03-02',
      checks: finalCheck.map(({ item }) => ({
        item,
        outcome: 'ok' as const,
        note: '',
        finding: null,
      })),
    });
  }

  /** A box inside the limits of the shop's first carrier. */
  async parcel(change: { weightLb?: number; tracking?: string } = {}) {
    const [carrier] = await listCarriers(this.shop.owner);
    return recordShipment(this.shop.owner, {
      commandId: newCommandId(),
      orderId: this.orderId,
      direction: 'out',
      carrierId: carrier?.id ?? null,
      carrierName: '',
      shape: 'box',
      lengthIn: 70,
      widthIn: 5,
      heightIn: 5,
      weightLb: change.weightLb ?? 4.5,
      declaredCents: 60_000,
      valueEvidence: 'appraisal by the owner',
      insured: true,
      tracking: change.tracking ?? '9400 1',
      shippedOn: null,
      deliveredOn: null,
      note: '',
    });
  }
}
