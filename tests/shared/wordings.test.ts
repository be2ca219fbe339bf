import { expect, test } from 'vitest';
import { builtIn } from '../../core/shop/wordings/built-in.ts';
import { fieldsIn, fieldTrouble, merged } from '../../shared/merge-fields.ts';
import { warrantyVoidClause } from '../../shared/warranty-words.ts';
import { wordingTroubles, wordingUses } from '../../shared/wordings.ts';

test('values go in where the fields stand, and are never read as fields themselves', () => {
  const values = { customer: '{{order}} $& $1', order: '26-0001' };
  expect(merged('{{customer}}, {{ order }}: {{order}}', values)).toBe(
    '{{order}} $& $1, 26-0001: 26-0001',
  );
  expect(() => merged('{{toString}}', values)).toThrow('toString');
});

test.each([
  ['{{custmer}}', 'There is no field {{custmer}} here. There are: {{customer}}, {{bow}}.'],
  ['{{__proto__}}', 'There is no field {{__proto__}}'],
  ['{{#if bow}}', 'There is no field {{#if bow}}'],
  ['{{}}', 'There is no field {{}}'],
  ['{{customer', 'A field begins with {{'],
  ['customer}}', 'A field begins with {{'],
  ['{{{customer}}}', null],
  ['{{customer}} { } {{bow}}', null],
])('"%s" is judged by its fields', (template, sentence) => {
  const trouble = fieldTrouble(template, ['customer', 'bow']);
  if (sentence === null) expect(trouble).toBeNull();
  else expect(trouble).toContain(sentence);
});

test('fields are listed once each', () => {
  expect(fieldsIn('{{bow}} {{customer}} {{ bow }}')).toEqual(['bow', 'customer']);
});

test.each([
  "The maker's warranty is void.",
  'This voids the warranty.',
  'Your warranty will be voided by this work.',
  'The warranty becomes void once the bow is altered.',
  'WARRANTY VOID',
  'Warranty: the warranty is\nvoid.',
  'any altered bow has a void warranty',
  'You lose the warranty.',
  'The warranty is lost.',
  'Altering the bow invalidates its warranty',
  'The warranty no longer holds: it is void, and the warranty expires.',
  'the warranty is null and void',
  'The guarantee is void.',
  'All warranties are cancelled by sanding.',
  'It may rain, but the warranty is void.',
  'The warranty may lapse and the warranty is void.',
  'The warranty must be void.',
  'The warranty ends with the first cut.',
  'You forfeit the warranty.',
  'The warranty is terminated.',
  'Warranty: void.',
  'If you sand it, the warranty is void.',
  'If the bow is altered the warranty is void.',
  'The warranty may not hold and is void.',
  'The maker’s warranty is now void.',
])('refused: "%s"', (text) => {
  expect(warrantyVoidClause(text)).not.toBeNull();
});

test.each([
  "The maker's warranty may be void and may not cover an altered bow.",
  "I understand that the maker's warranty might be voided.",
  'Whether the warranty is affected is for the maker to say.',
  'Altering the bow could void the warranty.',
  'The maker can void its warranty.',
  'We do not say that the warranty is covered.',
  'Avoid strings that are too short. The warranty card is kept.',
  'Nothing here voids the warranty.',
  'The order was cancelled.',
  'The end of the limb was lost.',
])('let through: "%s"', (text) => {
  expect(warrantyVoidClause(text)).toBeNull();
});

test.each(wordingUses)('the built-in text of %s may be used', (use) => {
  expect(wordingTroubles(use, builtIn(use))).toEqual({});
});

test('what a wording needs is refused by the part it is missing from', () => {
  const ask = (body: string) =>
    wordingTroubles('consent:alteration-acknowledgement', { subject: '', body });
  const need = "The maker's warranty may not cover an altered bow. ";
  expect(ask(`${need}{{subject}} {{order}}`)).toEqual({});
  expect(ask(`${need}{{order}}`).body).toContain('{{subject}} must stay');
  expect(ask('I ask for this: {{subject}} {{order}}').body).toContain(
    'may not cover an altered bow',
  );
  expect(ask(`${need}{{subject}} The warranty is void.`).body).toContain(
    'only its maker can say that',
  );
  expect(ask(`${need}{{subject}} {{tracking}}`).body).toContain('{{tracking}}');
  expect(
    wordingTroubles('message:arrived', { subject: '', body: 'Your bow is here, all is well.' }),
  ).toEqual({
    subject: 'Write the subject line.',
  });
});
