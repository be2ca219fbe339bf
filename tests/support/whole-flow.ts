import { answerConsent } from '../../core/shop/consents/answer.ts';
import { askConsent, proposeConsent } from '../../core/shop/consents/ask.ts';
import { recordEntry } from '../../core/shop/entries/entries.ts';
import { getOrder } from '../../core/shop/orders/detail.ts';
import { moveOrder } from '../../core/shop/orders/move.ts';
import { addReading } from '../../core/shop/readings/readings.ts';
import type { ConsentKind } from '../../shared/consents.ts';
import type { EntryItem } from '../../shared/entries.ts';
import type { Stage } from '../../shared/stages.ts';
import { newCommandId, type TestShop } from './test-shop.ts';

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
}
