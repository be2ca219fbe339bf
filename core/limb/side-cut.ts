import { monotoneCubic } from './monotone-cubic.ts';

/** Width off each side at one place, inches. Left and right as the limb lies, back up, tip away. */
export interface SideCut {
  fromFadeIn: number;
  leftIn: number;
  rightIn: number;
}

/** Which face a side cut narrows: both alike, or one more, which trapezes the section. */
export type CutFace = 'both' | 'back' | 'belly';

/** Width off in total at a distance from the fade, inches; nothing past the first and last cut. */
export function totalCut(cuts: readonly SideCut[]): (fromFadeIn: number) => number {
  const [first, last] = [cuts[0], cuts.at(-1)];
  if (first === undefined || last === undefined) return () => 0;
  const total = (cut: SideCut) => cut.leftIn + cut.rightIn;
  if (first === last) return (s) => (s === first.fromFadeIn ? total(first) : 0);
  const curve = monotoneCubic(cuts.map((cut) => ({ x: cut.fromFadeIn, y: total(cut) })));
  return (s) => (s < first.fromFadeIn || s > last.fromFadeIn ? 0 : curve.at(s));
}
