import { expect, test } from 'vitest';
import {
  cameBy,
  emptyIntake,
  type IntakeForm,
  jobToSend,
  unknownSender,
} from '../../../renderer/screens/intake/intake-form.ts';
import {
  formErrors,
  intakeErrors,
  submitInput,
} from '../../../renderer/screens/intake/submit-input.ts';
import { contract } from '../../../shared/contract/index.ts';
import { z } from '../../../shared/zod.ts';

const whole = {
  ...emptyIntake,
  customerIs: 'new',
  customer: { ...emptyIntake.customer, name: 'Hale Ashby' },
  bowIs: 'later',
  job: { ...emptyIntake.job, services: ['re-mark'] },
} as const satisfies typeof emptyIntake;

test('a whole request is one the contract takes', () => {
  expect(intakeErrors(whole)).toEqual({});
  const schema = contract.intake.submit['~orpc'].inputSchema;
  if (!(schema instanceof z.ZodType)) throw new Error('submit has no input');
  const input = { ...submitInput(whole, 'draft-1'), commandId: 'c-1' };
  expect(schema.safeParse(input).error?.issues ?? []).toEqual([]);
});

const sent = (form: IntakeForm) => {
  const schema = contract.intake.submit['~orpc'].inputSchema;
  if (!(schema instanceof z.ZodType)) throw new Error('submit has no input');
  const input = { ...submitInput(form, 'draft-1'), commandId: 'c-1' };
  expect(schema.safeParse(input).error?.issues ?? []).toEqual([]);
  return input;
};

test('a walk-in is here, opened today, and goes home over the counter', () => {
  const form: IntakeForm = { ...whole, ...cameBy(whole, 'walk-in', '2026-03-03') };
  expect(sent(form)).toMatchObject({
    startsAt: 'arrived',
    handover: 'collected',
    cameAs: 'whole-bow',
    arrival: { openedOn: '2026-03-03', belongings: [], nothingCameAlong: false },
  });
});

test('a day already given for the box stays when the way in is corrected', () => {
  const seen = { ...emptyIntake.arrival, openedOn: '2026-02-27', condition: 'Dry' };
  const changed = cameBy({ ...whole, arrival: seen }, 'unannounced box', '2026-03-03');
  expect(changed.arrival).toEqual(seen);
});

test('what came along is one list, and goes only with a bow that is here', () => {
  const arrival = {
    ...emptyIntake.arrival,
    openedOn: '2026-03-03',
    belongings: ['String', 'Sock'],
    moreBelongings: 'arm guard, six arrows ',
  };
  expect(sent({ ...whole, startsAt: 'arrived', arrival }).arrival?.belongings).toEqual([
    'String',
    'Sock',
    'arm guard',
    'six arrows',
  ]);
  expect(sent({ ...whole, startsAt: 'in-mail', arrival })).not.toHaveProperty('arrival');
});

test('a bow that is here needs the day it came', () => {
  expect(Object.keys(intakeErrors({ ...whole, startsAt: 'arrived' }))).toEqual([
    'arrival.openedOn',
  ]);
});

test('which way round is sent only for a job with weight work', () => {
  expect(sent({ ...whole, stripFirst: true })).not.toHaveProperty('stripFirst');
  const weight = { ...whole.job, services: ['reduce-weight' as const] };
  expect(sent({ ...whole, job: weight, stripFirst: true }).stripFirst).toBe(true);
});

test('a one-piece bow sends no limbs alone', () => {
  const oneNew: IntakeForm = { ...whole, bowIs: 'new', cameAs: 'limbs-only' };
  expect(submitInput(oneNew, 'd').cameAs).toBe('whole-bow');
  const takeDown = { ...oneNew, bow: { ...oneNew.bow, takeDown: 'bolted three-piece' as const } };
  expect(submitInput(takeDown, 'd').cameAs).toBe('limbs-only');
});

test('an unknown sender gets a name by the day of the box, to be replaced later', () => {
  const form: IntakeForm = {
    ...emptyIntake,
    ...unknownSender(emptyIntake, '2026-03-03'),
    bowIs: 'later',
    job: whole.job,
  };
  expect(sent(form)).toMatchObject({
    customer: { is: 'new', fields: { name: 'Unknown sender, box of 3 March' } },
    startsAt: 'arrived',
    cameBy: 'unannounced box',
    handover: 'shipped',
  });
});

test('an empty request says what is missing, by field', () => {
  expect(Object.keys(intakeErrors(emptyIntake)).toSorted()).toEqual([
    'bow',
    'customer',
    'job.services',
  ]);
  expect(intakeErrors({ ...whole, customer: emptyIntake.customer })).toHaveProperty(
    'customer.name',
  );
});

test('the draw length alone, as it is offered, is no target', () => {
  expect(emptyIntake.job.targetDrawIn).toBe(28);
  expect(jobToSend(emptyIntake.job).targetDrawIn).toBeNull();
  expect(jobToSend({ ...emptyIntake.job, targetWeightLbf: 45 }).targetDrawIn).toBe(28);
});

test("the core's words stand beside the form's fields", () => {
  expect(
    formErrors({
      'order.services': 'a',
      'customer.fields.name': 'b',
      'bow.fields.maker': 'c',
      targetDrawIn: 'd',
      bow: 'e',
    }),
  ).toEqual({
    'job.services': 'a',
    'customer.name': 'b',
    'bow.maker': 'c',
    'job.targetDrawIn': 'd',
    bow: 'e',
  });
});
