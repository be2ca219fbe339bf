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
};

/** Nothing follows these: the bow has left the shop. */
export const closedStages: readonly Stage[] = ['shipped', 'collected'];

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
