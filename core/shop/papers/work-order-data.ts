import { consentLabels, consentStateLabels } from '../../../shared/consents.ts';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { ShopDetails } from '../../../shared/contract/setup.ts';
import { decimal, inchFraction, weightAtDraw } from '../../../shared/measure.ts';
import { serviceLabels, stageLabels } from '../../../shared/stages.ts';
import type { WorkOrderData } from '../../papers/data.ts';
import { dayOf } from '../day.ts';
import { phaseWords } from '../readings/phases.ts';
import { addressLines } from '../setup/address.ts';
import { bowFacts, limbFacts } from './bow-facts.ts';
import { cautionsFor } from './cautions.ts';
import { finishFacts } from './finish-facts.ts';
import { layoutFacts } from './inscription-proof-data.ts';
import { priceTables } from './price-paper-data.ts';
import { nameOnPapers } from './shop-name.ts';
import { type PlanOnPaper, stripOfPlan, workOrderPlan } from './work-order-plan-data.ts';

function stageRows(order: OrderDetail): WorkOrderData['stages'] {
  const at = order.card.route.indexOf(order.card.stage);
  return order.card.route.map((stage, index) => {
    const entered = order.history.find((item) => item.toStage === stage);
    const passed = index <= at && entered !== undefined;
    return {
      label: stageLabels[stage],
      by: passed ? entered.personName : '',
      on: passed ? dayOf(entered.at) : '',
    };
  });
}

function customerOf(order: OrderDetail): WorkOrderData['customer'] {
  const { customer } = order;
  if (customer === null) return null;
  return {
    name: customer.name,
    lines: addressLines(customer.address),
    phone: customer.phone,
    email: customer.email,
  };
}

/** What is to be written on the bow, where and how, and whether it may be. */
function letteringFacts(order: OrderDetail): [string, string][] {
  if (order.inscription.trim() === '') return [];
  return [['Lines', order.inscription.trimEnd()], ...layoutFacts(order)];
}

/** What is on record; the rest is written in by hand in the finish room. */
function finishRows(order: OrderDetail): [string, string][] {
  if (!order.card.route.includes('finish')) return [];
  const { finish, lastCoatOn, safeToWrap, cured } = finishFacts(order);
  const dated = (fact: { on: string; words: string } | null) =>
    fact === null ? '' : [fact.on, fact.words].filter((text) => text !== '').join(', ');
  return [
    ['Finish', finish ?? ''],
    ['Last coat', lastCoatOn ?? ''],
    ['Safe to wrap', dated(safeToWrap)],
    ['Fully cured', dated(cured)],
  ];
}

/** What came along, as one line to tick against when the bow goes home. */
function belongingsText({ belongings, arrival }: OrderDetail): string {
  if (belongings.length === 0) return arrival?.nothingCameAlong === true ? 'none' : '';
  return belongings.map(({ what }) => what.replaceAll(/\s+/g, ' ')).join(', ');
}

export function workOrderData(
  order: OrderDetail,
  shop: ShopDetails,
  plan: PlanOnPaper | null,
  choice: { format: WorkOrderData['format']; copy: WorkOrderData['copy']; printedAt: string },
): WorkOrderData {
  const { card, bow } = order;
  const alive = order.readings.filter((reading) => reading.struckReason === null);
  return {
    ...choice,
    shop: {
      name: nameOnPapers(shop),
      lines: addressLines(shop.address),
      phone: shop.phone,
      email: shop.email,
    },
    order: {
      number: card.number,
      createdOn: dayOf(order.createdAt),
      promisedOn: order.promisedOn,
      stage: stageLabels[card.stage],
      services: order.services.map((service) => serviceLabels[service]),
      target:
        order.targetWeightLbf === null || order.targetDrawIn === null
          ? null
          : weightAtDraw(order.targetWeightLbf, order.targetDrawIn),
      tiller: order.tillerTarget,
      notes: order.customerNotes,
      hold: card.hold?.reason ?? null,
    },
    customer: customerOf(order),
    bow:
      bow === null
        ? null
        : { line: card.bowLine, facts: [...limbFacts(order), ...bowFacts(bow)], notes: bow.notes },
    stopFindings: order.findings
      .filter((finding) => finding.grade === 'stop' && finding.resolvedAt === null)
      .map((finding) => `${finding.place}: ${finding.note}`),
    strip: { ...card.weights, ...stripOfPlan(plan) },
    stripDraw: `${decimal(card.weights.drawIn ?? 28, 2)}" AMO`,
    weighings: alive.map((reading) => ({
      on: dayOf(reading.weighedAt),
      phase: phaseWords[reading.phase],
      weights: reading.weights.map((weight) => weight.text).join(', '),
      brace: `${inchFraction(reading.braceIn)}"`,
      scale: reading.scaleName,
    })),
    consents: order.consents.map((consent) => ({
      label: consentLabels[consent.kind],
      state: consentStateLabels[consent.state],
      on: dayOf(consent.answers.at(-1)?.answeredAt ?? consent.askedAt),
    })),
    belongings: belongingsText(order),
    cautions: cautionsFor(order),
    plan: plan === null ? null : workOrderPlan(plan),
    lettering: letteringFacts(order),
    finish: finishRows(order),
    price: order.price.totalCents === null ? null : priceTables(order),
    stages: stageRows(order),
  };
}
