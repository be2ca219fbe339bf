import type { Shipment } from '../../../../shared/contract/shipments.ts';
import type { ContractInputs } from '../../../../shared/contract/types.ts';
import { omit } from '../../../parts/omit.ts';

/** What is typed into the parcel form. A measure is NaN while its text is no number. */
export type ParcelFields = Omit<
  ContractInputs['shipments']['edit'],
  'commandId' | 'id' | 'rowVersion'
>;

export const emptyParcel: ParcelFields = {
  carrierId: null,
  carrierName: '',
  shape: 'box',
  lengthIn: null,
  widthIn: null,
  heightIn: null,
  weightLb: null,
  declaredCents: null,
  valueEvidence: '',
  insured: false,
  tracking: '',
  shippedOn: null,
  deliveredOn: null,
  note: '',
};

export function fieldsOf(parcel: Shipment): ParcelFields {
  return omit(
    parcel,
    'id',
    'rowVersion',
    'direction',
    'assessment',
    'recordedAt',
    'personName',
    'struckReason',
  );
}

type Question = ContractInputs['shipments']['assess'];

const sized = (measure: number | null): measure is number =>
  measure !== null && Number.isFinite(measure) && measure > 0;

/** What the carrier's limits can be asked, or null while a size, the weight or the carrier is missing. */
export function questionOf(fields: ParcelFields): Question | null {
  const { carrierId, shape, lengthIn, widthIn, heightIn, weightLb } = fields;
  const isBox = shape === 'box';
  if (carrierId === null || !sized(lengthIn) || !sized(widthIn) || !sized(weightLb)) return null;
  if (isBox && !sized(heightIn)) return null;
  return { carrierId, shape, lengthIn, widthIn, heightIn: isBox ? heightIn : null, weightLb };
}

/** What the second measure of a shape is called. */
export const widthLabels: Record<ParcelFields['shape'], string> = {
  box: 'Width, inches',
  'round-tube': 'Diameter, inches',
  'three-sided-tube': 'One side, inches',
};
