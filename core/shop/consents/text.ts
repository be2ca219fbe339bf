import type { ConsentKind } from '../../../shared/consents.ts';

export interface ConsentWording {
  shopName: string;
  customerName: string;
  orderNumber: string;
  bowLine: string;
  subject: string;
}

const bodies: Record<ConsentKind, (w: ConsentWording) => string> = {
  'alteration-acknowledgement': (w) =>
    `I ask ${w.shopName} to alter my bow as follows.\n${w.subject}\n\n` +
    "I understand that the maker's warranty may be void and may not cover an altered bow, that " +
    'material taken off cannot be put back, and that I have the bow altered at my own risk.',
  'marking-approval': (w) =>
    `I approve that ${w.shopName} writes exactly this on my bow, and nothing else:\n\n${w.subject}`,
  'price-and-scope': (w) =>
    `I accept this work and price.\n${w.subject}\n\nAnything beyond it is agreed with me first, with its cost.`,
  'watch-findings': (w) =>
    `I was told of these findings on my bow and ask for the work to go on:\n\n${w.subject}`,
  'expected-weight-loss': (w) =>
    `I understand that stripping and sanding take some wood or glass with the old finish, and that ` +
    `the bow is expected to lose a pound or two of draw weight.\n${w.subject}`,
  undershoot: (w) =>
    'I was told that the bow now weighs less than its target, and that what was taken off cannot ' +
    `be put back. I accept this offer.\n${w.subject}`,
};

/** The wording the shop would ask now. The shop's own words, not legal advice; to be read before asking. */
export function consentText(kind: ConsentKind, wording: ConsentWording): string {
  const head = `Order ${wording.orderNumber}, ${wording.customerName}. Bow: ${wording.bowLine}.`;
  return `${head}\n\n${bodies[kind](wording)}`;
}
