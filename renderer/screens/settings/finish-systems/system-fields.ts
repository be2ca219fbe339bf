import type { FinishSystem } from '../../../../shared/contract/finish.ts';
import type { FinishKind } from '../../../../shared/finish.ts';
import { fieldsOfSheet, newSheet, type SheetFields, sheetFrom } from './sheet-fields.ts';

/** A finish of the shop as the form holds it. */
export interface SystemFields {
  sheet: SheetFields;
  resinId: string | null;
  hardenerId: string | null;
  thinnerId: string | null;
  active: boolean;
}

export function newSystem(kind: FinishKind = 'two-part'): SystemFields {
  return {
    sheet: newSheet(kind),
    resinId: null,
    hardenerId: null,
    thinnerId: null,
    active: true,
  };
}

export function fieldsOfSystem(system: FinishSystem): SystemFields {
  const { resinId, hardenerId, thinnerId, active } = system;
  return { sheet: fieldsOfSheet(system.sheet), resinId, hardenerId, thinnerId, active };
}

/** What add and edit take; stock of a part that this kind has none of is let go. */
export function systemInput({ sheet, resinId, hardenerId, thinnerId, active }: SystemFields) {
  const isPoured = sheet.kind === 'two-part' || sheet.kind === 'one-part';
  return {
    sheet: sheetFrom(sheet),
    resinId,
    hardenerId: sheet.kind === 'two-part' ? hardenerId : null,
    thinnerId: isPoured ? thinnerId : null,
    active,
  };
}
