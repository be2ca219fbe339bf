import { bowFields, customerFields, orderFields } from './fixtures.ts';
import { newCommandId } from './test-shop.ts';
import { undoCasesBenchRecords } from './undo-cases-bench-records.ts';
import { undoCasesBenchWork } from './undo-cases-bench-work.ts';
import { undoCasesFinish } from './undo-cases-finish.ts';
import { undoCasesPlans } from './undo-cases-plans.ts';
import { undoCasesPrices } from './undo-cases-prices.ts';
import { undoCasesStores } from './undo-cases-stores.ts';
import {
  arrivalFields,
  carrier,
  entry,
  finding,
  hold,
  incident,
  limbSet,
  limbs,
  listed,
  offer,
  orderAt,
  parcel,
  picture,
  reason,
  stations,
  table,
  task,
  weighing,
} from './undo-preparing.ts';
import type { UndoShop } from './undo-shop.ts';

/** Does one thing with the given command id. What has to be there first was done before. */
export type Act = (commandId: string) => Promise<unknown>;
type Case = (kit: UndoShop) => Promise<Act>;

/** Every command that may be taken back, done once in a shop of its own. */
export const undoCases: Record<string, Case> = {
  ...undoCasesBenchRecords,
  ...undoCasesBenchWork,
  ...undoCasesFinish,
  ...undoCasesPlans,
  ...undoCasesPrices,
  ...undoCasesStores,
  'scales.add':
    async ({ client }) =>
    (commandId) =>
      client.scales.add({ commandId, name: 'spring scale', resolutionLbf: 0.5 }),
  'scales.edit':
    async ({ client, scaleId }) =>
    (commandId) =>
      client.scales.edit({
        commandId,
        id: scaleId,
        rowVersion: 1,
        name: 'old scale',
        resolutionLbf: 0.2,
        active: false,
      }),
  'customers.add':
    async ({ client }) =>
    (commandId) =>
      client.customers.add({ commandId, ...customerFields, name: 'Ola Brandt' }),
  'customers.edit':
    async ({ client, customerId }) =>
    (commandId) =>
      client.customers.edit({
        commandId,
        id: customerId,
        rowVersion: 1,
        ...customerFields,
        name: 'Nora Hill',
        ownDrawIn: null,
      }),
  'bows.add':
    async ({ client, customerId }) =>
    (commandId) =>
      client.bows.add({ commandId, customerId, ...bowFields, serial: 'H-119' }),
  'bows.edit':
    async ({ client, bowId }) =>
    (commandId) =>
      client.bows.edit({
        commandId,
        id: bowId,
        rowVersion: 1,
        ...bowFields,
        maker: 'Newfield',
        maxSafeDrawIn: 29,
        coreWood: '',
      }),
  'limbSets.add': async (kit) => {
    await limbSet(kit);
    return (commandId) =>
      kit.client.limbSets.add({ commandId, bowId: kit.bowId, ...limbs, name: 'Short limbs' });
  },
  'limbSets.edit': async (kit) => {
    const { id } = await limbSet(kit);
    return (commandId) =>
      kit.client.limbSets.edit({ commandId, id, rowVersion: 1, ...limbs, name: 'Long limbs' });
  },
  'geometry.record':
    async ({ client, bowId, orderId }) =>
    (commandId) =>
      client.geometry.record({ commandId, bowId, limbSetId: null, orderId, note: '', stations }),
  'geometry.strikeOut': async ({ client, bowId, orderId }) => {
    const made = { commandId: newCommandId(), bowId, limbSetId: null, orderId, note: '', stations };
    const { id } = await client.geometry.record(made);
    return (commandId) => client.geometry.strikeOut({ commandId, id, rowVersion: 1, reason });
  },
  'orders.edit': async (kit) => async (commandId) =>
    kit.client.orders.edit({
      commandId,
      ...(await orderAt(kit)),
      ...orderFields,
      services: ['scuff-recoat'],
      targetWeightLbf: null,
      targetDrawIn: null,
      shipTo: 'The lake house',
    }),
  'orders.identifyBow': async (kit) => {
    const { client, customerId } = kit;
    const other = await client.bows.add({ commandId: newCommandId(), customerId, ...bowFields });
    return async (commandId) =>
      client.orders.identifyBow({ commandId, ...(await orderAt(kit)), bowId: other.id });
  },
  'orders.identifyCustomer': async (kit) => {
    const added = { commandId: newCommandId(), ...customerFields, name: 'Ola Brandt' };
    const other = await kit.client.customers.add(added);
    return async (commandId) =>
      kit.client.orders.identifyCustomer({
        commandId,
        ...(await orderAt(kit)),
        customerId: other.id,
      });
  },
  'orders.setLimbSet': async (kit) => {
    const { id } = await limbSet(kit);
    return async (commandId) =>
      kit.client.orders.setLimbSet({
        commandId,
        ...(await orderAt(kit)),
        limbSetId: id,
        cameAs: 'limbs-only',
      });
  },
  'orders.setInscription': async (kit) => async (commandId) =>
    kit.client.orders.setInscription({ commandId, ...(await orderAt(kit)), inscription: '45#' }),
  'inscriptions.setLayout': async (kit) => (commandId) =>
    kit.client.inscriptions.setLayout({
      commandId,
      orderId: kit.orderId,
      rowVersion: null,
      position: 'Upper limb, belly',
      makerMark: 'stays as it is',
      surface: 'sealed',
      manner: 'hand',
      ink: 'black',
      letterHeightIn: 0.1875,
      oldMarking: '',
      note: '',
    }),
  'orders.move': async (kit) => async (commandId) =>
    kit.client.orders.move({ commandId, ...(await orderAt(kit)), to: 'in-mail' }),
  'orders.setStripFirst': async (kit) => async (commandId) =>
    kit.client.orders.setStripFirst({ commandId, ...(await orderAt(kit)), stripFirst: true }),
  'orders.setHandover': async (kit) => async (commandId) =>
    kit.client.orders.setHandover({ commandId, ...(await orderAt(kit)), handover: 'collected' }),
  'orders.sendHome': async (kit) => {
    await kit.place('weight-work');
    await hold(kit);
    return async (commandId) =>
      kit.client.orders.sendHome({
        commandId,
        ...(await orderAt(kit)),
        kind: 'declined',
        reason,
      });
  },
  'orders.takeUpAgain': async (kit) => {
    await kit.place('arrived');
    const sent = { commandId: newCommandId(), kind: 'declined' as const, reason };
    await kit.client.orders.sendHome({ ...sent, ...(await orderAt(kit)) });
    return async (commandId) =>
      kit.client.orders.takeUpAgain({ commandId, ...(await orderAt(kit)), reason });
  },
  'orders.cancel': async (kit) => async (commandId) =>
    kit.client.orders.cancel({ commandId, ...(await orderAt(kit)), reason }),
  'orders.hold': async (kit) => async (commandId) =>
    kit.client.orders.hold({
      commandId,
      ...(await orderAt(kit)),
      kind: 'material',
      reason: 'finish is out',
      remindOn: null,
    }),
  'orders.changeHold': async (kit) => {
    await hold(kit);
    return async (commandId) =>
      kit.client.orders.changeHold({
        commandId,
        ...(await orderAt(kit)),
        remindOn: '2026-04-01',
        storageFeeOn: null,
        abandonedOn: null,
      });
  },
  'orders.remind': async (kit) => {
    await hold(kit);
    return async (commandId) =>
      kit.client.orders.remind({
        commandId,
        ...(await orderAt(kit)),
        how: 'by phone',
        note: 'will ring back',
      });
  },
  'orders.release': async (kit) => {
    await hold(kit);
    return async (commandId) => kit.client.orders.release({ commandId, ...(await orderAt(kit)) });
  },
  'arrival.record': async (kit) => {
    const { rowVersion } = await table(kit);
    return (commandId) =>
      kit.client.arrival.record({
        commandId,
        orderId: kit.orderId,
        rowVersion,
        ...arrivalFields,
        condition: 'Wet',
        strung: 'not-strung',
        notStrungBecause: 'it is wet',
      });
  },
  'arrival.addBelongings': async (kit) => (commandId) =>
    kit.client.arrival.addBelongings({ commandId, orderId: kit.orderId, what: ['String'] }),
  'arrival.correctBelonging': async (kit) => {
    const { id } = await listed(kit);
    return (commandId) =>
      kit.client.arrival.correctBelonging({ commandId, id, rowVersion: 1, what: 'Two strings' });
  },
  'arrival.tickBack': async (kit) => {
    const { id } = await listed(kit);
    return (commandId) =>
      kit.client.arrival.tickBack({ commandId, id, rowVersion: 1, note: 'in the tube' });
  },
  'arrival.untick': async (kit) => {
    const { id } = await listed(kit);
    await kit.client.arrival.tickBack({ commandId: newCommandId(), id, rowVersion: 1, note: '' });
    return (commandId) => kit.client.arrival.untick({ commandId, id, rowVersion: 2 });
  },
  'arrival.complete': async (kit) => {
    await listed(kit);
    const { rowVersion } = await table(kit);
    return (commandId) =>
      kit.client.arrival.complete({ commandId, orderId: kit.orderId, rowVersion });
  },
  'entries.record': async (kit) => (commandId) =>
    kit.client.entries.record({
      commandId,
      orderId: kit.orderId,
      item: 'bare-glass',
      outcome: 'ok',
      doneOn: '2026-03-02',
      note: 'no thinning planned',
    }),
  'entries.strikeOut': async (kit) => {
    const { id, rowVersion } = await entry(kit);
    return (commandId) => kit.client.entries.strikeOut({ commandId, id, rowVersion, reason });
  },
  'findings.add': async (kit) => (commandId) =>
    kit.client.findings.add({ commandId, ...finding(kit, 'watch') }),
  'findings.resolve': async (kit) => {
    const added = { commandId: newCommandId(), ...finding(kit, 'stop') };
    const { id, rowVersion } = await kit.client.findings.add(added);
    return (commandId) =>
      kit.client.findings.resolve({ commandId, id, rowVersion, how: 'glued and looked over' });
  },
  'incidents.edit': async (kit) => {
    const { id, rowVersion, told } = await incident(kit);
    return (commandId) => kit.client.incidents.edit({ commandId, id, rowVersion, ...told });
  },
  'incidents.settle': async (kit) => {
    const { id, rowVersion, told } = await incident(kit);
    const edited = { commandId: newCommandId(), id, rowVersion, ...told };
    const changed = await kit.client.incidents.edit(edited);
    return (commandId) =>
      kit.client.incidents.settle({ commandId, id, rowVersion: changed.rowVersion, how: 'done' });
  },
  'undershoot.propose': async (kit) => {
    const fields = await offer(kit);
    return (commandId) => kit.client.undershoot.propose({ commandId, ...fields });
  },
  'undershoot.strikeOut': async (kit) => {
    const made = { commandId: newCommandId(), ...(await offer(kit)) };
    const { id, rowVersion } = await kit.client.undershoot.propose(made);
    return (commandId) => kit.client.undershoot.strikeOut({ commandId, id, rowVersion, reason });
  },
  'attachments.describe': async (kit) => {
    const { id, rowVersion } = await picture(kit);
    return (commandId) =>
      kit.client.attachments.describe({
        commandId,
        id,
        rowVersion,
        caption: 'tip',
        about: 'other',
      });
  },
  'attachments.strikeOut': async (kit) => {
    const { id, rowVersion } = await picture(kit);
    return (commandId) => kit.client.attachments.strikeOut({ commandId, id, rowVersion, reason });
  },
  'readings.add': async (kit) => (commandId) =>
    kit.client.readings.add({
      commandId,
      orderId: kit.orderId,
      scaleId: kit.scaleId,
      ...weighing,
    }),
  'readings.strikeOut': async (kit) => {
    const { id, rowVersion } = await kit.flow.weigh(kit.scaleId, 'arrival', 52);
    return (commandId) => kit.client.readings.strikeOut({ commandId, id, rowVersion, reason });
  },
  'finalCheck.record': async (kit) => {
    await kit.place('final-check');
    return (commandId) =>
      kit.client.finalCheck.record({
        commandId,
        orderId: kit.orderId,
        doneOn: '2026-03-02',
        checks: [{ item: 'check-nocks', outcome: 'ok', note: '', finding: null }],
      });
  },
  'carriers.add': async (kit) => {
    const { profile, claimDays } = await carrier(kit);
    return (commandId) =>
      kit.client.carriers.add({
        commandId,
        profile: { ...profile, name: 'Private carrier Z' },
        claimDays,
      });
  },
  'carriers.edit': async (kit) => {
    const { id, rowVersion, profile } = await carrier(kit);
    return (commandId) =>
      kit.client.carriers.edit({
        commandId,
        id,
        rowVersion,
        profile: { ...profile, name: 'Private carrier Z' },
        claimDays: 12,
        active: false,
      });
  },
  'carriers.addUsual': async (kit) => {
    const { id, rowVersion, profile, claimDays } = await carrier(kit);
    const renamed = { ...profile, name: 'Our own name for it' };
    const edited = { commandId: newCommandId(), id, rowVersion, claimDays, active: true };
    await kit.client.carriers.edit({ ...edited, profile: renamed });
    return (commandId) => kit.client.carriers.addUsual({ commandId });
  },
  'shipments.record': async (kit) => (commandId) =>
    kit.client.shipments.record({ commandId, orderId: kit.orderId, ...parcel }),
  'shipments.edit': async (kit) => {
    const { direction: _, ...fields } = parcel;
    const made = { commandId: newCommandId(), orderId: kit.orderId, ...parcel };
    const { id, rowVersion } = await kit.client.shipments.record(made);
    return (commandId) =>
      kit.client.shipments.edit({ commandId, id, rowVersion, ...fields, tracking: 'T-2' });
  },
  'shipments.strikeOut': async (kit) => {
    const made = { commandId: newCommandId(), orderId: kit.orderId, ...parcel };
    const { id, rowVersion } = await kit.client.shipments.record(made);
    return (commandId) => kit.client.shipments.strikeOut({ commandId, id, rowVersion, reason });
  },
  'tasks.add': async (kit) => (commandId) =>
    kit.client.tasks.add({
      commandId,
      orderId: kit.orderId,
      what: 'Order glass',
      dueOn: '2026-03-09',
      forPersonId: null,
    }),
  'tasks.change': async (kit) => {
    const { id, rowVersion } = await task(kit);
    return (commandId) =>
      kit.client.tasks.change({
        commandId,
        id,
        rowVersion,
        what: 'Write to the customer',
        dueOn: '2026-03-06',
        forPersonId: null,
      });
  },
  'tasks.done': async (kit) => {
    const { id, rowVersion } = await task(kit);
    return (commandId) => kit.client.tasks.done({ commandId, id, rowVersion, note: 'rung' });
  },
  'tasks.reopen': async (kit) => {
    const { id, rowVersion } = await task(kit);
    const done = { commandId: newCommandId(), id, rowVersion, note: '' };
    const closed = await kit.client.tasks.done(done);
    return (commandId) => kit.client.tasks.reopen({ commandId, id, rowVersion: closed.rowVersion });
  },
  'messages.strikeOut': async (kit) => {
    const { id, rowVersion } = await kit.client.messages.record({
      commandId: newCommandId(),
      orderId: kit.orderId,
      step: 'arrived',
      channel: 'email',
      handed: 'copied',
      toWhom: 'nora@hale.example',
      subject: 'Your bow has arrived',
      body: 'Your bow has arrived.',
      sentAt: '2026-03-02T10:00:00.000Z',
    });
    return (commandId) => kit.client.messages.strikeOut({ commandId, id, rowVersion, reason });
  },
};
