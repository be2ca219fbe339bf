import { refuseField } from '../../shared/errors.ts';
import { minutesAfter } from './instant.ts';
import { refuseUnlessAboveZero } from './refuse.ts';

/**
 * Four times after the last coat, hours, as the sheet gives them at its own temperature and
 * humidity. None stands for another: a film that can be handled still takes the print of a wrap.
 * In a cooler room all of them take longer, by what no sheet says.
 */
export interface CureHours {
  handle: number;
  stringAndFlex: number;
  wrap: number;
  full: number;
}

export type CureStep = keyof CureHours;

export const cureSteps: readonly CureStep[] = ['handle', 'stringAndFlex', 'wrap', 'full'];

/** In the words of the finish room. */
export const cureStepText: Readonly<Record<CureStep, string>> = {
  handle: 'Dry to handle',
  stringAndFlex: 'Safe to string and flex',
  wrap: 'Safe to wrap',
  full: 'Fully cured',
};

/** @throws ShopError BAD_INPUT where a time is not above 0, or one comes before handling or after full cure. */
export function refuseOddCure(cure: CureHours): void {
  for (const step of cureSteps) {
    const field = `cure.${step}`;
    refuseUnlessAboveZero(field, cure[step], `Hours: ${cureStepText[step].toLowerCase()}`);
    if (cure[step] < cure.handle) {
      refuseField(field, `${cureStepText[step]} cannot come before dry to handle.`);
    }
    if (cure[step] > cure.full) {
      refuseField(field, `${cureStepText[step]} cannot come after full cure.`);
    }
  }
}

/**
 * When each of the four times has passed, ISO-8601 UTC.
 * @param lastCoatAt end of the last coat, ISO-8601 UTC.
 * @throws ShopError BAD_INPUT for odd times or an instant that cannot be read.
 */
export function cureInstants(cure: CureHours, lastCoatAt: string): Record<CureStep, string> {
  refuseOddCure(cure);
  const after = (step: CureStep) => minutesAfter('lastCoatAt', lastCoatAt, cure[step] * 60);
  return {
    handle: after('handle'),
    stringAndFlex: after('stringAndFlex'),
    wrap: after('wrap'),
    full: after('full'),
  };
}
