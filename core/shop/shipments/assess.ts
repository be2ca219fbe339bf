import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Assessment, CarrierProfile } from '../../../shared/parcel.ts';
import { assessParcel, limitsNear, type Parcel } from '../../parcel/index.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { CarrierRow } from '../../storage/tables.ts';
import { profileOf } from '../carriers/carrier-row.ts';
import { notFound } from '../record.ts';
import { parcelOf } from './parcel-of.ts';

export async function readCarrier(db: OpenShop['read'], id: string): Promise<CarrierRow> {
  return db
    .selectFrom('carrier')
    .selectAll()
    .where('id', '=', id)
    .executeTakeFirstOrThrow(() => notFound('carrier', id));
}

/** What is kept with the parcel, so that it can still be read when the limits have changed. */
export function assessmentOf(parcel: Parcel, profile: CarrierProfile): Assessment {
  const made = assessParcel(parcel, profile);
  return {
    carrierName: profile.name,
    asOf: profile.asOf,
    refusals: made.refusals,
    surcharges: made.surcharges,
    billableLb: made.billableLb,
    dimensionalLb: made.dimensionalLb,
    lengthPlusGirthIn: made.lengthPlusGirthIn,
  };
}

/** @throws ShopError NOT_FOUND for an unknown carrier, BAD_INPUT for a box without a height. */
export async function assessShipment(
  shop: OpenShop,
  input: ContractInputs['shipments']['assess'],
): Promise<ContractOutputs['shipments']['assess']> {
  const profile = profileOf(await readCarrier(shop.read, input.carrierId));
  const parcel = parcelOf({
    shape: input.shape,
    length_in: input.lengthIn,
    width_in: input.widthIn,
    height_in: input.heightIn,
    weight_lb: input.weightLb,
  });
  if (parcel === null) {
    throw new ShopError('BAD_INPUT', 'A box needs its height too.', {
      heightIn: 'Measure the outside of the closed box.',
    });
  }
  return { ...assessmentOf(parcel, profile), near: limitsNear(parcel, profile) };
}
