import type { Limb } from '../../../shared/bows.ts';
import { type LimbProfile, sizesOf } from '../limb-profile.ts';
import { type BowRemoval, bowAfter } from '../predict-removal.ts';
import type { PlanSetting } from './setting.ts';
import type { LimbPlan, PlanStation } from './types.ts';
import type { Amounts, UnitOfWork } from './work.ts';

function stationsOf(before: LimbProfile, worked: LimbProfile): PlanStation[] {
  const sizes = sizesOf(before);
  return worked.stations.map((station) => {
    const was = sizes(station.fromFadeIn);
    const offTotalIn = Math.max(
      was.bellyWidthIn - station.bellyWidthIn,
      was.backWidthIn - station.backWidthIn,
    );
    return {
      fromFadeIn: station.fromFadeIn,
      presentWidthIn: { belly: was.bellyWidthIn, back: was.backWidthIn },
      newWidthIn: { belly: station.bellyWidthIn, back: station.backWidthIn },
      offPerSideIn: offTotalIn / 2,
      offTotalIn,
      presentThicknessIn: was.thicknessIn,
      newThicknessIn: station.thicknessIn,
    };
  });
}

export interface Worked {
  setting: PlanSetting;
  unit: UnitOfWork;
  amounts: Amounts;
  removal: BowRemoval;
}

/** What one limb loses and has left, station by station. Inches, thousandths where named. */
export function limbPlan(limb: Limb, { setting, unit, amounts, removal }: Worked): LimbPlan {
  const before = setting.bow.measured[limb].profile;
  const worked = bowAfter(setting.bow.measured, removal)[limb].profile;
  const whole = amounts.upper + amounts.lower;
  const sanding = setting.wish.finishing.meanThou / 1000;
  const left = (glassIn: number) => (glassIn === 0 ? null : glassIn - sanding);
  const offPerSideIn = amounts[limb] * unit.sideIn;
  return {
    removal: removal[limb],
    offPerSideIn,
    offTotalIn: 2 * offPerSideIn,
    offThou: { belly: removal[limb].bellyThou, back: removal[limb].backThou },
    sharePart: whole === 0 ? 0 : amounts[limb] / whole,
    glassLeftIn: {
      belly: left(worked.layup.bellyGlassIn),
      back: left(worked.layup.backGlassIn),
    },
    stations: stationsOf(before, worked),
  };
}
