import { consentKinds } from '../../../shared/consents.ts';
import { entryItems, entryKinds } from '../../../shared/entries.ts';
import { goingHomeKinds } from '../../../shared/stages.ts';
import { orderFields } from '../../support/fixtures.ts';
import { newCommandId } from '../../support/test-shop.ts';
import { coat } from './finish-room.ts';
import { answer, ask, enter, meet, unpack, weigh } from './meet.ts';
import { orderOf, pick, type Subject, type World } from './world.ts';

/** One thing that somebody tries; a refusal of the program is a fine answer to it. */
export type Act = (world: World, subject: Subject) => Promise<unknown>;

const reason = 'because it came to that';
const command = () => ({ commandId: newCommandId() });

const somebody = (world: World, { random }: Subject) =>
  world.as(pick(random, ['owner', 'owner', 'office', 'bench']));

/** Follows one of the links of what the next step misses. */
const putRight: Act = async (world, subject) => {
  const order = await orderOf(world, subject);
  const missing = order.next?.missing ?? [];
  if (missing.length === 0) return;
  await meet(world, somebody(world, subject), order, pick(subject.random, missing));
};

const moveOn: Act = async (world, subject) => {
  const { card, next } = await orderOf(world, subject);
  if (next === null) return;
  const { id, rowVersion } = card;
  await somebody(world, subject).orders.move({ ...command(), id, rowVersion, to: next.stage });
};

const moveAnywhere: Act = async (world, subject) => {
  const { random } = subject;
  const { card } = await orderOf(world, subject);
  const { id, rowVersion } = card;
  await somebody(world, subject).orders.move({
    ...command(),
    id,
    rowVersion,
    to: pick(random, card.route),
    ...(random() < 0.8 ? { reason } : {}),
    ...(random() < 0.5 ? { override: { reason } } : {}),
  });
};

const find: Act = async (world, subject) => {
  const grade = pick(subject.random, ['cosmetic', 'watch', 'stop'] as const);
  await somebody(world, subject).findings.add({
    ...command(),
    orderId: subject.orderId,
    grade,
    place: 'upper limb, back',
    note: 'seen in raking light',
  });
};

const resolve: Act = async (world, subject) => {
  const { findings } = await orderOf(world, subject);
  if (findings.length === 0) return;
  const { id, rowVersion } = pick(subject.random, findings);
  await somebody(world, subject).findings.resolve({
    ...command(),
    id,
    rowVersion,
    how: 'repaired and looked at again',
  });
};

const askSomething: Act = (world, subject) =>
  ask(somebody(world, subject), subject.orderId, pick(subject.random, consentKinds));

const answerSomething: Act = async (world, subject) => {
  const { consents } = await orderOf(world, subject);
  if (consents.length === 0) return;
  const words = pick(subject.random, ['granted', 'granted', 'declined', 'withdrawn'] as const);
  await answer(somebody(world, subject), pick(subject.random, consents), words);
};

const written = entryItems.filter((item) => entryKinds[item].retired === null);

const noteSomething: Act = (world, { random, orderId }) =>
  enter(world.as('bench'), orderId, pick(random, written), random() < 0.85);

const strikeEntry: Act = async (world, subject) => {
  const { entries } = await orderOf(world, subject);
  if (entries.length === 0) return;
  const { id, rowVersion } = pick(subject.random, entries);
  await somebody(world, subject).entries.strikeOut({ ...command(), id, rowVersion, reason });
};

const weighSomething: Act = (world, subject) => {
  const { random } = subject;
  const phase = pick(random, ['arrival', 'work', 'after-sanding', 'final'] as const);
  const force = pick(random, [52, 47, 45.6, 45.1, 44.2]);
  return weigh(world, world.as('bench'), subject.orderId, phase, force);
};

const strikeReading: Act = async (world, subject) => {
  const { readings } = await orderOf(world, subject);
  if (readings.length === 0) return;
  const { id, rowVersion } = pick(subject.random, readings);
  await somebody(world, subject).readings.strikeOut({ ...command(), id, rowVersion, reason });
};

const coatIt: Act = (world, { orderId }) => coat(world, orderId);

const strikeCoat: Act = async (world, subject) => {
  const { finish } = await orderOf(world, subject);
  if (finish.coats.length === 0) return;
  const { id, rowVersion } = pick(subject.random, finish.coats);
  await somebody(world, subject).finish.strikeOutCoat({ ...command(), id, rowVersion, reason });
};

const holdOrRelease: Act = async (world, subject) => {
  const { card } = await orderOf(world, subject);
  const { id, rowVersion } = card;
  const client = somebody(world, subject);
  if (card.hold !== null) {
    await client.orders.release({ ...command(), id, rowVersion });
  } else if (subject.random() < 0.4) {
    await client.orders.hold({
      ...command(),
      id,
      rowVersion,
      kind: 'customer',
      reason,
      remindOn: null,
    });
  }
};

const edit: Act = async (world, subject) => {
  const { random } = subject;
  const { card, services } = await orderOf(world, subject);
  const { id, rowVersion } = card;
  await world.as('office').orders.edit({
    ...command(),
    id,
    rowVersion,
    ...orderFields,
    services: random() < 0.7 ? services : ['reduce-weight', 'strip-refinish'],
    targetWeightLbf: pick(random, [45, 45, 44]),
    estimateCents: pick(random, [24_000, 24_000, 26_000]),
  });
};

const inscribe: Act = async (world, subject) => {
  const { id, rowVersion } = (await orderOf(world, subject)).card;
  const inscription = pick(subject.random, ['45# @ 28"', '44# @ 28"', 'AMO 66"', '']);
  await world.as('office').orders.setInscription({ ...command(), id, rowVersion, inscription });
};

const reroute: Act = async (world, subject) => {
  const { id, rowVersion } = (await orderOf(world, subject)).card;
  const { random } = subject;
  if (random() < 0.5) {
    const stripFirst = random() < 0.5;
    await world.as('owner').orders.setStripFirst({ ...command(), id, rowVersion, stripFirst });
  } else {
    const handover = pick(random, ['shipped', 'collected'] as const);
    await world.as('office').orders.setHandover({ ...command(), id, rowVersion, handover });
  }
};

const goHomeOrBack: Act = async (world, subject) => {
  const { card } = await orderOf(world, subject);
  const { id, rowVersion } = card;
  const client = somebody(world, subject);
  if (card.goingHome !== null || card.stage === 'cancelled') {
    await client.orders.takeUpAgain({ ...command(), id, rowVersion, reason });
  } else if (card.stage === 'requested' || card.stage === 'in-mail') {
    await client.orders.cancel({ ...command(), id, rowVersion, reason });
  } else {
    const kind = pick(subject.random, goingHomeKinds);
    await client.orders.sendHome({ ...command(), id, rowVersion, kind, reason });
  }
};

const damage: Act = (world, subject) =>
  world.as('bench').incidents.record({
    ...command(),
    orderId: subject.orderId,
    kind: pick(subject.random, ['damaged-here', 'damaged-in-transit', 'lost-in-transit']),
    happenedOn: '2026-03-02',
    what: 'a dent from the vise',
    place: 'lower limb, edge',
    claimWith: '',
    claimUntil: null,
  });

const unpackAgain: Act = async (world, subject) =>
  unpack(world.as('bench'), await orderOf(world, subject));

const undoSomething: Act = async (world, subject) => {
  const client = somebody(world, subject);
  const done = await client.undo.recent({ orderId: subject.orderId });
  if (done.length === 0) return;
  // Those said to be impossible are tried as well: the command itself must refuse.
  const { commandId: of } = pick(subject.random, done.slice(0, 6));
  await client.undo.undo({ ...command(), of });
};

/** What happens in a shop, the usual more often than the odd. */
export const acts: readonly (readonly [string, Act, number])[] = [
  ['put right', putRight, 40],
  ['move on', moveOn, 16],
  ['move anywhere', moveAnywhere, 6],
  ['find', find, 2],
  ['resolve', resolve, 2],
  ['ask', askSomething, 2],
  ['answer', answerSomething, 4],
  ['note', noteSomething, 5],
  ['strike entry', strikeEntry, 2],
  ['weigh', weighSomething, 4],
  ['strike reading', strikeReading, 1],
  ['coat', coatIt, 3],
  ['strike coat', strikeCoat, 1],
  ['hold or release', holdOrRelease, 4],
  ['edit', edit, 2],
  ['inscribe', inscribe, 2],
  ['reroute', reroute, 2],
  ['go home or back', goHomeOrBack, 2],
  ['damage', damage, 1],
  ['unpack again', unpackAgain, 1],
  ['undo', undoSomething, 6],
];

export function chooseAct(random: () => number): readonly [string, Act] {
  let left = random() * acts.reduce((sum, [, , weight]) => sum + weight, 0);
  for (const [name, act, weight] of acts) {
    left -= weight;
    if (left < 0) return [name, act];
  }
  return ['put right', putRight];
}
