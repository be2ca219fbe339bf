/** How a carrier rounds each side before it calculates: 10.5 in stays, becomes 11, becomes 11; 10.4 in stays, 10, 11. */
export type SideRounding = 'none' | 'nearest-inch' | 'next-inch';

/** A limit that is broken only by going over it; exactly at it is still inside. */
export interface Over {
  longestIn?: number;
  secondIn?: number;
  lengthPlusGirthIn?: number;
  volumeIn3?: number;
  weightLb?: number;
}

export interface Surcharge {
  name: string;
  over: Over;
  /** Charged as at least this many pounds. */
  minimumLb?: number;
}

/**
 * Limits of one service as they stood on a day. Carriers change them every year: the shop keeps
 * the figures and the day in Settings, and the carrier's own guide decides.
 */
export interface CarrierProfile {
  name: string;
  /** Day the figures were looked up, `YYYY-MM-DD`. */
  asOf: string;
  rounding: SideRounding;
  /** Whether girth goes round the tube, or the tube counts as the box around it. */
  tubes: 'round' | 'as-box';
  /** Over any of these, the parcel is not accepted. */
  accepted: Over;
  /** Cubic inches a pound, charged only over this volume where one is given. */
  dimensional: { divisor: number; overIn3: number | null };
  surcharges: readonly Surcharge[];
}
