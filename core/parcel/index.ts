export { assessParcel, type ParcelAssessment } from './assess.ts';
export type { CarrierProfile, Over, SideRounding, Surcharge } from './carrier-profile.ts';
export { limitsNear } from './near.ts';
export type { Parcel } from './parcel.ts';
export { startingProfiles } from './profiles.ts';
export { type ParcelSize, parcelSize } from './size.ts';
