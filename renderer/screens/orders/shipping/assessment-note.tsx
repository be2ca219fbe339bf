import { decimal } from '../../../../shared/measure.ts';
import type { Assessment } from '../../../../shared/parcel.ts';
import { daysUntil, fullDay } from '../../../parts/days.ts';
import { Mark } from '../../../parts/mark.tsx';
import orderClasses from '../order-page.module.css';
import classes from './shipping.module.css';

/** Carriers change their limits every year: older figures than this are doubted aloud. */
const staleDays = 365;

/** What a carrier makes of the parcel: taken or not, what it is charged as, which limits are near. */
export function AssessmentNote({
  assessment,
  near = [],
}: {
  assessment: Assessment;
  near?: readonly string[];
}) {
  const { carrierName, refusals, surcharges, billableLb, dimensionalLb, asOf } = assessment;
  const volume =
    dimensionalLb === null ? 'its volume is not charged' : `its volume counts ${dimensionalLb} lb`;
  return (
    <div className={classes.assessment}>
      {refusals.length === 0 ? (
        <Mark kind="done">{carrierName} takes this parcel</Mark>
      ) : (
        <Mark kind="stop">{carrierName} does not take this parcel</Mark>
      )}
      <ul className={classes.sentences}>
        {refusals.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
        {surcharges.map((name) => (
          <li key={name}>
            <Mark kind="attention">Surcharge: {name}</Mark>
          </li>
        ))}
        <li>
          Charged as {billableLb} lb; {volume}.
        </li>
        <li>Length plus girth {decimal(assessment.lengthPlusGirthIn, 2)} in, as it counts them.</li>
        {near.map((sentence) => (
          <li key={sentence}>
            <Mark kind="attention">{sentence}</Mark>
          </li>
        ))}
      </ul>
      <p className={orderClasses.quiet}>
        Limits as of {fullDay(asOf)}. Exactly at a limit is inside. The carrier's own guide decides.
      </p>
      {daysUntil(asOf) < -staleDays ? (
        <Mark kind="attention">
          These limits are over a year old: look them up again in the carrier's guide.
        </Mark>
      ) : null}
    </div>
  );
}
