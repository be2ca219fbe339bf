import type { Kysely } from 'kysely';
import type { AirLook, AirReading } from '../../../shared/contract/finish.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { difference } from '../../../shared/measure.ts';
import { airTroubles, settledAfterMin } from '../../finish/air.ts';
import { dewPointF, leastMarginF } from '../../finish/dew-point.ts';
import { runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { AirReadingRow, Tables } from '../../storage/tables.ts';
import { changedOf, notFound } from '../record.ts';
import { doneAt } from './done-at.ts';
import { readSystem, sheetOf } from './system-row.ts';

/** Where no system is chosen only the dew point is asked about. */
const anyAir = { airF: { from: -40, to: 122 }, humidityPercent: { from: 0, to: 100 } };

/** @see contract.finish.lookAtAir */
export async function lookAtAir(
  shop: OpenShop,
  input: ContractInputs['finish']['lookAtAir'],
): Promise<AirLook> {
  const limits =
    input.finishSystemId === null
      ? null
      : sheetOf(await readSystem(shop.read, input.finishSystemId)).air;
  const { airF, humidityPercent, surfaceF } = input;
  const dew = dewPointF(airF, humidityPercent);
  // Without a surface the answer is for a bow that has hung long enough to have the room's own.
  const room = { airF, humidityPercent, surfaceF, hungMin: settledAfterMin };
  return {
    dewPointF: dew,
    marginF: difference(surfaceF ?? airF, dew),
    leastMarginF: difference(leastMarginF, 0),
    limits,
    troubles: airTroubles(limits ?? anyAir, room),
  };
}

/** @see contract.finish.recordAir */
export function recordAir(
  ctx: ShopContext,
  input: ContractInputs['finish']['recordAir'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'finish.recordAir' }, async (trx) =>
    changedOf(
      await trx.insert('air_reading', {
        id: ctx.newId(),
        at: doneAt(input.at, trx.at),
        air_f: input.airF,
        humidity_percent: input.humidityPercent,
        surface_f: input.surfaceF,
        dew_point_f: dewPointF(input.airF, input.humidityPercent),
        note: input.note,
        person_id: ctx.actor.personId,
        struck_reason: null,
      }),
    ),
  );
}

/** @see contract.finish.strikeOutAir */
export function strikeOutAir(
  ctx: ShopContext,
  input: ContractInputs['finish']['strikeOutAir'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'finish.strikeOutAir' }, async (trx) => {
    const found = await readAir(trx.db, input.id);
    if (found.struck_reason !== null) {
      throw new ShopError('CONFLICT', 'This reading of the air is already struck out.');
    }
    const patch = { struck_reason: input.reason };
    return changedOf(await trx.update('air_reading', found.id, input.rowVersion, patch));
  });
}

/** @throws ShopError NOT_FOUND. */
export async function readAir(db: Kysely<Tables>, id: string): Promise<AirReadingRow> {
  const row = await db
    .selectFrom('air_reading')
    .selectAll()
    .where('id', '=', id)
    .executeTakeFirst();
  if (row === undefined) throw notFound('air reading', id);
  return row;
}

/** Latest reading that stands at an instant; null where there is none. */
export async function latestAir(db: Kysely<Tables>, at: string): Promise<AirReadingRow | null> {
  const row = await db
    .selectFrom('air_reading')
    .selectAll()
    .where('struck_reason', 'is', null)
    .where('at', '<=', at)
    .orderBy('at', 'desc')
    .orderBy('id', 'desc')
    .executeTakeFirst();
  return row ?? null;
}

/** @see contract.finish.airReadings */
export async function listAir(shop: OpenShop): Promise<AirReading[]> {
  const rows = await shop.read
    .selectFrom('air_reading')
    .innerJoin('person', 'person.id', 'air_reading.person_id')
    .selectAll('air_reading')
    .select('person.name as person_name')
    .orderBy('air_reading.at', 'desc')
    .orderBy('air_reading.id', 'desc')
    .limit(200)
    .execute();
  return rows.map((row) => ({
    id: row.id,
    rowVersion: row.row_version,
    at: row.at,
    airF: row.air_f,
    humidityPercent: row.humidity_percent,
    surfaceF: row.surface_f,
    dewPointF: row.dew_point_f,
    note: row.note,
    personName: row.person_name,
    struckReason: row.struck_reason,
  }));
}
