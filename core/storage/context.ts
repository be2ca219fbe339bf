import type { Kysely } from 'kysely';
import type { Logger } from 'pino';
import type { Change } from '../../shared/contract/system.ts';
import type { Role } from '../../shared/people.ts';
import type { AttachmentStore } from './attachments/store.ts';
import type { Tables } from './tables.ts';

/** Who does it, and on which device. */
export interface Actor {
  personId: string;
  name: string;
  role: Role;
  device: string;
}

/** Time, ids, storage and log of an open shop. Nothing in core takes them from anywhere else. */
export interface OpenShop {
  /** Read-only connection: a query cannot write, whatever it does. */
  read: Kysely<Tables>;
  /** Writer connection. Only runCommand and the drafts use it. */
  write: Kysely<Tables>;
  /** Instant, ISO-8601 in UTC. */
  now(): string;
  newId(): string;
  /** Photographs and other files. Never touched inside a transaction. */
  attachments: AttachmentStore;
  log: Logger;
  publish(change: Change): void;
}

export interface ShopContext extends OpenShop {
  actor: Actor;
}
