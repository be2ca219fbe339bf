import { held, misread, reminded, undershot } from '../story/detours.ts';
import type { Plan } from '../story/plan.ts';
import { prepareWork } from '../story/weight-work.ts';

/** Orders that are agreed, in weight work, or in strip and sand. */
export const onTheBench: readonly Plan[] = [
  {
    bow: 'plover',
    services: ['reduce-weight', 're-mark', 'new-string'],
    days: { requested: 14, mailed: 11, opened: 7, asked: 5, answered: 2 },
    promised: 24,
    dollars: 255,
    cameBy: 'mail',
    target: [45, 28],
    belongings: ['String', 'Silencers', 'Sock'],
    weights: { arrival: 51.2 },
    reckoned: { measured: 'bare' },
    privateNotes: 'Here once before for the grip: see the life of the bow.',
    also: {
      agreed: async function* (job) {
        yield job.at(1, 15.7);
        await prepareWork(job);
      },
    },
  },
  {
    bow: 'sedge',
    services: ['strip-refinish', 're-mark'],
    days: { requested: 24, mailed: 20, opened: 16, asked: 15, answered: 13 },
    promised: -3,
    dollars: 240,
    cameBy: 'web form',
    belongings: ['String', 'Quiver'],
    weights: { arrival: 47.4 },
    findings: [
      {
        grade: 'cosmetic',
        place: 'both limbs, over the glass',
        note: 'Old finish crazed; the glass under it is sound.',
        picture: 'worn grip',
      },
    ],
    also: {
      agreed: (job) =>
        held(job, {
          kind: 'material',
          reason: 'Hardener lot out of date; a new one is on the way.',
          on: 11,
          remindIn: 2,
        }),
    },
  },
  {
    bow: 'teasel',
    services: ['reduce-weight', 're-mark'],
    days: { requested: 20, mailed: 16, opened: 11, asked: 10, answered: 8, work: [2, 1] },
    promised: 9,
    dollars: 225,
    cameBy: 'phone',
    target: [48, 28],
    belongings: ['String', 'Rest'],
    weights: { arrival: 54.2 },
    reckoned: { measured: 'bare', bites: 2 },
    pictures: ['riser'],
    also: {
      work: (job) => misread(job, 1, 46.9, 'Read at 27 in by mistake: the stop had slipped.'),
    },
  },
  {
    bow: 'goshawk',
    services: ['reduce-weight'],
    days: { requested: 21, mailed: 18, opened: 12, asked: 11, answered: 9, work: [4, 3] },
    promised: 3,
    dollars: 190,
    cameBy: 'web form',
    target: [42, 28],
    limbsOnly: { set: 1, riser: 'shop riser, 17", pads 12 degrees' },
    belongings: ['Limb bolts'],
    condition: 'Limbs only, each in a towel. Bolt holes clean.',
    weights: { arrival: 47.1, bites: [45.2, 43.9] },
    customerNotes: 'The riser stays in use with the heavier limbs.',
  },
  {
    bow: 'benchone',
    services: ['reduce-weight', 're-mark'],
    days: { requested: 10, opened: 9, asked: 9, answered: 8, work: [6, 1] },
    promised: 16,
    dollars: 0,
    cameBy: 'walk-in',
    target: [38, 28],
    handover: 'collected',
    condition: 'From the rack.',
    weights: { arrival: 43.6 },
    reckoned: { measured: 'bare' },
    privateNotes: 'Lighter, for the beginners\u2019 evening.',
    pictures: ['tillering wall'],
    also: {
      work: (job) => reminded(job, 1, 2, 'Photograph it for the sales page when it is finished.'),
    },
  },
  {
    bow: 'bittern',
    services: ['reduce-weight', 'strip-refinish', 're-mark'],
    days: {
      requested: 34,
      mailed: 30,
      opened: 24,
      asked: 22,
      answered: 19,
      work: [11, 10],
      sanded: 2,
    },
    promised: -2,
    dollars: 320,
    cameBy: 'mail',
    target: [41, 28],
    belongings: ['String', 'Sock'],
    weights: { arrival: 46.4 },
    reckoned: { measured: 'over-finish' },
    findings: [
      {
        grade: 'watch',
        place: 'upper limb, back glass at the fade',
        note: 'A short white line where the glass meets the riser; does not grow when flexed.',
        picture: 'upper fade',
      },
    ],
  },
  {
    bow: 'petrel',
    services: ['reduce-weight', 're-mark'],
    days: {
      requested: 30,
      mailed: 26,
      opened: 21,
      asked: 20,
      answered: 17,
      work: [9, 8],
      sanded: 3,
    },
    promised: 4,
    dollars: 230,
    cameBy: 'web form',
    target: [46, 28],
    belongings: ['String', 'Silencers'],
    weights: { arrival: 53, bites: [50.1, 48.2, 47.3], sanded: 45.1 },
    also: {
      sanded: (job) =>
        undershot(job, {
          on: 2,
          cents: -4_000,
          words:
            'Sanding took more than we allowed for. Keep it at this weight for 40 dollars less.',
        }),
    },
  },
  {
    bow: 'capercaillie',
    services: ['reduce-weight', 'strip-refinish', 're-mark'],
    days: { requested: 23, mailed: 19, opened: 14, asked: 12, answered: 10, sanded: 3 },
    promised: 14,
    dollars: 340,
    cameBy: 'phone',
    target: [55, 30],
    stripFirst: true,
    belongings: ['String', 'Quiver', 'Stringer'],
    weights: { arrival: 60.8 },
    privateNotes: 'Stripped first: the old film is too thick to measure the glass through.',
  },
];
