import type { FinishSystem } from '../../../../shared/contract/finish.ts';
import { cureStepLabels, cureSteps } from '../../../../shared/finish.ts';
import { decimal } from '../../../../shared/measure.ts';

const span = ({ from, to }: { from: number; to: number }) =>
  from === to ? decimal(from, 2) : `${decimal(from, 2)} to ${decimal(to, 2)}`;

/** `4 h`, `3 days`: whole days from two on. */
function hoursText(hours: number): string {
  return hours >= 48 && hours % 24 === 0 ? `${hours / 24} days` : `${decimal(hours, 2)} h`;
}

/** `4:1 by volume, thinner 10 %`; empty for what is not mixed. */
export function mixText({ sheet }: Pick<FinishSystem, 'sheet'>): string {
  if (sheet.kind === 'aerosol' || sheet.kind === 'hand-rubbed-oil') return '';
  const { by, resinParts, hardenerParts, thinnerPercent } = sheet.mix;
  const ratio =
    sheet.kind === 'two-part'
      ? `${decimal(resinParts, 3)}:${decimal(hardenerParts, 3)} by ${by}`
      : '';
  const thinner = thinnerPercent === 0 ? '' : `thinner ${decimal(thinnerPercent)} % by ${by}`;
  return [ratio, thinner].filter((part) => part !== '').join(', ');
}

/** What the sheet says, in short lines. */
export function systemFacts(system: FinishSystem): (readonly [string, string])[] {
  const { sheet } = system;
  const pot =
    sheet.kind === 'two-part'
      ? `${decimal(sheet.potLife.minutes)} min at ${decimal(sheet.potLife.referenceF)} F` +
        (sheet.potLife.inductionMin === 0
          ? ''
          : `, stands ${decimal(sheet.potLife.inductionMin)} min first`)
      : '';
  const stock = [system.resinName, system.hardenerName, system.thinnerName];
  return [
    ['Mixed', mixText(system)],
    ['Pot life', pot],
    ['Air', `${span(sheet.air.airF)} F, humidity ${span(sheet.air.humidityPercent)} %`],
    ['Coats', span(sheet.coats)],
    [
      'After the last coat',
      cureSteps
        .map((step) => `${cureStepLabels[step].toLowerCase()} ${hoursText(sheet.cure[step])}`)
        .join(', '),
    ],
    ['From the stores', stock.filter((name) => name !== '').join(', ')],
  ];
}
