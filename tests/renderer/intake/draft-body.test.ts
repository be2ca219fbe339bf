import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fromDraftBody, toDraftBody } from '../../../renderer/screens/intake/draft-body.ts';
import { emptyIntake, type IntakeForm } from '../../../renderer/screens/intake/intake-form.ts';
import { bowFields } from '../../../shared/contract/bows.ts';
import { draftBody } from '../../../shared/contract/intake.ts';
import { services } from '../../../shared/stages.ts';

const typed = fc.string({ maxLength: 80 });
const measured = fc.option(fc.double({ min: 1, max: 200, noNaN: true }), { nil: null });

const form: fc.Arbitrary<IntakeForm> = fc
  .record({
    customerIs: fc.constantFrom('open' as const, 'known' as const, 'new' as const, 'shop' as const),
    customerName: typed,
    town: typed,
    draw: measured,
    bowIs: fc.constantFrom('open' as const, 'known' as const, 'new' as const, 'later' as const),
    kind: fc.constantFrom(...bowFields.shape.kind.options),
    marked: measured,
    services: fc.subarray([...services]),
    weight: measured,
    estimate: fc.option(fc.integer({ min: 0, max: 1_000_000 }), { nil: null }),
    promised: fc.option(fc.constant('2026-12-24'), { nil: null }),
    notes: typed,
    startsAt: fc.constantFrom('requested' as const, 'in-mail' as const),
  })
  .map((any) => ({
    ...emptyIntake,
    customerIs: any.customerIs,
    customerName: any.customerName,
    customer: {
      ...emptyIntake.customer,
      name: any.customerName,
      address: { ...emptyIntake.customer.address, city: any.town },
      ownDrawIn: any.draw,
    },
    bowIs: any.bowIs,
    bow: { ...emptyIntake.bow, kind: any.kind, markedWeightLbf: any.marked },
    job: {
      ...emptyIntake.job,
      services: any.services,
      targetWeightLbf: any.weight,
      estimateCents: any.estimate,
      promisedOn: any.promised,
      privateNotes: any.notes,
    },
    startsAt: any.startsAt,
  }));

test('a request comes back from its draft as it was typed', () => {
  fc.assert(
    fc.property(form, (given) => {
      const body = toDraftBody(given);
      expect(draftBody.parse(body)).toEqual(body);
      expect(fromDraftBody(JSON.parse(JSON.stringify(body)))).toEqual(given);
    }),
  );
});

test('a draft of another version opens with what still fits', () => {
  const back = fromDraftBody({
    customerName: 'Hale Ashby',
    customerIs: 'somebody',
    'bow.kind': 'crossbow',
    'job.services': ['reduce-weight', 'polish'],
    'job.targetWeightLbf': 'about 45',
    'gone.field': 'x',
  });
  expect(back).toEqual({
    ...emptyIntake,
    customerName: 'Hale Ashby',
    job: { ...emptyIntake.job, services: ['reduce-weight'] },
  });
});
