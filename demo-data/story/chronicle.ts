import type { OpenShop, ShopContext } from '../../core/storage/context.ts';
import type { Role } from '../../shared/people.ts';
import { between, type Seeded } from '../seeded.ts';

const dayMs = 24 * 60 * 60 * 1000;
const isWeekend = (at: Date) => at.getDay() === 0 || at.getDay() === 6;
const two = (part: number) => String(part).padStart(2, '0');

/** Calendar day of an instant where the program runs, `YYYY-MM-DD`. */
function dayOf(at: Date): string {
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}

/** Who did something, and on which device. */
export interface Hand {
  personId: string;
  name: string;
  role: Role;
  device: string;
}

/**
 * The shop's past as it is being told: one clock that only goes forward, over all orders, so that
 * what is newest in the records is what happened last.
 */
export class Chronicle {
  readonly #shop: OpenShop;
  readonly #random: Seeded;
  readonly #today: Date;
  #nowMs: number;
  #hands = new Map<Role, Hand>();

  /** @param today calendar day that the telling stops before, `YYYY-MM-DD` */
  constructor(shop: OpenShop, today: string, random: Seeded) {
    this.#random = random;
    this.#today = new Date(`${today}T00:00:00`);
    this.#nowMs = this.#today.getTime() - 400 * dayMs;
    this.#shop = { ...shop, now: this.now, publish: () => {} };
  }

  /** Instant that the story has reached. */
  readonly now = (): string => new Date(this.#nowMs).toISOString();

  get shop(): OpenShop {
    return this.#shop;
  }

  get today(): string {
    return dayOf(new Date(this.#nowMs));
  }

  newId(): string {
    return this.#shop.newId();
  }

  meet(hands: readonly Hand[]): void {
    this.#hands = new Map(hands.map((hand) => [hand.role, hand]));
  }

  /** The shop as one of its people sees it. A minute or so passes before they act. */
  as(role: Role): ShopContext {
    const actor = this.#hands.get(role);
    if (actor === undefined) throw new Error(`nobody works here as ${role}`);
    this.#nowMs += Math.round(between(this.#random, 35_000, 100_000));
    return { ...this.#shop, actor };
  }

  /** Goes on to an instant, or stays where the story is already past it. */
  goTo(instantMs: number): void {
    this.#nowMs = Math.max(this.#nowMs + 1000, instantMs);
  }

  /** An instant so many working days before today. */
  workday(daysAgo: number, hour: number): number {
    const at = new Date(this.#today);
    for (let left = daysAgo; left > 0; ) {
      at.setDate(at.getDate() - 1);
      if (!isWeekend(at)) left -= 1;
    }
    at.setHours(Math.floor(hour), Math.round((hour % 1) * 60));
    return at.getTime();
  }

  /** The calendar day so many days from today; negative is past. */
  dayFromToday(days: number): string {
    const at = new Date(this.#today);
    at.setDate(at.getDate() + days);
    return dayOf(at);
  }
}
