import { contract } from '../../../shared/contract/index.ts';
import {
  blankConsumable,
  type ConsumableDetail,
  type ConsumableFields,
} from '../../../shared/contract/stores.ts';
import { inputErrors } from '../../parts/input-schema.ts';
import { omit } from '../../parts/omit.ts';

export interface ConsumableInputsProps {
  value: ConsumableFields;
  onChange: (value: ConsumableFields) => void;
  errors: Record<string, string>;
  /** The unit is chosen once: what is on hand was counted in it. */
  isNew: boolean;
}

/** Most of what a shop enters is paper. */
export const emptyConsumable: ConsumableFields = {
  ...blankConsumable,
  category: 'abrasive',
  unit: 'sheet',
};

/** What the form changes of a consumable that is there. */
export function fieldsOf(detail: ConsumableDetail): ConsumableFields {
  const { grit } = detail;
  return {
    name: detail.name,
    category: detail.category,
    unit: detail.unit,
    grit: grit === null ? null : { grit: grit.grit, scale: grit.scale },
    barcode: detail.barcode,
    shelf: detail.shelf,
    weeklyUse: detail.weeklyUse,
    weeklyUseSpread: detail.weeklyUseSpread,
    waitWeeks: detail.waitWeeks,
    waitWeeksSpread: detail.waitWeeksSpread,
    runOutPercent: detail.runOutPercent,
    orderQuantity: detail.orderQuantity,
    openedDays: detail.openedDays,
    hazards: detail.hazards,
    note: detail.note,
  };
}

export const consumableErrors = (fields: ConsumableFields) =>
  inputErrors(contract.stores.addConsumable, fields);

/** The unit is chosen once. */
export const editableOf = (fields: ConsumableFields) => omit(fields, 'unit');

/** Another category takes its grit along only where it is an abrasive, and offers its usual unit. */
export function inCategory(
  fields: ConsumableFields,
  category: ConsumableFields['category'],
): ConsumableFields {
  const liquid = ['finish', 'hardener', 'thinner', 'solvent'].includes(category);
  const unit = category === 'abrasive' ? 'sheet' : liquid ? 'mL' : 'each';
  return { ...fields, category, unit, grit: category === 'abrasive' ? fields.grit : null };
}
