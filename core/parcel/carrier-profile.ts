/** The figures are typed by hand in Settings, so their shape and bounds stand in the contract. */
export type { CarrierProfile, Over, SideRounding, Surcharge } from '../../shared/parcel.ts';
