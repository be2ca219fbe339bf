import { changed, day, id, instant, line, rowVersion, text } from '../fields.ts';
import { incidentKind } from '../incidents.ts';
import { z } from '../zod.ts';
import { command, commandInput, officeRoles } from './base.ts';

const what = text(2000).min(3, 'Say what happened.');

export const incident = z.object({
  id,
  rowVersion,
  kind: incidentKind,
  happenedOn: day,
  what: text(2000),
  /** The stop finding it made; null where nothing of the bow is here to be drawn. */
  findingId: id.nullable(),
  foundAt: instant,
  foundBy: line(120),
  claimWith: line(200),
  claimUntil: day.nullable(),
  claimFiledOn: day.nullable(),
  claimNumber: line(120),
  ownerToldOn: day.nullable(),
  ownerToldHow: line(200),
  remedy: text(2000),
  settledAt: instant.nullable(),
  settledHow: text(2000),
});
export type Incident = z.infer<typeof incident>;

export const incidents = {
  /**
   * Damage to the bow, or its loss. Damage writes a stop finding with it. A claim's last day
   * follows from the carrier of the parcel where none is given.
   */
  record: command()
    .input(
      commandInput({
        orderId: id,
        kind: incidentKind,
        happenedOn: day,
        what,
        /** Place on the bow; needed for damage. */
        place: line(200),
        claimWith: line(200),
        claimUntil: day.nullable(),
      }),
    )
    .output(changed),
  edit: command(officeRoles)
    .input(
      commandInput({
        id,
        rowVersion,
        what,
        claimWith: line(200),
        claimUntil: day.nullable(),
        claimFiledOn: day.nullable(),
        claimNumber: line(120),
        ownerToldOn: day.nullable(),
        ownerToldHow: line(200),
        remedy: text(2000),
      }),
    )
    .output(changed),
  /** Needs the owner told and a remedy agreed. The stop finding stays: repair and a second look end it. */
  settle: command(officeRoles)
    .input(commandInput({ id, rowVersion, how: text(2000).min(3, 'Say how it ended.') }))
    .output(changed),
};
