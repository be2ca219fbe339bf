import { cancelled, damaged, held, homeward, reminded } from '../story/detours.ts';
import type { Plan } from '../story/plan.ts';

/** Orders that are requested, in the mail, on the unpacking table, or went home from there. */
export const comingIn: readonly Plan[] = [
  {
    bow: 'dipper',
    services: ['reduce-weight', 're-mark'],
    days: { requested: 2 },
    promised: 41,
    dollars: 210,
    cameBy: 'web form',
    target: [30, 26],
    customerNotes: 'A shoulder that will not take 36 pounds any more.',
  },
  {
    bow: 'unknownbow',
    services: ['scuff-recoat', 'new-string'],
    days: { requested: 4 },
    promised: null,
    dollars: 140,
    cameBy: 'phone',
    customerNotes: 'Inherited; would like to shoot it if it is safe.',
    privateNotes: 'Do not promise anything before it has been seen.',
    also: {
      requested: (job) =>
        reminded(job, 3, -1, 'Ring back: how long is the bow, and is anything written on it?'),
    },
  },
  {
    bow: 'egret',
    services: ['strip-refinish', 're-mark'],
    days: { requested: 17 },
    promised: 30,
    dollars: 260,
    cameBy: 'mail',
    customerNotes: 'Finish is coming off in sheets at the grip.',
    also: {
      requested: (job) =>
        held(job, {
          kind: 'customer',
          reason: 'Photographs of the veneer asked for, to see whether the glass is crazed.',
          on: 16,
          reminders: [
            [13, 'by e-mail', 'Asked again for two pictures by daylight.'],
            [6, 'by e-mail', 'Second reminder.'],
          ],
        }),
    },
  },
  {
    bow: 'reedling',
    services: ['reduce-weight', 're-mark', 'new-string'],
    days: { requested: 7, mailed: 3 },
    promised: 35,
    dollars: 245,
    cameBy: 'web form',
    target: [35, 26],
    tiller: '0 to +1/8',
  },
  {
    bow: 'fulmar',
    services: ['reduce-weight'],
    days: { requested: 19, mailed: 14 },
    promised: 18,
    dollars: 185,
    cameBy: 'mail',
    target: [44, 28],
    privateNotes: 'Second bow of his: the first is on the bench.',
  },
  {
    bow: 'shrike',
    services: ['reduce-weight', 're-mark'],
    days: { requested: 26 },
    promised: 10,
    dollars: 210,
    cameBy: 'web form',
    target: [45, 28],
    also: {
      requested: (job) => cancelled(job, 15, 'Sold the bow before it was sent.'),
    },
  },
  {
    bow: 'harrier',
    services: ['reduce-weight', 're-mark', 'grip-rest'],
    days: { requested: 13, mailed: 9, opened: 4, asked: 2 },
    promised: 12,
    dollars: 275,
    cameBy: 'mail',
    target: [50, 28],
    belongings: ['String', 'Wool sock', 'Stringer'],
    weights: { arrival: 56.2 },
    findings: [
      {
        grade: 'watch',
        place: 'lower limb, belly glass 9" from the fade',
        note: 'Two short pale lines in the glass, not felt with a fingernail. Measured and pictured.',
        picture: 'upper fade',
      },
      { grade: 'cosmetic', place: 'grip', note: 'Leather dry and lifting at the lower edge.' },
    ],
  },
  {
    bow: 'avocet',
    services: ['scuff-recoat'],
    days: { requested: 1, opened: 1 },
    promised: 28,
    dollars: 150,
    cameBy: 'unannounced box',
    belongings: ['Rest', 'Silencers'],
    packaging: 'Long box, newspaper, a letter without a telephone number',
    pictures: ['packing paper'],
    justOpened: true,
    also: {
      opened: async function* (job) {
        yield job.at(1, 16.1);
        await job.find({
          grade: 'stop',
          place: 'upper limb, belly glass at the fade',
          note: 'Lifted over three inches; a 5 thou feeler goes in. Seen as it came out of the paper.',
          picture: 'lifted glass',
        });
        yield* reminded(job, 1, 0, 'Look over the rest of the bow, then write to the sender.');
      },
    },
  },
  {
    bow: 'whinchat',
    services: ['overlay-nock', 'scuff-recoat'],
    days: { requested: 22, mailed: 17, opened: 13 },
    promised: 5,
    dollars: 195,
    cameBy: 'phone',
    belongings: ['String'],
    boxDamaged: true,
    condition: 'Box crushed at one end; lower tip pushed in.',
    notStrung: 'the lower overlay is broken',
    pictures: ['packing paper', 'bill'],
    also: {
      opened: async function* (job) {
        yield* damaged(job, {
          kind: 'damaged-in-transit',
          on: 13,
          place: 'lower tip, overlay',
          what: 'Box crushed at the lower end; overlay split across, tip wedge open.',
          picture: 'cracked overlay',
          claimWith: 'Carrier of the sender',
          claimNumber: 'DEMO-4471',
          told: 'telephone, 555 0114',
          remedy: 'Claim first; then the shop makes a new overlay at the carrier\u2019s cost.',
        });
        yield* held(job, {
          kind: 'claim',
          reason: 'Carrier wants to see the box before it decides.',
          on: 12,
          remindIn: 1,
          reminders: [[6, 'by telephone', 'Claims desk: inspector comes within two weeks.']],
        });
      },
    },
  },
  {
    bow: 'siskin',
    services: ['reduce-weight', 're-mark'],
    days: { requested: 33, mailed: 29, opened: 25 },
    promised: -8,
    dollars: 230,
    cameBy: 'web form',
    target: [36, 28],
    limbSet: 0,
    belongings: ['String', 'Sock'],
    weights: { arrival: 42.2 },
    also: {
      opened: (job) =>
        homeward(job, {
          kind: 'declined',
          reason:
            'Carbon back: six pounds cannot be had from width alone, and lighter limbs cost less.',
          on: 22,
          packed: 20,
          left: 19,
        }),
    },
  },
  {
    bow: 'ouzel',
    services: ['reduce-weight'],
    days: { requested: 12, mailed: 9, opened: 5 },
    promised: 21,
    dollars: 220,
    cameBy: 'mail',
    target: [52, 28],
    belongings: ['String', 'Horn nock, loose'],
    notStrung: 'chrysals across the belly of the lower limb',
    condition: 'Dry. Lower limb follows the string more than the upper.',
    findings: [
      {
        grade: 'stop',
        place: 'lower limb, belly, 7" to 11" from the grip',
        note: 'Crushed fibres across the whole width; the deepest is felt with a fingernail.',
        picture: 'chrysals',
      },
    ],
    also: {
      opened: (job) =>
        homeward(job, {
          kind: 'refused',
          reason: 'Chrysals: the belly has failed. Not to be strung or drawn.',
          on: 4,
          packed: 2,
        }),
    },
  },
];
