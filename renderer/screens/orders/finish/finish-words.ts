import type { Coat, OrderFinishNow, Sanding } from '../../../../shared/contract/finish.ts';
import {
  bowSectionLabels,
  coatPurposeLabels,
  cureStepLabels,
  substrateLabels,
} from '../../../../shared/finish.ts';
import { gritText, gritWithSize } from '../../../../shared/grit.ts';
import { decimal } from '../../../../shared/measure.ts';
import { momentText } from '../../../parts/days.ts';

const joined = (...words: readonly string[]) => words.filter((word) => word !== '').join(', ');

/** How the finish stands, in a few words; undefined while it is read. */
export function finishState(finish: OrderFinishNow | undefined): string {
  if (finish === undefined) return '';
  const { chosen, coatsOn, sandings, passed } = finish;
  const last = passed.at(-1);
  return (
    joined(
      chosen?.sheet.name ?? '',
      coatsOn === 0 ? '' : `${coatsOn} ${coatsOn === 1 ? 'coat' : 'coats'} on`,
      last === undefined ? '' : cureStepLabels[last].toLowerCase(),
      coatsOn === 0 && sandings.some(({ struckReason }) => struckReason === null) ? 'sanded' : '',
    ) || 'nothing recorded yet'
  );
}

/** `2 clear coats, 3 mil wet, 1.2 mil dry, upper limb`: what of it was said. */
export function coatWords(coat: Coat): string {
  const { purpose, coats, sections, wetMil, dryMil, scuffed } = coat;
  const parts = sections.map((section) => bowSectionLabels[section].toLowerCase()).join(' and ');
  const grit = scuffed?.grit ?? null;
  return joined(
    coats === 1 ? coatPurposeLabels[purpose] : `${coatPurposeLabels[purpose]}, ${coats} times`,
    wetMil === null ? '' : `${decimal(wetMil, 2)} mil wet`,
    dryMil === null ? '' : `${decimal(dryMil, 2)} mil dry`,
    parts,
    scuffed === null ? '' : `scuffed first${grit === null ? '' : ` with ${gritText(grit)}`}`,
  );
}

/** What it was coated with, when and by whom. */
export function coatedWords({ systemName, batchName, at, personName }: Coat): string {
  return joined(systemName, batchName, momentText(at), personName);
}

export function sandingWords({
  section,
  substrate,
  grit,
  strokes,
  wiped,
  isLast,
}: Sanding): string {
  const part =
    section === 'overlays'
      ? bowSectionLabels[section]
      : `${bowSectionLabels[section]}, ${substrateLabels[substrate].toLowerCase()}`;
  return joined(
    `${part}: ${gritWithSize(grit)}`,
    strokes === null ? '' : `${strokes} strokes`,
    wiped ? 'wiped' : '',
    isLast ? 'the last one before finish' : '',
  );
}
