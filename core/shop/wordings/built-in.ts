import type { ConsentKind } from '../../../shared/consents.ts';
import type { MessageStep, WordingUse } from '../../../shared/wordings.ts';

/** A text with merge fields. */
export interface Template {
  subject: string;
  body: string;
}

const head = 'Order {{order}}, {{customer}}. Bow: {{bow}}.';

const consents: Record<ConsentKind, string> = {
  'alteration-acknowledgement':
    'I ask {{shop}} to alter my bow as follows.\n{{subject}}\n\n' +
    "I understand that the maker's warranty may be void and may not cover an altered bow, that " +
    'material taken off cannot be put back, and that I have the bow altered at my own risk.',
  'marking-approval':
    'I approve that {{shop}} writes exactly this on my bow, and nothing else:\n\n{{subject}}',
  'price-and-scope':
    'I accept this work and price.\n{{subject}}\n\nAnything beyond it is agreed with me first, with its cost.',
  'watch-findings':
    'I was told of these findings on my bow and ask for the work to go on:\n\n{{subject}}',
  'expected-weight-loss':
    'I understand that stripping and sanding take some wood or glass with the old finish, and that ' +
    'the bow is expected to lose a pound or two of draw weight.\n{{subject}}',
  undershoot:
    'I was told that the bow now weighs less than its target, and that what was taken off cannot ' +
    'be put back. I accept this offer.\n{{subject}}',
};

const greeting = 'Hello {{customer}},\n\n';
const closing = '\n\n{{shop}}\n{{phone}}\n{{email}}';

/** Subject line and body of each message, without greeting and closing. */
const messages: Record<MessageStep, [string, string]> = {
  'request-taken': [
    'Your bow, order {{order}}',
    'we have taken your request as order {{order}}.\n\nBow: {{bow}}\nWork: {{work}}\nTarget: {{target}}\nPrice: {{total}}\n\nWe write before any work begins, and begin none without your answer.',
  ],
  'packing-advice': [
    'How to send your bow, order {{order}}',
    'please send the bow to:\n{{address}}\n\nUnstring it. Use a stiff tube or a box with the bow held away from every wall, pad both tips, and close the ends so that they cannot burst open. Put the order number {{order}} inside, and insure the parcel for what the bow is worth. Keep the proof of posting.',
  ],
  arrived: [
    'Your bow has arrived, order {{order}}',
    'your bow has arrived. We look it over before it is strung or drawn, and write to you about what we find.\n\nBow: {{bow}}',
  ],
  findings: [
    'What we found on your bow, order {{order}}',
    'we have looked your bow over. This is what we found:\n\n{{findings}}\n\nPlease tell us how to go on. Until you answer we leave the bow as it is.',
  ],
  'approval-asked': [
    'Your approval, order {{order}}',
    'before we go on we need your answer to: {{asked}}.\n\nThe exact words are in the paper that goes with this message. Answer by replying with the words "I agree" or "I do not agree" and your full name, or call us. No reply is no yes: the work waits. You may take an approval back at any time before the work it is about is done, and we send you a copy on paper without charge if you ask.',
  ],
  reminder: [
    'We wait for your answer, order {{order}}',
    'we still wait for your answer to: {{asked}}.\n\nThe bow waits with us, and no work is done on it until then.',
  ],
  'weight-done': [
    'The weight work is done, order {{order}}',
    'the weight work on your bow is done. We measured {{weight}}; the target was {{target}}.',
  ],
  undershoot: [
    'Your bow weighs less than planned, order {{order}}',
    'your bow now measures {{weight}}, below the target of {{target}}. What was taken off cannot be put back, and we are sorry.\n\nWe offer:\n{{offer}}\n\nPlease tell us whether you accept this.',
  ],
  'balance-due': [
    'Your bow is ready, order {{order}}',
    'your bow is ready. The price is {{total}}; {{balance}} is left to pay before it leaves.',
  ],
  shipped: [
    'Your bow is on its way, order {{order}}',
    'your bow has left with {{carrier}}, tracking number {{tracking}}.\n\nBefore you string it look both limbs over. Should the parcel arrive damaged, keep all of the packing and write to us the same day.',
  ],
  'going-home': [
    'Your bow goes home, order {{order}}',
    'your bow goes home without the planned work: {{reason}}.',
  ],
};

/** The text the program brings along: version 0 of each use. */
export function builtIn(use: WordingUse): Template {
  const [room, what] = use.split(':') as ['consent' | 'message', string];
  if (room === 'consent') {
    return { subject: '', body: `${head}\n\n${consents[what as ConsentKind]}` };
  }
  const [subject, body] = messages[what as MessageStep];
  return { subject, body: greeting + body + closing };
}
