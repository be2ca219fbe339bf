import type { ArrivalFields } from '../../shared/contract/arrival.ts';
import { bowFields } from './fixtures.ts';
import { fileOf, jpegPicture } from './pictures.ts';
import { newCommandId } from './test-shop.ts';
import type { UndoShop } from './undo-shop.ts';

export const arrivalFields: ArrivalFields = {
  openedOn: '2026-03-02',
  cameBy: 'parcel',
  packaging: 'Stiff tube, both caps taped',
  packagingKept: true,
  packagingDamaged: false,
  condition: 'Dry, two scuffs on the riser',
  nothingCameAlong: false,
  restingSince: null,
  lookedOver: true,
  strung: 'strung',
  notStrungBecause: '',
  alignment: 'Limbs in line with the riser',
  braceIn: 7.25,
  tillerIn: 0.125,
  stringTrack: 'Down the middle of both limbs',
  note: '',
};

export const limbs = {
  name: 'Medium limbs',
  upperSerial: 'U1',
  lowerSerial: 'L1',
  amoLengthIn: 66,
  markedWeightLbf: 52,
  markedDrawIn: 28,
  markedDrawReference: 'amo' as const,
  riserName: 'own',
  riserLengthIn: 18,
  riserPadDeg: 12,
  notes: '',
};

export const parcel = {
  direction: 'out' as const,
  carrierId: null,
  carrierName: 'Postal ground',
  shape: 'box' as const,
  lengthIn: 72,
  widthIn: 6,
  heightIn: 6,
  weightLb: 6,
  declaredCents: 60_000,
  valueEvidence: 'receipt',
  insured: true,
  tracking: 'T-1',
  shippedOn: null,
  deliveredOn: null,
  note: '',
};

export const stations = [0, 6, 12].map((fromFadeIn) => ({
  limb: 'upper' as const,
  fromFadeIn,
  widthIn: 1.25,
  thicknessIn: 0.4,
  surface: 'bare' as const,
}));

export const weighing = {
  phase: 'arrival' as const,
  drawReference: 'amo' as const,
  limbSetId: null,
  riserNote: '',
  rigZeroLbf: 0,
  braceIn: 7.25,
  stringNote: 'own string',
  stringTrack: '',
  supportPoint: 'throat',
  pullPoint: 'nock point',
  tillerIn: null,
  temperatureF: null,
  moisturePct: null,
  strungMinutes: null,
  flexedFirst: true,
  note: '',
  pulls: [
    { drawIn: 28, forceLbf: 52 },
    { drawIn: 28, forceLbf: 51.5 },
  ],
};

export async function table(kit: UndoShop) {
  const { client, orderId } = kit;
  const { id, rowVersion } = await client.arrival.record({
    commandId: newCommandId(),
    orderId,
    rowVersion: null,
    ...arrivalFields,
  });
  return { id, rowVersion };
}

export async function listed(kit: UndoShop) {
  const { added } = await kit.client.arrival.addBelongings({
    commandId: newCommandId(),
    orderId: kit.orderId,
    what: ['String', 'Sock'],
  });
  const [first] = added;
  if (first === undefined) throw new Error('nothing was listed');
  return first;
}

export const at = (kit: UndoShop) => ({ id: kit.orderId, version: kit.version });

export async function orderAt(kit: UndoShop) {
  const { id, version } = at(kit);
  return { id, rowVersion: await version() };
}

export async function limbSet(kit: UndoShop) {
  const { bow } = await kit.client.bows.get({ id: kit.bowId });
  await kit.client.bows.edit({
    commandId: newCommandId(),
    id: kit.bowId,
    rowVersion: bow.rowVersion,
    ...bowFields,
    takeDown: 'bolted three-piece',
  });
  return kit.client.limbSets.add({ commandId: newCommandId(), bowId: kit.bowId, ...limbs });
}

export async function entry(kit: UndoShop) {
  const result = await kit.flow.note('bare-glass', 'no thinning planned');
  if (result.outcome !== 'recorded') throw new Error('the entry was refused');
  return { id: result.id, rowVersion: result.rowVersion };
}

export const finding = (kit: UndoShop, grade: 'cosmetic' | 'watch' | 'stop') => ({
  orderId: kit.orderId,
  grade,
  place: 'upper fade',
  note: 'a fine line',
});

export async function picture(kit: UndoShop) {
  return kit.client.attachments.add({
    commandId: newCommandId(),
    file: fileOf(await jpegPicture(), 'bow.jpg'),
    about: 'bow',
    orderId: kit.orderId,
    bowId: null,
    findingId: null,
    incidentId: null,
    shipmentId: null,
    caption: '',
  });
}

export async function task(kit: UndoShop) {
  return kit.client.tasks.add({
    commandId: newCommandId(),
    orderId: kit.orderId,
    what: 'Ring the customer',
    dueOn: '2026-03-05',
    forPersonId: null,
  });
}

export async function carrier(kit: UndoShop) {
  await kit.client.carriers.addUsual({ commandId: newCommandId() });
  const [first] = await kit.client.carriers.list();
  if (first === undefined) throw new Error('no carrier');
  return first;
}

export async function incident(kit: UndoShop) {
  const { id, rowVersion } = await kit.client.incidents.record({
    commandId: newCommandId(),
    orderId: kit.orderId,
    kind: 'damaged-here',
    happenedOn: '2026-03-01',
    what: 'Fell off the bench',
    place: 'lower tip',
    claimWith: '',
    claimUntil: null,
  });
  const told = {
    what: 'Fell off the bench',
    claimWith: '',
    claimUntil: null,
    claimFiledOn: null,
    claimNumber: '',
    ownerToldOn: '2026-03-02',
    ownerToldHow: 'phone',
    remedy: 'New tip overlay, free',
  };
  return { id, rowVersion, told };
}

export async function offer(kit: UndoShop) {
  await kit.flow.weigh(kit.scaleId, 'after-sanding', 42);
  return {
    orderId: kit.orderId,
    offer: 'price' as const,
    priceChangeCents: -2000,
    words: 'Twenty off',
  };
}

export async function hold(kit: UndoShop) {
  await kit.client.orders.hold({
    commandId: newCommandId(),
    ...(await orderAt(kit)),
    kind: 'customer',
    reason: 'waiting for the answer',
    remindOn: null,
  });
}

export const reason = 'the customer changed their mind';
