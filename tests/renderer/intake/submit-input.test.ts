import { expect, test } from 'vitest';
import { emptyIntake, jobToSend } from '../../../renderer/screens/intake/intake-form.ts';
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
