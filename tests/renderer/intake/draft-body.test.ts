import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fromDraftBody, toDraftBody } from '../../../renderer/screens/intake/draft-body.ts';
import { emptyIntake, type IntakeForm } from '../../../renderer/screens/intake/intake-form.ts';
import { usualBelongings } from '../../../shared/arrival.ts';
import { bowFields } from '../../../shared/contract/bows.ts';
import { draftBody, intakeStarts } from '../../../shared/contract/intake.ts';
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
    glass: measured,
    facing: fc.constantFrom('E-glass' as const, 'bamboo' as const),
    services: fc.subarray([...services]),
    weight: measured,
    estimate: fc.option(fc.integer({ min: 0, max: 1_000_000 }), { nil: null }),
    promised: fc.option(fc.constant('2026-12-24'), { nil: null }),
    notes: typed,
    startsAt: fc.constantFrom(...intakeStarts),
    handover: fc.constantFrom('shipped' as const, 'collected' as const),
    stripFirst: fc.boolean(),
    cameAs: fc.constantFrom('whole-bow' as const, 'limbs-only' as const),
    belongings: fc.subarray([...usualBelongings]),
    moreBelongings: typed,
    nothing: fc.boolean(),
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
    bow: {
      ...emptyIntake.bow,
      kind: any.kind,
      markedWeightLbf: any.marked,
      faces: {
        ...emptyIntake.bow.faces,
        belly: { ...emptyIntake.bow.faces.belly, facing: any.facing, glassNowIn: any.glass },
      },
    },
    job: {
      ...emptyIntake.job,
      services: any.services,
      targetWeightLbf: any.weight,
      estimateCents: any.estimate,
      promisedOn: any.promised,
      privateNotes: any.notes,
    },
    startsAt: any.startsAt,
    handover: any.handover,
    stripFirst: any.stripFirst,
    cameAs: any.cameAs,
    arrival: {
      openedOn: any.promised ?? '',
      packaging: any.town,
      condition: any.notes,
      belongings: any.belongings,
      moreBelongings: any.moreBelongings,
      nothingCameAlong: any.nothing,
    },
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
    'bow.faces.back.facing': 'horn',
    'bow.facing': 'E-glass',
    startsAt: 'in the shed',
    handover: 'thrown',
    'arrival.condition': 'Dry',
    'job.services': ['reduce-weight', 'polish'],
    'job.targetWeightLbf': 'about 45',
    'gone.field': 'x',
  });
  expect(back).toEqual({
    ...emptyIntake,
    customerName: 'Hale Ashby',
    job: { ...emptyIntake.job, services: ['reduce-weight'] },
    arrival: { ...emptyIntake.arrival, condition: 'Dry' },
  });
});
