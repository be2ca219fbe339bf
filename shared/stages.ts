import { z } from './zod.ts';

/** Every stage an order can stand in, in the order of the full route. */
export const stages = [
  'requested',
  'in-mail',
  'arrived',
  'agreed',
  'weight-work',
  'strip-sand',
  'finish',
  'cure',
  'final-check',
  'packed',
  'shipped',
  'collected',
  'cancelled',
] as const;

export const stage = z.enum(stages);
export type Stage = z.infer<typeof stage>;

export const stageLabels: Record<Stage, string> = {
  requested: 'Requested',
  'in-mail': 'In the mail',
  arrived: 'Arrived',
  agreed: 'Agreed',
  'weight-work': 'Weight work',
  'strip-sand': 'Strip & sand',
  finish: 'Finish',
  cure: 'Cure',
  'final-check': 'Final check',
  packed: 'Packed',
  shipped: 'Shipped',
  collected: 'Collected',
  cancelled: 'Cancelled',
};

/** Nothing follows these: the bow has left the shop, or never came. */
export const closedStages: readonly Stage[] = ['shipped', 'collected', 'cancelled'];

/** Why a bow goes home before its work is done. */
export const goingHomeKinds = ['declined', 'refused', 'withdrawn', 'broken'] as const;
export const goingHome = z.enum(goingHomeKinds);
export type GoingHome = z.infer<typeof goingHome>;
export const goingHomeLabels: Record<GoingHome, string> = {
  declined: 'The customer declined',
  refused: 'The shop refused the work',
  withdrawn: 'The customer withdrew',
  broken: 'The bow is broken',
};

export const rooms = ['office', 'bench', 'finish room', 'shipping'] as const;
export const room = z.enum(rooms);
export type Room = z.infer<typeof room>;

export const roomOf: Record<Stage, Room> = {
  requested: 'office',
  'in-mail': 'office',
  arrived: 'office',
  agreed: 'office',
  'weight-work': 'bench',
  'strip-sand': 'bench',
  finish: 'finish room',
  cure: 'finish room',
  'final-check': 'shipping',
  packed: 'shipping',
  shipped: 'shipping',
  collected: 'shipping',
  cancelled: 'office',
};

export const services = [
  'reduce-weight',
  'scuff-recoat',
  'strip-refinish',
  're-mark',
  'overlay-nock',
  'grip-rest',
  'new-string',
] as const;
export const service = z.enum(services);
export type Service = z.infer<typeof service>;

export const serviceLabels: Record<Service, string> = {
  'reduce-weight': 'Reduce weight',
  'scuff-recoat': 'Scuff & recoat',
  'strip-refinish': 'Strip & refinish',
  're-mark': 'Re-mark',
  'overlay-nock': 'Overlay or nock work',
  'grip-rest': 'Grip, leather, rest, strike plate',
  'new-string': 'New string',
};
