import { type Limb, limbs } from '../../../../shared/bows.ts';
import type { GeometryVersion } from '../../../../shared/contract/geometry.ts';
import { decimal, inchGlyph } from '../../../../shared/measure.ts';
import classes from './stations.module.css';

type ComparedStation = GeometryVersion['stations'][number];

function Size({ station }: { station: ComparedStation | undefined }) {
  if (station === undefined) return <td>not measured</td>;
  const { widthIn, thicknessIn, surface, changeText } = station;
  const thick =
    thicknessIn === null
      ? ''
      : `, ${decimal(thicknessIn * 1000, 1)} thou${surface === 'bare' ? '' : ' over finish'}`;
  return (
    <td>
      {widthIn.toFixed(3)}"{thick}
      {changeText === '' ? null : <span className={classes.change}>{changeText}</span>}
    </td>
  );
}

/** Stations of one version, upper and lower limb side by side, with what changed since the one before. */
export function VersionTable({ version }: { version: GeometryVersion }) {
  const distances = [...new Set(version.stations.map((one) => one.fromFadeIn))].toSorted(
    (a, b) => a - b,
  );
  const at = (limb: Limb, distance: number) =>
    version.stations.find((one) => one.limb === limb && one.fromFadeIn === distance);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the column scrolls by keyboard.
    <section className={classes.scroll} aria-label={`Version ${version.version}`} tabIndex={0}>
      <table className={classes.table}>
        <thead>
          <tr>
            <th scope="col">From the fade</th>
            <th scope="col">Upper limb</th>
            <th scope="col">Lower limb</th>
          </tr>
        </thead>
        <tbody className={version.struckReason === null ? undefined : classes.struck}>
          {distances.map((distance) => (
            <tr key={distance}>
              <td>{inchGlyph(distance)}"</td>
              {limbs.map((limb) => (
                <Size key={limb} station={at(limb, distance)} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
