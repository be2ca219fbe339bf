import type { ConsentFormData } from '../../../core/papers/consent-form.ts';

/** Invented shop and customer. */
export const consentWaiting: ConsentFormData = {
  format: 'letter',
  printedAt: '2026-03-02T09:00:00.000Z',
  shop: {
    name: 'Fernhill Bow Works',
    lines: ['4 Mill Lane', 'Ashdale, VT 05000'],
    phone: '555 0100',
    email: 'bench@fernhill.example',
  },
  number: '26-0147',
  customer: 'Nora Hale',
  bow: 'longbow 66", Oldfield Heron, marked 52# @ 28"',
  title: 'Alteration acknowledgement',
  asked: '2026-03-01, 15:20 UTC, by e-mail to nora@hale.example',
  text: 'Order 26-0147, Nora Hale. Bow: longbow 66", Oldfield Heron.\n\nI ask Fernhill Bow Works to alter my bow as follows.\nWork: Reduce weight, Re-mark\nTarget: 45# @ 28" AMO\n\nI understand that the maker\'s warranty may be void and may not cover an altered bow, that material taken off cannot be put back, and that I have the bow altered at my own risk.\n\nThis text is the shop\'s own and not legal advice.',
  textMark: '0f3a 91c2 77de 4b10',
  state: '',
  answers: [],
  notes: [
    'To answer: sign above and send or bring this paper; or reply by e-mail; or call 555 0100. No reply is no yes: the work waits.',
    'To take your agreement back before the work it is about is done: tell us.',
    'You may have this text and your answer on paper, now and later, without charge.',
  ],
};

const wave = Array.from({ length: 120 }, (_, i): [number, number] => [
  0.3 + i / 40,
  0.6 + 0.35 * Math.sin(i / 6),
]);

export const consentSigned: ConsentFormData = {
  ...consentWaiting,
  state: 'Now: granted.',
  answers: [
    {
      answer: 'granted',
      facts: [
        ['Answer', 'granted'],
        ['By', 'Nora Hale'],
        ['When', '2026-03-02, 10:00 UTC'],
        ['How', 'in person'],
        ['Written down', 'Otto Reed, 2026-03-02, 10:01 UTC'],
      ],
      signature: { manner: 'drawn', intent: 'I sign this', strokes: [wave, [[3.5, 0.4]]] },
    },
  ],
};

export const consentShortest: ConsentFormData = {
  ...consentWaiting,
  shop: { name: 'F', lines: [], phone: '', email: '' },
  customer: 'N',
  bow: 'not identified yet',
  title: 'Findings to watch',
  text: 'I was told of it. Yes.',
  notes: ['No reply is no yes.'],
};

const paragraph = `upper limb, ${'a long story of what was seen '.repeat(32)}`;

/** As long as a text may be: 40,000 characters. */
export const consentLong: ConsentFormData = {
  ...consentSigned,
  format: 'a4',
  title: 'Findings to watch',
  customer: 'Wilhelmina Featherstonehaugh-Cholmondeley of the Lower Orchard Road Archers',
  text: Array.from({ length: 42 }, (_, i) => `${i + 1}: ${paragraph}`)
    .join('\n')
    .slice(0, 40_000),
  answers: [
    ...consentSigned.answers,
    {
      answer: 'withdrawn',
      facts: [
        ['Answer', 'withdrawn'],
        ['Words agreed', 'I take it back. '.repeat(120)],
      ],
      signature: { manner: 'typed', intent: 'I sign this', name: 'Nora Hale' },
    },
  ],
};
