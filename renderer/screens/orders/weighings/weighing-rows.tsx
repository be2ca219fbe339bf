import { drawReferenceLabels } from '../../../../shared/bows.ts';
import type { Reading } from '../../../../shared/contract/readings.ts';
import { decimal, inchFraction } from '../../../../shared/measure.ts';
import { api } from '../../../api/client.ts';
import { momentText } from '../../../parts/days.ts';
import { StrikeOut } from '../strike-out.tsx';
import { phaseLabels } from '../words.ts';
import classes from './weighings.module.css';

function signed(value: number, digits: number): string {
  return `${value > 0 ? '+' : ''}${decimal(value, digits)}`;
}

function conditions(reading: Reading): string[] {
  const error = reading.scaleErrorLbf;
  return [
    reading.limbSetName === null ? '' : `limbs ${reading.limbSetName}`,
    reading.riserNote === '' ? '' : `on riser ${reading.riserNote}`,
    `${reading.scaleName}${error === null ? ', not checked' : `, ${signed(error, 2)} lb`}`,
    reading.rigZeroLbf === 0 ? '' : `rig zero ${decimal(reading.rigZeroLbf, 2)} lb taken off`,
    `brace ${inchFraction(reading.braceIn)}", ${reading.stringNote}`,
    reading.stringTrack === '' ? '' : `string track ${reading.stringTrack}`,
    reading.supportPoint === '' ? '' : `supported at ${reading.supportPoint}`,
    reading.pullPoint === '' ? '' : `pulled at ${reading.pullPoint}`,
    reading.tillerIn === null
      ? ''
      : `tiller ${reading.tillerIn > 0 ? '+' : ''}${inchFraction(reading.tillerIn)}"`,
    reading.temperatureF === null ? '' : `${decimal(reading.temperatureF)} F`,
    reading.moisturePct === null ? '' : `moisture ${decimal(reading.moisturePct)} %`,
    reading.strungMinutes === null ? '' : `strung ${decimal(reading.strungMinutes, 0)} min`,
    reading.flexedFirst ? 'flexed first' : 'not flexed first',
    reading.note,
  ].filter((part) => part !== '');
}

/** One weighing; its weights are written exactly as the core gives them. */
function WeighingRow({ reading }: { reading: Reading }) {
  const isStruck = reading.struckReason !== null;
  const phase = phaseLabels[reading.phase];
  const at = momentText(reading.weighedAt);
  return (
    <tbody className={isStruck ? classes.struck : undefined}>
      <tr>
        <td>
          <strong>{phase}</strong>
          <span className={classes.small}>{at}</span>
          <span className={classes.small}>{reading.personName}</span>
        </td>
        <td>
          {reading.weights.map((weight) => (
            <span key={weight.drawIn} className={classes.weight}>
              {weight.text}
            </span>
          ))}
          <span className={classes.quiet}>draw {drawReferenceLabels[reading.drawReference]}</span>
        </td>
        <td>
          {reading.pulls.map((pull, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: pulls have no name but their place.
            <span key={index} className={classes.small}>
              {decimal(pull.drawIn, 2)}" {decimal(pull.forceLbf, 2)} lb
              {pull.dropped ? ', dropped' : ''}
            </span>
          ))}
        </td>
        <td>
          {conditions(reading).map((part) => (
            <span key={part} className={classes.small}>
              {part}
            </span>
          ))}
        </td>
      </tr>
      <tr>
        <td colSpan={4} className={classes.reason} style={{ borderTop: 0, paddingTop: 0 }}>
          {isStruck ? (
            `Struck out, does not count: ${reading.struckReason}`
          ) : (
            <StrikeOut
              what={`the weighing ${phase.toLowerCase()}, ${at}`}
              record={reading}
              fn={api.readings.strikeOut}
            />
          )}
        </td>
      </tr>
    </tbody>
  );
}

/** Every weighing of the order, newest first. */
export function WeighingTable({ readings }: { readings: readonly Reading[] }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the column scrolls by keyboard.
    <section className={classes.scroll} aria-label="Weighings" tabIndex={0}>
      <table className={classes.table}>
        <thead>
          <tr>
            <th scope="col">When</th>
            <th scope="col">Weight</th>
            <th scope="col">Pulls</th>
            <th scope="col">Measured with</th>
          </tr>
        </thead>
        {readings.toReversed().map((reading) => (
          <WeighingRow key={reading.id} reading={reading} />
        ))}
      </table>
    </section>
  );
}
