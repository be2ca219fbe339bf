import type { Plan } from '../story/plan.ts';
import { closed } from './orders-closed.ts';
import { comingIn } from './orders-coming-in.ts';
import { finishingOff } from './orders-finishing.ts';
import { onTheBench } from './orders-on-the-bench.ts';

/** Thirty-seven orders, at every stage and on every route. */
export const demoOrders: readonly Plan[] = [...comingIn, ...onTheBench, ...finishingOff, ...closed];
