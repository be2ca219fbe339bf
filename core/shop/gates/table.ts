import type { Gate } from '../../../shared/gates.ts';
import { atWork, has, hasTarget } from './conditions.ts';
import {
  coatRequirements,
  readyForFinish,
  safeToWrap,
  stringAndFlex,
} from './finish-requirements.ts';
import {
  belongingsBack,
  finalCheckList,
  findingsTold,
  incidentsSettled,
  paidOrTerms,
  parcelReady,
  warningTag,
} from './leaving-requirements.ts';
import { needs, needsConsent, needsEntry, type Requirement } from './requirement.ts';
import {
  aboveTarget,
  agreedConsents,
  arrivalWeighing,
  glassCheck,
  inStage,
  inscribedWeight,
  inscriptionWritten,
  noOpenStop,
  planAccepted,
  stations,
  surpriseAnswered,
  tillerSinceBite,
  undershootDecided,
  weighedAfterSanding,
} from './work-requirements.ts';

/**
 * What must be there before a stage is entered or a step is done, and whether the owner may let
 * it pass with a reason. The one place where this is said.
 */
export const gateTable: Record<Gate, readonly Requirement[]> = {
  requested: [],
  'in-mail': [],
  arrived: [
    needs('bow-identified', 'bow', (facts) =>
      facts.bowIdentified ? null : 'The bow is not identified.',
    ),
    needs('box-opened', 'arrival', (facts) =>
      facts.boxOpened ? null : 'Not noted when the box was opened.',
    ),
    needs('condition', 'arrival', (facts) =>
      facts.conditionRecorded ? null : 'Condition on arrival not recorded.',
    ),
    needs('belongings', 'arrival', (facts) =>
      facts.belongingsListed ? null : 'Belongings not listed, nor noted that nothing came along.',
    ),
  ],
  agreed: [
    needs('arrival-check', 'arrival', (facts) =>
      facts.arrivalChecked ? null : 'Arrival check not complete.',
    ),
    noOpenStop,
    needsConsent('watch-findings', (facts) => facts.openWatches > 0),
    needsEntry('target-feasible', 'Nobody has said that the target can be reached.', {
      when: has('reduce-weight'),
    }),
    needs(
      'target',
      'bow',
      (facts) => (hasTarget(facts) ? null : 'No target weight and draw length.'),
      { when: has('reduce-weight') },
    ),
    ...agreedConsents,
  ],
  'weight-work': [
    arrivalWeighing,
    noOpenStop,
    stations,
    planAccepted,
    needsEntry('bare-glass', 'Not noted that the glass is bare or that no thinning is planned.'),
    ...agreedConsents,
  ],
  bite: [
    inStage('weight-work', 'strip-sand'),
    noOpenStop,
    needsConsent('alteration-acknowledgement'),
    surpriseAnswered,
    glassCheck,
    tillerSinceBite,
    aboveTarget,
  ],
  'strip-sand': agreedConsents,
  finish: [weighedAfterSanding, ...undershootDecided, ...readyForFinish, ...agreedConsents],
  lettering: [
    inStage('finish'),
    inscriptionWritten,
    inscribedWeight,
    needsConsent('marking-approval'),
  ],
  'first-clear': [
    inStage('finish'),
    needsEntry('lettering-applied', 'Lettering not applied.', { when: has('re-mark') }),
    needsEntry('lettering-dry', 'Lettering not noted as dry.', { when: has('re-mark') }),
    ...coatRequirements,
  ],
  coat: [inStage('finish'), ...coatRequirements],
  cure: [],
  'final-check': [noOpenStop, stringAndFlex],
  packed: [
    noOpenStop,
    ...finalCheckList,
    ...findingsTold,
    incidentsSettled,
    belongingsBack,
    paidOrTerms,
    safeToWrap,
  ],
  shipped: [noOpenStop, warningTag, ...parcelReady],
  collected: [noOpenStop, warningTag, needsEntry('handed-to', 'Not noted who took it.')],
  cancelled: [
    needs(
      'bow-here',
      'arrival',
      (facts) => (facts.boxOpened ? 'The bow is here: send it home instead of cancelling.' : null),
      { override: 'never', when: atWork },
    ),
  ],
};
