import { drawReferenceLabels } from '../../../../shared/bows.ts';
import type { Reading } from '../../../../shared/contract/readings.ts';
import { decimal, inchFraction } from '../../../../shared/measure.ts';
import { api } from '../../../api/client.ts';
import { momentText } from '../../../parts/days.ts';
import { Fold } from '../../../parts/fold.tsx';
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
      </tr>
      <tr>
        <td colSpan={3} className={classes.with}>
          {conditions(reading).join('; ')}
        </td>
      </tr>
      <tr>
        <td colSpan={3} className={classes.reason}>
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

/** Every weighing of the order, newest first; the newest that counts stands open. */
export function WeighingTables({ readings }: { readings: readonly Reading[] }) {
  const newest = readings.findLast(({ struckReason }) => struckReason === null);
  const others = readings.filter((reading) => reading !== newest);
  return (
    <>
      {newest === undefined ? null : <WeighingTable label="Last weighing" readings={[newest]} />}
      {others.length === 0 ? null : (
        <div className={classes.others}>
          <Fold title={`Other weighings (${others.length})`} said={others.map(briefly).join(', ')}>
            <WeighingTable label="Other weighings" readings={others.toReversed()} />
          </Fold>
        </div>
      )}
    </>
  );
}

/** One weighing as the folded line names it. */
function briefly({ phase, weights, struckReason }: Reading): string {
  const weight = weights.at(-1)?.text ?? '';
  return `${phaseLabels[phase].toLowerCase()} ${weight}${struckReason === null ? '' : ' (struck out)'}`;
}

interface WeighingTableProps {
  label: string;
  readings: readonly Reading[];
}

function WeighingTable({ label, readings }: WeighingTableProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the column scrolls by keyboard.
    <section className={classes.scroll} aria-label={label} tabIndex={0}>
      <table className={classes.table}>
        <thead>
          <tr>
            <th scope="col">When</th>
            <th scope="col">Weight</th>
            <th scope="col">Pulls</th>
          </tr>
        </thead>
        {readings.map((reading) => (
          <WeighingRow key={reading.id} reading={reading} />
        ))}
      </table>
    </section>
  );
}
