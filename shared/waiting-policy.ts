import { z } from './zod.ts';

const rises = (days: readonly number[]) =>
  days.every((day, i) => i === 0 || day > (days[i - 1] ?? day));

/**
 * How long the shop waits for its customers, in days. Shop policy: its own terms and local law
 * decide on fees and on goods nobody claims.
 */
export const waitingPolicy = z.strictObject({
  /** Days after a question or a hold on which the customer is reminded. */
  reminderDays: z
    .array(z.int().min(1).max(365))
    .min(1, 'Give at least one day.')
    .max(6, 'Give at most six days.')
    .refine(rises, 'Each day comes after the one before it.'),
  /** Days on hold for the customer after which a storage fee counts. */
  storageFeeDays: z.int().min(1).max(365),
  /** Days on hold after which a bow counts as unclaimed. No less than a month: common practice. */
  abandonedDays: z.int().min(30).max(3650),
});
export type WaitingPolicy = z.infer<typeof waitingPolicy>;

/** What a new shop starts with; common practice. */
export const usualWaiting: WaitingPolicy = {
  reminderDays: [3, 10, 21],
  storageFeeDays: 30,
  abandonedDays: 90,
};

export const unclaimedAfterFee = (policy: WaitingPolicy) =>
  policy.abandonedDays > policy.storageFeeDays;

export const unclaimedAfterFeeWords = {
  path: ['abandonedDays'],
  message: 'Give more days than until the storage fee: nobody is asked for both at once.',
};
