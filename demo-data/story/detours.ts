import { resolveFinding } from '../../core/shop/findings/findings.ts';
import {
  editIncident,
  recordIncident,
  settleIncident,
} from '../../core/shop/incidents/incidents.ts';
import { cancelOrder, sendHome } from '../../core/shop/orders/going-home.ts';
import { holdOrder, releaseOrder, remind } from '../../core/shop/orders/holds.ts';
import { strikeOutReading } from '../../core/shop/readings/readings.ts';
import { addTask } from '../../core/shop/tasks/tasks.ts';
import { proposeUndershoot } from '../../core/shop/undershoot/undershoot.ts';
import type { ContractInputs } from '../../shared/contract/types.ts';
import type { GoingHome } from '../../shared/stages.ts';
import type { Subject } from '../pictures/pictures.ts';
import { answer, ask } from './consent.ts';
import type { Job } from './job.ts';
import { packing, printTag, shipping } from './leaving.ts';
import type { Story } from './tell.ts';
import { weigh } from './weigh.ts';

interface Held {
  kind: ContractInputs['orders']['hold']['kind'];
  reason: string;
  on: number;
  /** Calendar days from today; none leaves it to the shop's reminder days. */
  remindIn?: number;
  /** Working days before today on which a reminder went out, and how. */
  reminders?: readonly (readonly [on: number, how: string, note: string])[];
  released?: number;
}

/** Waits for the customer, for material or for a claim, with the reminders that went out. */
export async function* held(job: Job, hold: Held): Story {
  yield job.at(hold.on, 16);
  await holdOrder(job.as('office'), {
    ...(await job.version()),
    kind: hold.kind,
    reason: hold.reason,
    remindOn: hold.remindIn === undefined ? null : job.chronicle.dayFromToday(hold.remindIn),
  });
  for (const [on, how, note] of hold.reminders ?? []) {
    yield job.at(on, 9.9);
    await remind(job.as('office'), { ...(await job.version()), how, note });
  }
  if (hold.released === undefined) return;
  yield job.at(hold.released, 8.9);
  await releaseOrder(job.as('office'), await job.version());
}

interface Damage {
  kind: ContractInputs['incidents']['record']['kind'];
  on: number;
  place: string;
  what: string;
  picture: Subject;
  claimWith?: string;
  claimNumber?: string;
  told: string;
  remedy: string;
}

/** Damage: noted with a picture, its owner told, a claim filed where a carrier did it. */
export async function* damaged(job: Job, damage: Damage): Story {
  yield job.at(damage.on, 11.4);
  const { chronicle } = job;
  const { id } = await recordIncident(job.as('bench'), {
    ...job.command(),
    orderId: job.orderId,
    kind: damage.kind,
    happenedOn: chronicle.today,
    what: damage.what,
    place: damage.place,
    claimWith: damage.claimWith ?? '',
    claimUntil: damage.claimWith === undefined ? null : chronicle.dayFromToday(9),
  });
  const incident = (await job.order()).incidents.find((each) => each.id === id);
  if (incident === undefined) throw new Error('the incident is not there');
  await job.photograph(damage.picture, damage.place, {
    incidentId: id,
    ...(incident.findingId === null ? {} : { findingId: incident.findingId }),
    about: 'incident',
  });
  yield job.at(damage.on, 16.1);
  await editIncident(job.as('office'), {
    ...job.command(),
    id,
    rowVersion: incident.rowVersion,
    what: damage.what,
    claimWith: incident.claimWith,
    claimUntil: incident.claimUntil,
    claimFiledOn: damage.claimNumber === undefined ? null : chronicle.today,
    claimNumber: damage.claimNumber ?? '',
    ownerToldOn: chronicle.today,
    ownerToldHow: damage.told,
    remedy: damage.remedy,
  });
}

/** Repaired, looked at again, and settled with the owner of the bow. */
export async function* repaired(job: Job, on: number, how: string, settledHow: string): Story {
  yield job.at(on, 10.3);
  const { incidents, findings } = await job.order();
  for (const finding of findings.filter(({ resolvedAt }) => resolvedAt === null)) {
    if (finding.grade !== 'stop') continue;
    await resolveFinding(job.as('bench'), {
      ...job.command(),
      id: finding.id,
      rowVersion: finding.rowVersion,
      how,
    });
  }
  for (const incident of incidents.filter(({ settledAt }) => settledAt === null)) {
    await settleIncident(job.as('office'), {
      ...job.command(),
      id: incident.id,
      rowVersion: incident.rowVersion,
      how: settledHow,
    });
  }
}

interface Offer {
  on: number;
  cents: number;
  words: string;
  answered?: number;
}

/** Under the target after sanding: what the shop offers, and what the customer says. */
export async function* undershot(job: Job, offer: Offer): Story {
  yield job.at(offer.on, 16.3);
  await proposeUndershoot(job.as('office'), {
    ...job.command(),
    orderId: job.orderId,
    offer: offer.cents === 0 ? 'accept' : 'price',
    priceChangeCents: offer.cents,
    words: offer.words,
  });
  await ask(job, 'undershoot');
  if (offer.answered === undefined) return;
  yield job.at(offer.answered, 9.7);
  await answer(job, 'undershoot', {
    words: 'Keep it as it is, with the lower price.',
    costChangeCents: offer.cents,
  });
}

interface WayHome {
  kind: GoingHome;
  reason: string;
  on: number;
  packed: number;
  left?: number;
}

/** Home without the work: findings told, photographs and tag with it. */
export async function* homeward(job: Job, way: WayHome): Story {
  yield job.at(way.on, 14.8);
  await sendHome(job.as('owner'), {
    ...(await job.version()),
    kind: way.kind,
    reason: way.reason,
  });
  const { findings } = await job.order();
  if (findings.length > 0) {
    await job.note('findings-told', 'Told what was found, with the pictures.', 'office');
  }
  yield* packing(job, way.packed);
  await printTag(job, 'return-tag');
  await job.move('packed', 'office');
  yield* shipping(job, way.left);
}

export async function* cancelled(job: Job, on: number, reason: string): Story {
  yield job.at(on, 11.7);
  await cancelOrder(job.as('office'), { ...(await job.version()), reason });
}

/** A reminder for somebody, due so many calendar days from today. */
export async function* reminded(job: Job, on: number, dueIn: number, what: string): Story {
  yield job.at(on, 16.6);
  await addTask(job.as('office'), {
    ...job.command(),
    orderId: job.orderId,
    what,
    dueOn: job.chronicle.dayFromToday(dueIn),
    forPersonId: null,
  });
}

/** A weighing read off the wrong line, struck out the moment it was seen. */
export async function* misread(job: Job, on: number, pounds: number, reason: string): Story {
  yield job.at(on, 15.1);
  const { id, rowVersion } = await weigh(job, 'work', pounds);
  await strikeOutReading(job.as('bench'), {
    ...job.command(),
    id,
    rowVersion,
    reason,
  });
}
