export interface ChartPoint {
  x: number;
  y: number;
}

/** How a series is told apart: by its stroke and its dashes, never by colour alone. */
export type Tone = 'ink' | 'accent' | 'quiet';

export interface ChartSeries {
  name: string;
  kind: 'line' | 'points';
  tone: Tone;
  isDashed?: boolean;
  points: readonly ChartPoint[];
}

/** A line across the picture, with its words at the end. */
export interface ChartRule {
  axis: 'x' | 'y';
  at: number;
  text: string;
}

/** A stretch of the picture that means something: a band of weights, a hinge along a limb. */
export interface ChartBand {
  axis: 'x' | 'y';
  from: number;
  to: number;
  tone: 'accent' | 'attention';
  /** Shown in a stretch of the x axis; one of the y axis wants a rule that says it. */
  text: string;
}

/** A point with the band it lies in most of the time. */
export interface ChartSpread {
  x: number;
  y: number;
  band: readonly [number, number];
}

export interface ChartData {
  series: readonly ChartSeries[];
  rules: readonly ChartRule[];
  bands: readonly ChartBand[];
  spread: ChartSpread | null;
  xLabel: string;
  yLabel: string;
  /** Where the axes begin and end; from the figures where they are left out. */
  xRange: readonly [number, number];
  yRange: readonly [number, number];
  xTicks?: readonly number[];
  /** Words in place of the figures of the x axis. */
  xNames?: ReadonlyMap<number, string>;
  xDigits: number;
  yDigits: number;
}
