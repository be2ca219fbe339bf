import type { ConsumableDetail, ConsumableFields } from '../../../shared/contract/stores.ts';
import { refuseField } from '../../../shared/errors.ts';
import type { Grit, SizedGrit } from '../../../shared/grit.ts';
import type { Hazard } from '../../../shared/hazards.ts';
import { runOutPercents } from '../../../shared/stores.ts';
import { gritTables } from '../../finish/abrasive-tables.ts';
import { type Abrasive, abrasive } from '../../finish/grit.ts';
import type { ConsumableRow } from '../../storage/tables.ts';

/** A grit with the size and the name of the print it comes from. */
export function sizedGrit({ grit, scale, micrometres, table }: Abrasive): SizedGrit {
  const source = gritTables.find((each) => each.scale === scale && each.id === table)?.source ?? '';
  return { grit, scale, micrometres, source };
}

export function gritOf(row: Pick<ConsumableRow, 'grit_json'>): SizedGrit | null {
  if (row.grit_json === null) return null;
  return sizedGrit(abrasive(JSON.parse(row.grit_json) as Grit));
}

export function hazardsOf(row: Pick<ConsumableRow, 'hazards_json'>): Hazard[] {
  return JSON.parse(row.hazards_json) as Hazard[];
}

type EditedFields = Omit<ConsumableFields, 'unit'>;

/** @throws ShopError BAD_INPUT where what was filled in does not go together. */
function refuseOddFields(fields: EditedFields): void {
  if (fields.grit !== null && fields.category !== 'abrasive') {
    refuseField('grit', 'Only an abrasive has a grit. Take it out, or choose Abrasives.');
  }
  if (fields.grit !== null) abrasive(fields.grit);
  if (fields.weeklyUseSpread !== null && fields.weeklyUse === null) {
    refuseField('weeklyUse', 'Give the use in a week, or take out its spread.');
  }
  if (fields.waitWeeksSpread !== null && fields.waitWeeks === null) {
    refuseField('waitWeeks', 'Give the wait for a delivery, or take out its spread.');
  }
}

/** Columns from the fields as they were filled in. @throws ShopError BAD_INPUT. */
export function consumableColumns(fields: EditedFields) {
  refuseOddFields(fields);
  return {
    name: fields.name,
    category: fields.category,
    grit_json: fields.grit === null ? null : JSON.stringify(fields.grit),
    shelf: fields.shelf,
    weekly_use: fields.weeklyUse,
    weekly_use_spread: fields.weeklyUseSpread,
    wait_weeks: fields.waitWeeks,
    wait_weeks_spread: fields.waitWeeksSpread,
    run_out_percent: fields.runOutPercent,
    order_quantity: fields.orderQuantity,
    opened_days: fields.openedDays,
    hazards_json: JSON.stringify([...new Set(fields.hazards)]),
    note: fields.note,
  };
}

/** The fields again, with the grit's size. */
export function consumableFieldsOf(
  row: ConsumableRow,
): Omit<ConsumableFields, 'grit'> & Pick<ConsumableDetail, 'grit'> {
  return {
    name: row.name,
    category: row.category,
    unit: row.unit,
    grit: gritOf(row),
    barcode: row.barcode,
    shelf: row.shelf,
    weeklyUse: row.weekly_use,
    weeklyUseSpread: row.weekly_use_spread,
    waitWeeks: row.wait_weeks,
    waitWeeksSpread: row.wait_weeks_spread,
    runOutPercent: runOutPercents.find((each) => each === row.run_out_percent) ?? null,
    orderQuantity: row.order_quantity,
    openedDays: row.opened_days,
    hazards: hazardsOf(row),
    note: row.note,
  };
}
