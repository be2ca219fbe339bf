import { type WeighingSpread, weighingSd } from '../../limb/index.ts';
import type { StoredReading } from '../readings/stored.ts';
import { sessionWeights } from '../readings/weights.ts';

/** From pull to pull, lbf (common practice); a session of few pulls does not show its own. */
const perPullSdLbf = 0.15;
/** What an inch of draw and of brace does to the weight, as parts of it, while no plan tells. */
const usualSlopePart = 0.055;
const usualBracePart = 0.015;

export interface Slopes {
  perDrawLbf: number;
  perBraceLbf: number;
}

export function usualSlopes(weightLbf: number): Slopes {
  return { perDrawLbf: usualSlopePart * weightLbf, perBraceLbf: usualBracePart * weightLbf };
}

/**
 * How far one weighing at a draw may be off, part by part, lbf. The check of the scale leaves its
 * error anywhere between nothing and what it showed, both ways: an even spread (JCGM 100:2008,
 * "Guide to the expression of uncertainty in measurement", 4.3.7).
 */
export function weighingSpreadOf(
  reading: Pick<StoredReading, 'pulls' | 'draw_reference' | 'scale_error_lbf'>,
  drawIn: number,
  resolutionLbf: number,
  slopes: Slopes,
): WeighingSpread {
  const weights = sessionWeights(reading.pulls, reading.draw_reference);
  const at = weights.find((weight) => weight.drawIn === drawIn);
  return weighingSd({
    resolutionLbf,
    checkSdLbf: Math.abs(reading.scale_error_lbf ?? resolutionLbf) / Math.sqrt(3),
    perPullSdLbf,
    pulls: at?.pulls ?? 1,
    slopeLbfPerIn: slopes.perDrawLbf,
    braceLbfPerIn: slopes.perBraceLbf,
  });
}
