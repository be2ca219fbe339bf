/** Forms about a lot; a scanned label opens one of the first four on its lot. */
export const scannedForms = ['issue', 'count', 'discard', 'back'] as const;
export type ScannedForm = (typeof scannedForms)[number];
export type LotForm = Exclude<ScannedForm, 'issue'> | 'open' | 'edit';

/** The form that an address asks for; issuing where it asks for none. */
export function scannedForm(asked: string | null): ScannedForm {
  return scannedForms.find((form) => form === asked) ?? 'issue';
}

/** The lot of a scanned label, with this form open on it. */
export const lotPath = (lotId: string, form: ScannedForm) => `/stores/lot/${lotId}?do=${form}`;
